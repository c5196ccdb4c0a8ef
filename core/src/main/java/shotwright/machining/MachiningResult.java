package shotwright.machining;

import java.util.ArrayList;
import java.util.List;
import shotwright.finding.Finding;
import shotwright.machining.setup.Setup;
import shotwright.measure.Band;

/**
 * How a mold is milled, timed and proved.
 *
 * @param mill mill it is planned for, as named on the rack
 * @param control how its programs are written, as named on the rack
 * @param programsInch whether the programs are in inches
 * @param halves half A, then half B
 * @param cutters cutters to load, by their number at the control; one number and one stickout for the whole mold
 * @param sawing what to saw, one sentence for each bar
 * @param timeS the programs running, cutter changes and spin-ups included
 * @param changeS what of it are cutter changes and spin-ups
 * @param lengthOverFeedS the same from length over feed alone, cutter changes left out
 * @param findings what has to be said
 */
public record MachiningResult(
        String mill,
        String control,
        boolean programsInch,
        List<HalfWork> halves,
        List<LoadedCutter> cutters,
        List<String> sawing,
        Band timeS,
        double changeS,
        double lengthOverFeedS,
        List<Finding> findings) {
    public MachiningResult {
        halves = List.copyOf(halves);
        cutters = List.copyOf(cutters);
        sawing = List.copyOf(sawing);
        findings = List.copyOf(findings);
    }

    /**
     * A cutter to load.
     *
     * @param number number at the control
     * @param id id on the rack
     * @param name name shown
     * @param shape shape of its cutting end, in words
     * @param diaMm cutting diameter
     * @param flutes teeth
     * @param fluteLengthMm cutting length
     * @param stickoutMm how far it must stand out of its holder at least
     * @param holder what grips it
     * @param timeS how long it moves
     */
    public record LoadedCutter(
            int number,
            String id,
            String name,
            String shape,
            double diaMm,
            int flutes,
            double fluteLengthMm,
            double stickoutMm,
            String holder,
            double timeS) {}

    /**
     * One half.
     *
     * @param half A or B
     * @param canOpen false when the half cannot be pulled off the part; its programs say so
     * @param clampings in the order they are run
     * @param best the set of cutters its molding surface is milled with, and the best ones of one cutter fewer and more, where there are
     *     any; empty when there is no molding surface to mill
     * @param proof what the programs left, both clampings together
     * @param byHand what is left to the bench
     * @param notes what a person should know
     */
    public record HalfWork(
            String half,
            boolean canOpen,
            List<Clamping> clampings,
            List<CutterChoice> best,
            ProofFigures proof,
            List<String> byHand,
            List<String> notes) {
        public HalfWork {
            clampings = List.copyOf(clampings);
            best = List.copyOf(best);
            byHand = List.copyOf(byHand);
            notes = List.copyOf(notes);
        }

        public int operationCount() {
            return clampings.stream().mapToInt(c -> c.operations().size()).sum();
        }

        public int moveCount() {
            return clampings.stream()
                    .flatMap(c -> c.operations().stream())
                    .mapToInt(OperationWork::moves)
                    .sum();
        }

        /** Both programs with their cutter changes. */
        public Band timeS() {
            return clampings.stream().map(Clamping::timeS).reduce(new Band(0, 0, 0), Band::plus);
        }

        /** True when no program of it has a fault. */
        public boolean proved() {
            return clampings.stream().allMatch(Clamping::clean);
        }
    }

    /**
     * A set of cutters for a molding surface.
     *
     * @param what which set it is
     * @param cutterIds largest first
     * @param timeS estimate of cutting and cutter changes, made before the paths
     * @param missedMm2 surface none of them finishes
     */
    public record CutterChoice(What what, List<String> cutterIds, double timeS, double missedMm2) {
        /** Which set. */
        public enum What {
            TAKEN("taken"),
            ONE_FEWER("one cutter fewer"),
            ONE_MORE("one cutter more");

            private final String words;

            What(String words) {
                this.words = words;
            }

            public String words() {
                return words;
            }
        }

        public CutterChoice {
            cutterIds = List.copyOf(cutterIds);
        }
    }

    /**
     * One clamping and its program.
     *
     * @param setup how it is clamped
     * @param clampForceN least force of the vise
     * @param operations in order
     * @param timeS the program running, cutter changes and spin-ups included
     * @param lengthOverFeedS length over feed alone, cutter changes left out
     * @param cutterChanges how often a cutter is put in
     * @param removedMm3 metal it takes
     * @param faults what the proof found, in the order of the program
     * @param files the program's files; none while it has faults
     */
    public record Clamping(
            Setup setup,
            double clampForceN,
            List<OperationWork> operations,
            Band timeS,
            double lengthOverFeedS,
            int cutterChanges,
            double removedMm3,
            List<ProgramFault> faults,
            List<ProgramFile> files) {
        public Clamping {
            operations = List.copyOf(operations);
            faults = List.copyOf(faults);
            files = List.copyOf(files);
        }

        /** True when nothing stands against running it. */
        public boolean clean() {
            return faults.isEmpty();
        }
    }

    /**
     * One operation as it stands on the papers.
     *
     * @param number its number
     * @param words what is done
     * @param toolNumber number of its cutter
     * @param cutterId the cutter
     * @param speedRpm spindle speed
     * @param feedMmPerMin the feed most of its way is run at
     * @param lowestZMm lowest place of the tip while it cuts
     * @param moves moves in it
     * @param timeS how long it moves
     */
    public record OperationWork(
            int number,
            String words,
            int toolNumber,
            String cutterId,
            double speedRpm,
            double feedMmPerMin,
            double lowestZMm,
            int moves,
            double timeS) {}

    /**
     * What a program does that it must not.
     *
     * @param kind short stable name
     * @param operation number of the operation
     * @param words what the operation does
     * @param line line of the program
     * @param text a sentence with what was found, what is allowed and where, in the axes of the program
     */
    public record ProgramFault(String kind, int operation, String words, int line, String text) {}

    /**
     * What a half's programs left.
     *
     * @param maxGougeMm deepest cut into the half, along the normal
     * @param maxLeftoverMm most metal left on what the parting face up clamping mills, along the normal
     * @param leftoverP95Mm 95 % of the area has less left
     * @param leftoverMm2 area with more than 0.02 mm left
     * @param rapidInStock rapids that run into stock
     * @param contacts places where shank, neck or holder touch stock, or anything touches a jaw
     * @param unreachableMm2 molding surface no cutter taken gets down to
     */
    public record ProofFigures(
            double maxGougeMm,
            double maxLeftoverMm,
            double leftoverP95Mm,
            double leftoverMm2,
            int rapidInStock,
            int contacts,
            double unreachableMm2) {}

    /**
     * A program as it goes to the mill.
     *
     * @param name file name
     * @param text its lines
     */
    public record ProgramFile(String name, String text) {}

    /** True when every program is free of faults. */
    public boolean proved() {
        return halves.stream().allMatch(HalfWork::proved);
    }

    /** Every clamping in the order they are run: half A, then half B. */
    public List<Clamping> clampings() {
        List<Clamping> all = new ArrayList<>();
        halves.forEach(h -> all.addAll(h.clampings()));
        return all;
    }

    /** Hours the spindle runs and cutters are changed. */
    public double timeH() {
        return timeS.nominal() / 3600;
    }
}
