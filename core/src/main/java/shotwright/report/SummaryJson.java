package shotwright.report;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectWriter;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.List;
import org.jspecify.annotations.Nullable;
import shotwright.cool.CoolResult;
import shotwright.fill.FillResult;
import shotwright.finding.Finding;
import shotwright.geom.Vec3;
import shotwright.intake.IntakeFacts;
import shotwright.job.JobResult;
import shotwright.layout.DowelPlace;
import shotwright.layout.Gate;
import shotwright.layout.LayoutResult;
import shotwright.layout.Vent;
import shotwright.measure.Units;
import shotwright.mold.MoldHalf;
import shotwright.mold.MoldResult;
import shotwright.mold.exact.ExactHalf;
import shotwright.mold.exact.ExactMold;
import shotwright.quote.PriceBand;
import shotwright.quote.QuoteResult;
import shotwright.review.ReviewResult;
import shotwright.review.Undercut;
import shotwright.sheet.PressSheet;
import shotwright.sizing.SizingResult;

/**
 * The summary as JSON: the contract for scripts. Names end in their unit; a station that did not run is absent; numbers keep nine significant
 * figures.
 */
public final class SummaryJson {
    private static final JsonMapper JSON = new JsonMapper();
    private static final ObjectWriter PRETTY = JSON.writerWithDefaultPrettyPrinter();

    private SummaryJson() {}

    /** The summary as indented text. */
    public static String text(JobResult job) {
        try {
            return PRETTY.writeValueAsString(tree(job)) + "\n";
        } catch (JsonProcessingException e) {
            throw new IllegalStateException(e);
        }
    }

    /** The summary as a tree. */
    public static ObjectNode tree(JobResult job) {
        ObjectNode root = JSON.createObjectNode();
        root.put("shotwright", "summary 1");
        root.set("card", JSON.valueToTree(job.card()));
        part(root.putObject("part"), job.intake().facts(), job.intake().findings());
        if (job.review() != null) review(root.putObject("review"), job.review(), job.firstPrice());
        if (job.draft() != null) FaceJson.write(root.putObject("draft"), job.draft());
        if (job.sizing() != null) sizing(root.putObject("sizing"), job.sizing());
        if (job.layout() != null) layout(root.putObject("layout"), job.layout());
        if (job.mold() != null && job.layout() != null) mold(root.putObject("mold"), job.mold(), job.layout());
        if (job.exactMold() != null) exactMold(root.putObject("exactMold"), job.exactMold());
        if (job.fill() != null) fill(root.putObject("fill"), job.fill());
        if (job.cool() != null) cool(root.putObject("cool"), job.cool());
        if (job.machining() != null) {
            ObjectNode machining = root.putObject("machining");
            MillingJson.write(machining, job.machining());
            findings(machining, job.machining().findings());
        }
        if (job.quote() != null) quote(root.putObject("quote"), job.quote());
        if (job.sheet() != null) sheet(root.putObject("sheet"), job.sheet());
        return root;
    }

    private static void part(ObjectNode n, IntakeFacts f, List<Finding> findings) {
        n.put("file", f.fileName())
                .put("format", f.format())
                .put("unitTaken", f.unitTaken().symbol())
                .put("unitReason", f.unitReason());
        n.put("bodies", f.bodies()).put("facets", f.facets());
        if (Double.isFinite(f.volumeMm3())) put(n, "volumeMm3", f.volumeMm3());
        put(n, "surfaceAreaMm2", f.surfaceAreaMm2());
        if (f.boxMm() != null) n.set("boxMm", array(f.boxMm().size()));
        n.put("openEdges", f.openEdges());
        ArrayNode notes = n.putArray("notes");
        f.notes().forEach(notes::add);
        findings(n, findings);
    }

    private static void review(ObjectNode n, ReviewResult r, @Nullable PriceBand price) {
        n.set("pull", array(r.pulled().pull()));
        put(n, "projectedAreaMm2", r.projectedAreaMm2());
        n.set(
                "projectedCentroidMm",
                array(r.projectedCentroidMm().x(), r.projectedCentroidMm().y()));
        put(n, "hiddenShare", r.hiddenShare());
        put(n, "wallMedianMm", r.wall().medianMm());
        put(n, "wallMinMm", r.wall().minMm());
        put(n, "wallMaxMm", r.wall().maxMm());
        if (price != null) {
            n.set("priceBand", array(price.moldAndFirstLotMoney()));
            n.set("leadDaysBand", array(price.leadDays().low(), price.leadDays().high()));
        }
        ArrayNode undercuts = n.putArray("undercuts");
        for (Undercut u : r.undercuts()) {
            ObjectNode o = undercuts.addObject();
            o.set("atMm", array(u.at()));
            o.put("blocks", u.blocks().name()).put("hold", word(u.hold()));
            put(o, "inTheWayMm3", u.inTheWayMm3());
            put(o, "trappedMm3", u.trappedMm3());
            put(o, "ledgeMm", u.ledgeMm());
            put(o, "strainPercent", u.strainPercent());
        }
        if (!r.faces().isEmpty()) FaceJson.write(n.putArray("faces"), r.faces());
        ArrayNode questions = n.putArray("questions");
        r.questions().forEach(questions::add);
        findings(n, r.findings());
    }

