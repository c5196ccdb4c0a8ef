package shotwright.machining.plan;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import shotwright.cutter.Holder;
import shotwright.finding.Finding;
import shotwright.layout.Half;
import shotwright.layout.LayoutResult;
import shotwright.machining.MachiningResult;
import shotwright.machining.MachiningResult.Clamping;
import shotwright.machining.MachiningResult.CutterChoice;
import shotwright.machining.MachiningResult.HalfWork;
import shotwright.machining.MachiningResult.LoadedCutter;
import shotwright.machining.MachiningResult.OperationWork;
import shotwright.machining.MachiningResult.ProgramFault;
import shotwright.machining.MachiningResult.ProgramFile;
import shotwright.machining.MachiningResult.ProofFigures;
import shotwright.machining.choice.CutterSearch;
import shotwright.machining.choice.CutterSet;
import shotwright.machining.feed.Shopfloor;
import shotwright.machining.gcode.Dialect;
import shotwright.machining.gcode.GcodeFile;
import shotwright.machining.gcode.GcodeWriter;
import shotwright.machining.path.Feed;
import shotwright.machining.path.Operation;
import shotwright.machining.path.Program;
import shotwright.machining.path.Step;
import shotwright.machining.proof.Fault;
import shotwright.machining.proof.Leftover;
import shotwright.machining.setup.SawPlan;
import shotwright.machining.setup.Setup;
import shotwright.machining.time.OperationTime;
import shotwright.machining.time.ProgramTime;
import shotwright.measure.Band;
import shotwright.mold.MoldResult;
import shotwright.progress.Parallel;
import shotwright.progress.Progress;

/** Plans both halves of a mold, writes their programs, proves each as read back from its text, and times them. */
public final class MoldPlanner {
    /** With less memory than this the halves are planned one after the other. */
    private static final long MEMORY_FOR_BOTH = 1_500_000_000L;

    /** What the planning of a half is of its work; the rest is proving. */
    private static final double PLANNING = 0.7;

    /** More than this left counts as metal left, µm. */
    private static final double LEFT_UM = 20;

    private final Shopfloor shop;
    private final Dialect control;

    public MoldPlanner(Shopfloor shop, Dialect control) {
        this.shop = shop;
        this.control = control;
    }

    /**
     * How the mold is milled.
     *
     * @throws Progress.Cancelled when asked to stop
     */
    public MachiningResult plan(LayoutResult layout, MoldResult mold, Progress progress) {
        List<Half> halves = List.of(Half.values());
        HalfPlanner planner = new HalfPlanner(shop);
        BothHalves both = new BothHalves(progress);
        HalfPlan[] plans = new HalfPlan[halves.size()];
        each(
                halves.size(),
                i -> plans[i] =
                        planner.plan(halves.get(i), layout, mold, both.of(i).part(0, PLANNING)));
        MoldTools tools = new MoldTools(List.of(plans));
        Worked[] worked = new Worked[halves.size()];
        each(halves.size(), i -> {
            boolean canOpen = (halves.get(i) == Half.A ? mold.a() : mold.b()).canOpen();
            worked[i] = new HalfProof(plans[i], tools, canOpen).work(both.of(i).part(PLANNING, 1));
        });
        return gathered(List.of(plans), tools, List.of(worked));
    }

    private static void each(int count, java.util.function.IntConsumer work) {
        if (Runtime.getRuntime().maxMemory() >= MEMORY_FOR_BOTH) Parallel.run(count, () -> work);
        else for (int i = 0; i < count; i++) work.accept(i);
    }

    /** Progress of two pieces of work side by side: their mean. */
    private static final class BothHalves {
        private final Progress whole;
        private final double[] shares = new double[Half.values().length];

        BothHalves(Progress whole) {
            this.whole = whole;
        }

        Progress of(int half) {
            return (doing, share) -> {
                double mean;
                synchronized (shares) {
                    shares[half] = share;
                    mean = Arrays.stream(shares).average().orElse(0);
                }
                whole.at(doing, mean);
            };
        }
    }

