package shotwright.layout;

import java.util.List;
import shotwright.finding.Finding;
import shotwright.geom.Vec3;

/**
 * What station 40 leaves behind: every place in the mold frame (x right, y up on the parting face, z along the pull, z = 0 at the nominal
 * parting plane, A above, B below, nozzle edge at +y, block centred on x = y = 0).
 *
 * @param shrinkX shrink taken along x of the pulled frame, as a share (0.006 is 0.6 %)
 * @param shrinkY along y
 * @param shrinkZ along the pull
 * @param parting where the halves part
 * @param cavities one entry per cavity
 * @param entry how the nozzle meets the mold
 * @param nozzleMm where the nozzle seats, mold frame
 * @param feed pieces of the feed, parents before children
 * @param gates one per cavity
 * @param candidates gate places scored, best first
 * @param vents vents
 * @param dowels dowels
 * @param screws screws; empty when the press holds the halves
 * @param pry pockets to open the mold
 * @param release how the part comes out
 * @param strength walls and floors checked
 * @param block the metal
 * @param decisions what was chosen and why
 * @param findings what has to be said
 */
public record LayoutResult(
        double shrinkX,
        double shrinkY,
        double shrinkZ,
        PartingChoice parting,
        List<Cavity> cavities,
        NozzleEntry entry,
        Vec3 nozzleMm,
        List<FeedSegment> feed,
        List<Gate> gates,
        List<GateCandidate> candidates,
        List<Vent> vents,
        List<DowelPlace> dowels,
        List<ScrewPlace> screws,
        List<PryRelief> pry,
        Release release,
        List<StrengthCheck> strength,
        Block block,
        List<Decision> decisions,
        List<Finding> findings) {

    /** How the nozzle meets the mold. */
    public enum NozzleEntry {
        /** On the +y edge, at the parting line. */
        PARTING_EDGE,
        /** Through the back of half A. */
        BACK
    }

    /**
     * A wall, floor or core held against the melt.
     *
     * @param name which one, in words
     * @param thicknessMm metal there
     * @param deflectionMm how far it gives at the pressure assumed
     * @param deflectionLimitMm how far it may give
     * @param stressMpa stress at that pressure
     * @param stressLimitMpa what the alloy carries
     * @param method formula and source
     */
    public record StrengthCheck(
            String name,
            double thicknessMm,
            double deflectionMm,
            double deflectionLimitMm,
            double stressMpa,
            double stressLimitMpa,
            String method) {}

    public LayoutResult {
        cavities = List.copyOf(cavities);
        feed = List.copyOf(feed);
        gates = List.copyOf(gates);
        candidates = List.copyOf(candidates);
        vents = List.copyOf(vents);
        dowels = List.copyOf(dowels);
        screws = List.copyOf(screws);
        pry = List.copyOf(pry);
        strength = List.copyOf(strength);
        decisions = List.copyOf(decisions);
        findings = List.copyOf(findings);
    }

    /** The same with what has to be said. */
    public LayoutResult withFindings(List<Finding> newFindings) {
        return new LayoutResult(
                shrinkX,
                shrinkY,
                shrinkZ,
                parting,
                cavities,
                entry,
                nozzleMm,
                feed,
                gates,
                candidates,
                vents,
                dowels,
                screws,
                pry,
                release,
                strength,
                block,
                decisions,
                newFindings);
    }

    /** Volume of all feed pieces, mm³ (their own closed forms; overlaps at joints counted twice). */
    public double feedVolumeMm3() {
        return feed.stream().mapToDouble(FeedSegment::volumeMm3).sum();
    }
}
