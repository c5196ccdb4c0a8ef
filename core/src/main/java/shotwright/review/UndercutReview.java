package shotwright.review;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.List;
import shotwright.finding.Finding;
import shotwright.finding.Severity;
import shotwright.geom.Vec3;
import shotwright.mesh.Grid;
import shotwright.mesh.HeightMap;
import shotwright.mesh.TriMesh;
import shotwright.mesh.pull.Sight;
import shotwright.mesh.pull.SightTolerance;
import shotwright.part.PulledPart;

/**
 * Metal that would be locked between two layers of the part, found as empty space between pieces of solid in columns along the pull.
 *
 * <p>How much it weighs: up to the resin's sure strip strain the part springs over it (watch); up to its utmost strain, or when the ledge is
 * small (less than {@value #SMALL_SHADOW} of the shadow and less than {@value #SMALL_VOLUME} of the part's volume locked), the customer is
 * asked, since a small change of the part frees it; anything more stops the two-plate mold. The strain takes the part's smaller size across
 * the pull as the rim that must open.
 */
final class UndercutReview {
    private static final int MOST_CELLS = 1_000_000;
    /** Below this hidden share the search is left out: slivers and rounding of the file. */
    private static final double NOTHING = 2e-4;

    private static final double SMALL_SHADOW = 0.004;
    private static final double SMALL_VOLUME = 0.004;
    /** Patches that lock less of the part's volume than this are rounding. */
    private static final double NOISE_VOLUME = 2e-6;

    private static final int LEAST_CELLS = 12;
    private static final int MOST = 12;

    private final PulledPart pulled;
    private final MoldingLimits limits;
    private final FaceTable faces;
    private final HeightMap map;
    private final Grid grid;
    private final Sight[] sight;

    private UndercutReview(PulledPart pulled, MoldingLimits limits, FaceTable faces) {
        this.faces = faces;
        this.pulled = pulled;
        this.limits = limits;
        TriMesh mesh = pulled.mesh();
        double area = mesh.box().size().x() * mesh.box().size().y();
        grid = Grid.around(mesh.box(), Math.sqrt(area / MOST_CELLS));
        map = HeightMap.of(mesh, grid);
        sight = pulled.sight().at(SightTolerance.LADDER.getFirst());
    }

    static List<Said<Undercut>> review(PulledPart pulled, MoldingLimits limits, FaceTable faces) {
        if (pulled.exactShadow().hiddenShare() < NOTHING) return List.of();
        return new UndercutReview(pulled, limits, faces).find();
    }

    private List<Said<Undercut>> find() {
        BitSet layered = new BitSet(grid.count());
        for (int c = 0; c < grid.count(); c++) if (map.intervalCount(c) > 1) layered.set(c);
        int[] patchOf = new int[grid.count()];
        Arrays.fill(patchOf, -1);
        List<GridPatches.Patch> patches = new ArrayList<>();
        double least = NOISE_VOLUME * pulled.part().mass().volumeMm3();
        for (GridPatches.Patch p : GridPatches.of(grid, layered)) {
            if (patches.size() == MOST || p.cells().length < LEAST_CELLS || !p.isSolid() || trapped(p) < least)
                continue;
            for (int c : p.cells()) patchOf[c] = patches.size();
            patches.add(p);
        }
        int[][] facets = hiddenFacets(patchOf, patches.size());
        List<Undercut> all = new ArrayList<>();
        for (int i = 0; i < patches.size(); i++) all.add(undercut(patches.get(i), facets[i]));
        all.sort((a, b) -> Double.compare(b.trappedMm3(), a.trappedMm3()));
        return told(all);
    }

    /** Undercuts alike, such as a row of equal catches, share one finding. */
    private List<Said<Undercut>> told(List<Undercut> all) {
        List<Said<Undercut>> said = new ArrayList<>();
        for (Undercut u : all) {
            int count = (int) all.stream().filter(o -> isAlike(u, o)).count();
            Said<Undercut> own = new Said<>(u, finding(u, count));
            said.add(said.stream()
                    .filter(s -> isAlike(s.row(), u))
                    .findFirst()
                    .map(s -> new Said<>(u, s.finding()))
                    .orElse(own));
        }
        return said;
    }

    private static boolean isAlike(Undercut a, Undercut b) {
        return a.blocks() == b.blocks()
                && a.hold() == b.hold()
                && Math.abs(a.ledgeMm() - b.ledgeMm()) <= 0.1 * a.ledgeMm()
                && Math.abs(a.trappedMm3() - b.trappedMm3()) <= 0.1 * a.trappedMm3();
    }

    private int[][] hiddenFacets(int[] patchOf, int count) {
        List<List<Integer>> found = new ArrayList<>();
        for (int i = 0; i < count; i++) found.add(new ArrayList<>());
        TriMesh mesh = pulled.mesh();
        for (int f = 0; f < sight.length; f++) {
            if (sight[f] != Sight.HIDDEN) continue;
            Vec3 p = mesh.centroid(f);
            int i = (int) ((p.x() - grid.x0()) / grid.cell()), j = (int) ((p.y() - grid.y0()) / grid.cell());
            if (i < 0 || j < 0 || i >= grid.nx() || j >= grid.ny()) continue;
            int patch = patchOf[grid.index(i, j)];
            if (patch >= 0) found.get(patch).add(f);
        }
        return found.stream()
                .map(l -> l.stream().mapToInt(Integer::intValue).toArray())
                .toArray(int[][]::new);
    }

    private double trapped(GridPatches.Patch p) {
        double sum = 0;
        for (int c : p.cells())
            for (int k = 1; k < map.intervalCount(c); k++) sum += map.low(c, k) - map.high(c, k - 1);
        return sum * grid.cell() * grid.cell();
    }