    /** A half with what its papers show, and the times of its cutters. */
    private record Worked(HalfWork work, Map<String, Double> cutterS, double changeS) {}

    private MachiningResult gathered(List<HalfPlan> plans, MoldTools tools, List<Worked> worked) {
        Map<String, Double> cutterS = new LinkedHashMap<>();
        Band timeS = new Band(0, 0, 0);
        double plain = 0, change = 0;
        List<Finding> findings = new ArrayList<>();
        for (int i = 0; i < worked.size(); i++) {
            Worked w = worked.get(i);
            w.cutterS.forEach((id, s) -> cutterS.merge(id, s, Double::sum));
            timeS = timeS.plus(w.work.timeS());
            change += w.changeS;
            for (Clamping c : w.work.clampings()) plain += c.lengthOverFeedS();
            findings.addAll(MachiningFindings.of(plans.get(i), w.work));
        }
        List<LoadedCutter> loaded = tools.all().stream()
                .map(t -> loaded(t, cutterS.getOrDefault(t.cutter().id(), 0.0)))
                .toList();
        SawPlan saw = SawPlan.of(plans.stream().map(p -> p.setups().blank()).toList());
        return new MachiningResult(
                shop.mill().name(),
                control.name(),
                control.unit() == Dialect.Unit.INCH,
                worked.stream().map(Worked::work).toList(),
                loaded,
                saw.bars().stream().map(SawPlan.SawnBar::words).toList(),
                timeS,
                change,
                plain,
                findings);
    }

    private static LoadedCutter loaded(ToolTable.Tool t, double timeS) {
        return new LoadedCutter(
                t.number(),
                t.cutter().id(),
                t.cutter().name(),
                t.cutter().shape().words(),
                t.cutter().diaMm().value(),
                t.cutter().flutes(),
                t.cutter().fluteLengthMm().value(),
                t.stickoutMm(),
                Holder.forShank(t.cutter().shankMm().value()).name(),
                timeS);
    }

    /** One half from its plan to its proved programs. */
    private final class HalfProof {
        private final HalfPlan plan;
        private final MoldTools tools;
        private final boolean canOpen;
        private final List<Clamping> clampings = new ArrayList<>();
        private final Map<String, Double> cutterS = new LinkedHashMap<>();
        private double changeS;
        private double gougeMm;
        private int rapids;
        private int contacts;
        private @Nullable Leftover left;

        HalfProof(HalfPlan plan, MoldTools tools, boolean canOpen) {
            this.plan = plan;
            this.tools = tools;
            this.canOpen = canOpen;
        }

        Worked work(Progress progress) {
            var cutters = tools.mounted();
            Program back = plan.back();
            if (back != null)
                clamping(
                        plan.setups().back(),
                        back,
                        ClampingProof.back(
                                plan, tools.numbered(back, plan.setups().back().name()), cutters, shop.mill()),
                        progress.part(0, 0.3));
            left = clamping(
                    plan.setups().parting(),
                    plan.parting(),
                    ClampingProof.parting(
                            plan,
                            tools.numbered(
                                    plan.parting(), plan.setups().parting().name()),
                            cutters,
                            shop.mill()),
                    progress.part(0.3, 1));
            HalfWork work = new HalfWork(
                    plan.half().name(),
                    canOpen,
                    clampings,
                    choices(),
                    figures(),
                    Alike.together(plan.byHand()),
                    Alike.together(plan.notes()));
            return new Worked(work, cutterS, changeS);
        }