    private static void sizing(ObjectNode n, SizingResult s) {
        SizingJson.write(n, s);
        findings(n, s.findings());
    }

    private static void layout(ObjectNode n, LayoutResult l) {
        n.put("nozzleEntry", l.entry() == LayoutResult.NozzleEntry.BACK ? "back" : "parting-edge");
        n.put("parting", l.parting().kind().name().toLowerCase(java.util.Locale.ROOT));
        put(n, "partingZMm", l.parting().pulledZMm());
        n.put("partingReason", l.parting().reason());
        if (!l.gates().isEmpty()) gate(n.putObject("gate"), l.gates().getFirst());
        l.feed().stream()
                .filter(s -> s.kind() == shotwright.layout.FeedSegment.Kind.RUNNER)
                .findFirst()
                .ifPresent(s -> put(n, "runnerMm", s.from().widthMm()));
        l.feed().stream()
                .filter(s -> s.kind() == shotwright.layout.FeedSegment.Kind.SPRUE)
                .findFirst()
                .ifPresent(s -> put(n, "sprueMm", s.from().widthMm()));
        ArrayNode vents = n.putArray("vents");
        for (Vent v : l.vents()) {
            ObjectNode o = vents.addObject();
            o.set("atMm", array(v.atMm()));
            put(o, "widthMm", v.widthMm());
            put(o, "depthMm", v.depthMm());
            put(o, "landMm", v.landMm());
            o.put("reason", v.reason());
        }
        ArrayNode dowels = n.putArray("dowels");
        for (DowelPlace d : l.dowels()) {
            ObjectNode o = dowels.addObject();
            o.set("atMm", array(d.atMm().x(), d.atMm().y()));
            put(o, "diameterMm", d.diameterMm());
            put(o, "proudMm", d.proudMm());
            o.put("fit", d.fit());
        }
        n.put("keepsPart", l.release().keepsPart().name());
        put(n, "ejectionForceN", l.release().ejectionForceN());
        n.set(
                "blockMm",
                array(
                        l.block().widthMm(),
                        l.block().heightMm(),
                        l.block().thicknessAMm() + l.block().thicknessBMm()));
        put(n, "thicknessAMm", l.block().thicknessAMm());
        put(n, "thicknessBMm", l.block().thicknessBMm());
        n.set("decisions", JSON.valueToTree(l.decisions()));
        findings(n, l.findings());
    }

    private static void gate(ObjectNode n, Gate g) {
        n.put("kind", g.kind().name().toLowerCase(java.util.Locale.ROOT));
        n.set("atMm", array(g.atMm()));
        put(n, "widthMm", g.widthMm());
        put(n, "depthMm", g.depthMm());
        put(n, "landMm", g.landMm());
        put(n, "largestWidthMm", g.largestWidthMm());
        put(n, "largestDepthMm", g.largestDepthMm());
        put(n, "stepMm", g.stepMm());
        put(n, "trimS", g.trimS());
        put(n, "markMm", g.markMm());
        n.put("half", g.half().name());
    }

    private static String word(Enum<?> e) {
        return e.name().toLowerCase(java.util.Locale.ROOT).replace('_', '-');
    }

    private static void mold(ObjectNode n, MoldResult m, LayoutResult l) {
        n.set("shrink", array(l.shrinkX(), l.shrinkY(), l.shrinkZ()));
        put(n, "blockVolumeMm3", m.blockVolumeMm3());
        put(n, "partVolumeMm3", m.partVolumeMm3());
        put(n, "cutVolumeMm3", m.cutVolumeMm3());
        n.put("balanceError", m.balanceError());
        n.put("badColumns", m.badColumns());
        n.put("partingUsed", m.partingUsed());
        n.set("specks", JSON.valueToTree(m.specks()));
        ArrayNode halves = n.putArray("halves");
        for (MoldHalf h : List.of(m.a(), m.b())) {
            ObjectNode o = halves.addObject();
            o.put("name", h.half().name());
            put(o, "volumeMm3", h.volumeMm3());
            o.put("openEdges", h.openEdges())
                    .put("facets", h.mesh().facetCount())
                    .put("canOpen", h.canOpen())
                    .put("opening", word(h.opening()));
            put(o, "lockShare", h.lockShare());
        }
        n.set("cutOuts", JSON.valueToTree(m.cutOuts()));
        findings(n, m.findings());
    }

