package shotwright.mold;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import shotwright.finding.Finding;
import shotwright.geom.Box3;
import shotwright.geom.Transform;
import shotwright.geom.Vec3;
import shotwright.layout.Block;
import shotwright.layout.Half;
import shotwright.layout.LayoutResult;
import shotwright.layout.PlaceInFile;
import shotwright.mesh.TriMesh;
import shotwright.mesh.complex.ColumnTest;
import shotwright.mesh.complex.Complex;
import shotwright.mesh.complex.Material;
import shotwright.mesh.complex.SplitFailure;
import shotwright.mesh.pull.Parting;
import shotwright.part.PulledPart;
import shotwright.progress.Progress;
import shotwright.review.Undercut;

/**
 * Station 50: makes the two halves. The parts, grown by their shrink, are put into the block; the block is parted round them; feed, vents and holes
 * are cut. All of it happens in one shared complex, so that what one half loses the cavity, the feed or the other half gains; the result
 * is then held against the column test, the volumes and the closed forms.
 */
public final class Halves {
    private final PlacedParts parts;
    private final PlaceInFile inFile;
    private final LayoutResult layout;
    private final List<Undercut> undercuts;
    private final double shadowMm2;

    private Halves(PulledPart part, LayoutResult layout, List<Undercut> undercuts) {
        this.parts = PlacedParts.of(part, layout.cavities());
        this.inFile = new PlaceInFile(part, layout.cavities());
        this.layout = layout;
        this.undercuts = undercuts;
        this.shadowMm2 = part.exactShadow().area();
    }

    /**
     * Makes both halves.
     *
     * @param part the part in the pulled frame, before shrink
     * @param layout where everything is, mold frame
     * @param undercuts what the review found to block a half
     * @throws HalvesRefused when no halves can be made
     * @throws Progress.Cancelled when asked to stop
     */
    public static MoldResult make(PulledPart part, LayoutResult layout, List<Undercut> undercuts, Progress progress) {
        progress.at("placing the cavities", 0);
        return new Halves(part, layout, undercuts).make(progress);
    }

    private MoldResult make(Progress progress) {
        Box3 block = block();
        requireRoom(block);
        Parting parting = part(block, progress.part(0.05, 0.3));
        Complex parted = parting.complex();
        TriMesh meeting = parted.between(parting.b(), parting.a());
        TriMesh plainA = parted.extract(parting.a()), plainB = parted.extract(parting.b());
        Cutting cutting = new Cutting(parting);
        cutting.cut(Tools.of(layout, PartingWords.stepMm(parting), parts.meshes()), progress.part(0.3, 0.9));
        progress.at("checking the halves", 0.9);
        return result(block, parting, meeting, plainA, plainB, cutting);
    }

    private Box3 block() {
        Block b = layout.block();
        return new Box3(
                new Vec3(-b.widthMm() / 2, -b.heightMm() / 2, -b.thicknessBMm()),
                new Vec3(b.widthMm() / 2, b.heightMm() / 2, b.thicknessAMm()));
    }

    private void requireRoom(Box3 block) {
        Box3 p = parts.box();
        Vec3 low = p.min().minus(block.min()), high = block.max().minus(p.max());
        double least = Math.min(
                Math.min(Math.min(low.x(), low.y()), low.z()), Math.min(Math.min(high.x(), high.y()), high.z()));
        if (least > 0) return;
        throw new HalvesRefused(Finding.stop(
                        "block-too-small",
                        String.format(Locale.ROOT, "The part comes out of the block by %.2f mm.", -least))
                .at(inFile.of(p.centre()))
                .remedy("Take a larger or thicker block, or fewer cavities."));
    }

    private Parting part(Box3 block, Progress progress) {
        double planeZ = layout.parting().pulledZMm() * parts.scale().z();
        try {
            return Parting.of(parts.part(), parts.places(), block, planeZ, progress);
        } catch (SplitFailure f) {
            throw new HalvesRefused(
                    Finding.stop(
                                    "parting-crosses-itself",
                                    "The block cannot be parted round this part: its outline at the parting crosses itself."
                                            + " The surface of the part is folded or runs through itself there.")
                            .at(inFile.of(f.place()))
                            .remedy(
                                    "Export the part again as one clean solid, with a coarser tessellation if it is very fine."));
        }
    }

    private MoldResult result(
            Box3 block, Parting parting, TriMesh meeting, TriMesh plainA, TriMesh plainB, Cutting cutting) {
        Complex c = cutting.complex();
        Specks specks = Specks.giveOver(c, parting.a(), parting.b());
        double volumeA = c.volume(parting.a()), volumeB = c.volume(parting.b());
        double partVolume = c.volume(Material.PART);
        double cut = c.volume(Material.FEED) + c.volume(Material.VENT) + c.volume(Material.HOLE);
        double balance = Math.abs(volumeA + volumeB + partVolume + cut - block.volume()) / block.volume();
        ColumnTest after = ColumnTest.overAll(c, ColumnTest.SIDE);
        MoldHalf a =
                half(Half.A, c, parting.a(), plainA, volumeA, parting.columns().lockShareA(), parting);
        MoldHalf b =
                half(Half.B, c, parting.b(), plainB, volumeB, parting.columns().lockShareB(), parting);
        List<Finding> findings = new ArrayList<>(cutting.findings());
        double allowed = Opening.allowedShare(undercuts, shadowMm2);
        Transform toMold = parts.places().getFirst();
        findings.addAll(PartingWords.findings(parting, a, b, allowed, after, balance, toMold));
        findings.addAll(Specks.loose(c, parting.a(), Half.A));
        findings.addAll(Specks.loose(c, parting.b(), Half.B));
        findings.replaceAll(f -> f.placed(inFile::of));
        return new MoldResult(
                a,
                b,
                meeting,
                PartingWords.stepMm(parting),
                block.volume(),
                partVolume,
                cut,
                balance,
                after.bad(),
                after.columns(),
                PartingWords.used(parting),
                cutting.cutOuts(),
                cutting.circles(),
                specks,
                findings);
    }

    private MoldHalf half(
            Half half, Complex c, int cell, TriMesh plain, double volume, double lockShare, Parting parting) {
        Opening opening =
                parting.isPlaneFallBack() ? Opening.LOCKED : Opening.of(half, lockShare, undercuts, shadowMm2);
        return new MoldHalf(half, c.extract(cell), plain, volume, c.openEdges(cell), lockShare, opening);
    }
}