        private @Nullable Leftover clamping(Setup setup, Program planned, ClampingProof proof, Progress progress) {
            Program program = tools.numbered(planned, setup.name() + (canOpen ? "" : ", HALF CANNOT OPEN"));
            GcodeFile file = new GcodeWriter(control, shop.mill().spinUpS().value())
                    .write(program, GcodeWriter.FilePer.SETUP)
                    .getFirst();
            ClampingProof.Answer said = proof.run(program, control, file.fileName(), file.text(), progress);
            ProgramTime time = ProgramTime.of(program, shop.mill());
            time.byCutterS().forEach((id, s) -> cutterS.merge(id, s, Double::sum));
            changeS += time.changeS() + time.spinUpS();
            List<ProgramFault> faults = new ArrayList<>();
            for (Fault f : said.faults()) faults.add(told(f, program, said));
            List<OperationWork> operations = new ArrayList<>();
            for (int i = 0; i < program.operations().size(); i++)
                operations.add(
                        operation(program.operations().get(i), time.operations().get(i)));
            clampings.add(new Clamping(
                    setup,
                    plan.setups().clampForceN(),
                    operations,
                    time.allS(),
                    time.lengthOverFeedS(),
                    time.cutterChanges(),
                    said.removedMm3(),
                    faults,
                    faults.isEmpty() ? List.of(new ProgramFile(file.fileName(), file.text())) : List.of()));
            if (said.leftover() != null)
                gougeMm = Math.max(gougeMm, said.leftover().deepestMm());
            return said.leftover();
        }

        private ProgramFault told(Fault f, Program program, ClampingProof.Answer said) {
            switch (f.kind()) {
                case RAPID_IN_STOCK -> rapids++;
                case BODY_CONTACT, KEEP_OUT -> contacts++;
                default -> {}
            }
            Operation o = program.operations().get(f.operation());
            return new ProgramFault(
                    f.kind().name().toLowerCase(java.util.Locale.ROOT).replace('_', '-'),
                    o.number(),
                    o.words(),
                    said.listing().line(f.operation(), f.move()),
                    f.text());
        }

        private ProofFigures figures() {
            Leftover l = left;
            double over = l == null
                    ? 0
                    : l.bins().stream()
                            .filter(b -> b.fromUm() >= LEFT_UM)
                            .mapToDouble(Leftover.Bin::areaMm2)
                            .sum();
            return new ProofFigures(
                    gougeMm,
                    l == null ? 0 : l.worstMm(),
                    l == null ? 0 : l.share95Mm(),
                    over,
                    rapids,
                    contacts,
                    plan.choice() == null ? 0 : plan.choice().best().missedMm2());
        }

        private List<CutterChoice> choices() {
            CutterSearch.Result r = plan.choice();
            if (r == null) return List.of();
            List<CutterChoice> out = new ArrayList<>();
            out.add(choice(CutterChoice.What.TAKEN, r.best()));
            add(out, CutterChoice.What.ONE_FEWER, r.fewer());
            add(out, CutterChoice.What.ONE_MORE, r.more());
            return out;
        }

        private void add(List<CutterChoice> out, CutterChoice.What what, Optional<CutterSet> set) {
            set.ifPresent(s -> out.add(choice(what, s)));
        }

        private CutterChoice choice(CutterChoice.What what, CutterSet s) {
            List<String> ids = s.shares().stream()
                    .map(x -> x.candidate().cutter().cutter().id())
                    .toList();
            return new CutterChoice(what, ids, s.timeS(), s.missedMm2());
        }

        private OperationWork operation(Operation o, OperationTime time) {
            Map<Double, Double> lengthAt = new LinkedHashMap<>();
            double lowest = Double.POSITIVE_INFINITY;
            for (Step s : o.steps())
                if (s instanceof Feed f) {
                    lengthAt.merge(Math.rint(f.feedMmPerMin()), s.lengthMm(), Double::sum);
                    lowest = Math.min(lowest, s.box().min().z());
                }
            double feedMmPerMin = lengthAt.entrySet().stream()
                    .max(Map.Entry.comparingByValue())
                    .map(Map.Entry::getKey)
                    .orElse(0.0);
            return new OperationWork(
                    o.number(),
                    o.words(),
                    o.toolNumber(),
                    o.cutterId(),
                    o.speedRpm(),
                    feedMmPerMin,
                    Double.isFinite(lowest) ? lowest : 0,
                    o.moves().size(),
                    time.allS());
        }
    }
}