    private static void exactMold(ObjectNode n, ExactMold m) {
        if (Double.isFinite(m.balanceError())) n.put("balanceError", m.balanceError());
        ArrayNode halves = n.putArray("halves");
        for (ExactHalf h : m.halves()) {
            ObjectNode o = halves.addObject();
            o.put("name", h.half().name()).put("file", "halves/half-" + h.half() + ".step");
            put(o, "volumeMm3", h.volumeMm3());
            put(o, "overMeshMm3", h.overMeshMm3());
            o.put("solids", h.check().solids())
                    .put("faces", h.check().faces())
                    .put("openEdges", h.check().openEdges())
                    .put("valid", h.check().valid());
        }
        findings(n, m.findings());
    }

    private static void fill(ObjectNode n, FillResult f) {
        n.put("model", FillResult.MODEL).put("resin", f.resin());
        put(n, "fillTimeS", f.fillTimeS());
        put(n, "pressurePeakMPa", f.pressurePeakMpa());
        n.set(
                "pressureBandMPa",
                array(f.pressureBandMpa().low(), f.pressureBandMpa().high()));
        put(n, "pressureAvailableMPa", f.pressureAvailableMpa());
        put(n, "flowLengthMm", f.flowLengthMm());
        put(n, "flowLengthRatio", f.flowLengthRatio());
        put(n, "gateSealS", f.gateSealS());
        put(n, "clampPeakKn", f.clampPeakKn());
        n.put("verdict", f.verdict().word());
        n.set("steps", JSON.valueToTree(f.steps()));
        findings(n, f.findings());
    }

    private static void cool(ObjectNode n, CoolResult c) {
        put(n, "coolingTimeS", c.coolingTimeS());
        put(n, "cycleTimeS", c.cycleTimeS());
        put(n, "moldSteadyC", c.moldSteadyC());
        n.put("warmUpShots", c.warmUpShots());
        put(n, "pauseS", c.pauseS());
        n.set("regions", JSON.valueToTree(c.regions()));
        findings(n, c.findings());
    }

    private static void quote(ObjectNode n, QuoteResult q) {
        n.put("currency", q.currency());
        n.set("rates", JSON.valueToTree(q.rates()));
        put(n, "moldPrice", q.moldPrice().nominal());
        n.set("moldPriceBand", array(q.moldPrice().low(), q.moldPrice().high()));
        ArrayNode prices = n.putArray("perPart");
        q.perPart().forEach(p -> {
            ObjectNode o = prices.addObject().put("quantity", p.quantityCount());
            put(o, "price", p.pricePerPart());
            put(o, "lotPrice", p.lotPrice());
        });
        ObjectNode hours = n.putObject("hours");
        q.hours().forEach(h -> put(hours, h.name(), h.timeH()));
        n.set("leadDays", array(q.leadDays().low(), q.leadDays().high()));
        findings(n, q.findings());
    }

    private static void sheet(ObjectNode n, PressSheet s) {
        put(n, "dryC", s.dryC());
        put(n, "dryH", s.dryH());
        put(n, "meltC", s.meltC());
        put(n, "moldC", s.moldC());
        put(n, "holdMPa", s.holdMpa());
        put(n, "holdS", s.holdS());
        put(n, "coolS", s.coolS());
        n.set("settings", JSON.valueToTree(s.settings()));
        findings(n, s.findings());
    }

    /** Findings in the order of the contract. */
    static void findings(ObjectNode n, List<Finding> findings) {
        ArrayNode a = n.putArray("findings");
        for (Finding f : findings) {
            ObjectNode o = a.addObject();
            o.put("severity", f.severity().word()).put("code", f.code()).put("text", f.text());
            if (f.atMm() != null) o.set("atMm", array(f.atMm()));
            if (f.value() != null) put(o, "value", f.value());
            if (f.limit() != null) put(o, "limit", f.limit());
            if (!f.unit().isEmpty()) o.put("unit", f.unit());
            if (f.source() != null) o.put("source", f.source().toString());
            if (!f.remedy().isEmpty()) o.put("remedy", f.remedy());
            if (!f.sizeEffect().isEmpty()) o.put("sizeEffect", f.sizeEffect());
            if (!f.saves().isEmpty()) o.put("saves", f.saves());
        }
    }

    static void put(ObjectNode n, String name, double v) {
        if (Double.isFinite(v)) n.put(name, rounded(v));
    }

    static ArrayNode array(Vec3 v) {
        return array(v.x(), v.y(), v.z());
    }

    static ArrayNode array(double... values) {
        ArrayNode a = JSON.createArrayNode();
        for (double v : values) a.add(rounded(v));
        return a;
    }

    /** Kilonewtons as short tons, nine figures. */
    static double shortTons(double kn) {
        return rounded(Units.knToShortTons(kn));
    }

    private static double rounded(double v) {
        if (v == 0 || !Double.isFinite(v)) return 0;
        return new BigDecimal(v).round(new MathContext(10)).doubleValue();
    }
}