    private Undercut undercut(GridPatches.Patch p, int[] facets) {
        double volume = trapped(p), shadow = p.areaMm2(grid);
        double open = 0, towardsA = 0, x = 0, y = 0, z = 0, weight = 0;
        for (int c : p.cells()) {
            double low = map.high(c, 0), high = map.low(c, 1), mid = (low + high) / 2;
            int i = c % grid.nx(), j = c / grid.nx();
            x += (high - low) * grid.x(i);
            y += (high - low) * grid.y(j);
            z += (high - low) * mid;
            weight += high - low;
            for (int[] d : new int[][] {{1, 0}, {-1, 0}, {0, 1}, {0, -1}}) {
                int way = opening(i + d[0], j + d[1], mid);
                if (way == CLOSED) continue;
                open++;
                towardsA += way;
            }
        }
        double ledge = open == 0 ? Math.sqrt(shadow) : shadow / (open * grid.cell());
        Vec3 size = pulled.mesh().box().size();
        double across = Math.min(size.x(), size.y());
        double strain = StripStrain.percent(across + ledge, across);
        Vec3 at = pulled.toFile(new Vec3(x / weight, y / weight, z / weight));
        Side blocks = towardsA > 0 ? Side.A : Side.B;
        return new Undercut(
                0,
                at,
                blocks,
                shadow,
                volume,
                inTheWay(p, blocks),
                volume / shadow,
                ledge,
                strain,
                hold(strain, shadow, volume),
                facets);
    }

    /** All plastic the half's trapped metal would have to pass: the layers below it for half B, above it for half A. */
    private double inTheWay(GridPatches.Patch p, Side blocks) {
        double sum = 0;
        for (int c : p.cells()) {
            int first = blocks == Side.B ? 0 : 1, layers = map.intervalCount(c) - 1;
            for (int k = first; k < first + layers; k++) sum += map.high(c, k) - map.low(c, k);
        }
        return sum * grid.cell() * grid.cell();
    }

    private static final int CLOSED = 9;

    /** From a neighbouring column the space is closed, or open to A (1), to B (−1), or to the side (0). */
    private int opening(int i, int j, double z) {
        if (i < 0 || j < 0 || i >= grid.nx() || j >= grid.ny()) return 0;
        int c = grid.index(i, j), n = map.intervalCount(c);
        if (n == 0) return 0;
        if (z > map.high(c, n - 1)) return 1;
        if (z < map.low(c, 0)) return -1;
        return CLOSED;
    }

    private Finding finding(Undercut u, int count) {
        boolean springs = u.hold() == Undercut.Hold.SPRINGS_OFF;
        return Finding.of(
                        severity(u.hold()),
                        "undercut",
                        words(u) + hidden(u) + (count == 1 ? "" : " The same in " + count + " places."))
                .at(u.at())
                .measured(
                        u.strainPercent(),
                        springs ? limits.mostStripPercent() : limits.leastStripPercent(),
                        "%",
                        limits.stripSource())
                .remedy(
                        springs
                                ? "Round the ledge and lean it 30 to 45°."
                                : "Open the part above or below the ledge by " + Say.mm(u.ledgeMm(), 2)
                                        + " so that metal can pass through, or form it with an insert loaded by hand.",
                        springs ? "" : "A window of about " + Say.number(u.shadowMm2(), 1) + " mm².",
                        "Slides or loose inserts.");
    }

    private String hidden(Undercut u) {
        List<FaceReview> under = faces.under(u.facets());
        if (under.isEmpty()) return "";
        return under.size() == 1
                ? " Hidden from both halves: " + under.getFirst().called() + "."
                : " Hidden from both halves: " + FaceTable.numbers(under) + ".";
    }

    private static String words(Undercut u) {
        String half = u.blocks().words(), ledge = Say.mm(u.ledgeMm(), 2);
        String volumes =
                volume(u.inTheWayMm3()) + " of plastic lies in the way of " + volume(u.trappedMm3()) + " of metal";
        return switch (u.hold()) {
            case SPRINGS_OFF ->
                "A ledge of " + ledge + " holds " + half + "; the part has to spring " + ledge + " to come off.";
            case STRAINS_PART ->
                Say.capital(half) + " leaves only past a ledge of " + ledge + ": " + volumes + "; " + stretch(u)
                        + ". The part is marked or torn there.";
            case LOCKS ->
                Say.capital(half) + " cannot leave: a ledge of " + ledge + " locks it in, " + volumes + "; "
                        + stretch(u) + ".";
        };
    }

    private static String stretch(Undercut u) {
        return "pulled over it, the plastic would stretch " + Say.number(u.strainPercent(), 1) + " %";
    }

    private static String volume(double mm3) {
        return Say.number(mm3, mm3 < 10 ? 2 : 0) + " mm³";
    }

    private Undercut.Hold hold(double strainPercent, double shadowMm2, double trappedMm3) {
        if (strainPercent <= limits.leastStripPercent()) return Undercut.Hold.SPRINGS_OFF;
        boolean small = shadowMm2 < SMALL_SHADOW * pulled.exactShadow().area()
                && trappedMm3 < SMALL_VOLUME * pulled.part().mass().volumeMm3();
        return small || strainPercent <= limits.mostStripPercent() ? Undercut.Hold.STRAINS_PART : Undercut.Hold.LOCKS;
    }

    private static Severity severity(Undercut.Hold hold) {
        return switch (hold) {
            case SPRINGS_OFF -> Severity.WATCH;
            case STRAINS_PART -> Severity.ASK;
            case LOCKS -> Severity.STOP;
        };
    }
}
