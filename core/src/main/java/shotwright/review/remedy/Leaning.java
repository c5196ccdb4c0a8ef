package shotwright.review.remedy;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import shotwright.brep.Drafted;
import shotwright.brep.ExactBody;
import shotwright.brep.ExactFace;
import shotwright.brep.ExactFailure;
import shotwright.brep.ExactMass;
import shotwright.brep.ExactShapes;
import shotwright.brep.FacedMesh;
import shotwright.brep.LeanedFace;
import shotwright.brep.Solid;
import shotwright.geom.Vec3;
import shotwright.mesh.Bvh;
import shotwright.mesh.Edges;
import shotwright.mesh.SelfCrossing;
import shotwright.progress.Progress;
import shotwright.review.face.FaceFacets;
import shotwright.review.face.FaceLean;

/** A part whose walls are leaned one after the other. Each step is looked at from all sides and taken back when anything is wrong. */
final class Leaning {
    /** How far off a wall's draft may be. */
    static final double SAME_DEG = 0.01;

    private static final double DEFLECTION_MM = 0.02, TURN_RAD = 0.2;
    /** Volume may change by no more than this many times what the leaned walls sweep. */
    private static final double SWEPT = 1.5;

    private static final String NO_ROOM = "Leaned, it would not meet the faces beside it any more.";

    private final ExactShapes x;
    private final byte[] step;
    private final int number;
    private final Vec3 pull;
    private final double draftDeg;
    private final Progress progress;
    private final List<List<LeanedFace>> done = new ArrayList<>();
    private State state;

    /** The solid so far and what is known of it. */
    private record State(Solid solid, List<ExactFace> faces, double volumeMm3) {}

    private Leaning(Leaning from, State state) {
        this(from.x, from.step, from.number, from.pull, from.draftDeg, from.progress, state);
        done.addAll(from.done);
    }

    private Leaning(
            ExactShapes x, byte[] step, int number, Vec3 pull, double draftDeg, Progress progress, State state) {
        this.x = x;
        this.step = step;
        this.number = number;
        this.pull = pull;
        this.draftDeg = draftDeg;
        this.progress = progress;
        this.state = state;
    }

    /** The part as its file has it. */
    static Leaning start(ExactShapes x, byte[] step, int number, Vec3 pull, double draftDeg, Progress progress)
            throws ExactFailure {
        return new Leaning(x, step, number, pull, draftDeg, progress, read(x, step, number));
    }

    private static State read(ExactShapes x, byte[] step, int number) throws ExactFailure {
        Solid solid = x.readStep(step).solids().get(number);
        return new State(solid, x.faces(solid), x.volumeMm3(solid));
    }

    /** The same part, to be leaned on from here in another way. */
    Leaning branch() {
        return new Leaning(this, state);
    }

    /** The solid so far, leaned once more when an engine has ended since. */
    Solid solid() throws ExactFailure {
        if (isLost()) replay();
        return state.solid;
    }

    List<ExactFace> faces() {
        return state.faces;
    }

    double volumeMm3() {
        return state.volumeMm3;
    }

    /**
     * Leans chains towards one half, or leaves everything as it was.
     *
     * @return why it could not be done; empty when it was
     */
    Optional<String> lean(List<Chain> chains, boolean towardsA) throws ExactFailure {
        progress.at("leaning walls", 0.5);
        List<LeanedFace> asked = chains.stream()
                .map(c -> c.leaned(draw(c, towardsA), pull, Math.toRadians(draftDeg)))
                .toList();
        for (int attempt = 0; attempt < 2; attempt++) {
            try {
                return tried(asked, chains, towardsA);
            } catch (ExactFailure e) {
                if (e.why() == ExactFailure.Why.NO_ENGINE) throw e;
                if (!isLost()) return Optional.of(NO_ROOM);
                replay();
            }
        }
        return Optional.of("The exact-solid engine gave up on it.");
    }

    private Optional<String> tried(List<LeanedFace> asked, List<Chain> chains, boolean towardsA) throws ExactFailure {
        Drafted made = x.draft(state.solid, asked);
        Optional<String> wrong = wrong(made, chains, towardsA);
        if (wrong.isEmpty()) done.add(asked);
        else x.release(List.of(made.solid()));
        return wrong;
    }

    /** A new engine knows nothing of the shapes of the one before. */
    private boolean isLost() throws ExactFailure {
        try {
            x.box(state.solid);
            return false;
        } catch (ExactFailure e) {
            if (e.why() == ExactFailure.Why.NO_ENGINE) throw e;
            return true;
        }
    }

    private Vec3 draw(Chain c, boolean towardsA) {
        boolean up =
                switch (c.by()) {
                    case A -> true;
                    case B -> false;
                    case BOTH, NEITHER -> towardsA;
                };
        return up ? pull : pull.negate();
    }

    /** Everything once more in a new engine; the old one took its shapes with it. */
    private void replay() throws ExactFailure {
        State s = read(x, step, number);
        for (List<LeanedFace> asked : done) {
            Solid next = x.draft(s.solid, asked).solid();
            s = new State(next, x.faces(next), x.volumeMm3(next));
        }
        state = s;
    }

    private Optional<String> wrong(Drafted made, List<Chain> chains, boolean towardsA) throws ExactFailure {
        for (int f : made.moved())
            if (chains.stream().noneMatch(c -> c.holds(f)))
                return Optional.of("It runs smoothly into face " + (f + 1) + ", which would lean with it.");
        Solid solid = made.solid();
        List<ExactFace> faces = x.faces(solid);
        if (IntStream.range(0, faces.size())
                .anyMatch(i -> !made.moved().contains(i) && !Surfaces.same(state.faces.get(i), faces.get(i))))
            return Optional.of("Faces beside it would move with it.");
        ExactMass mass = x.measure(solid);
        double volume = mass.volumeMm3(), swept = 0;
        for (Chain c : chains) swept += c.areaMm2() * c.reachMm() * Math.tan(Math.toRadians(draftDeg));
        if (Math.abs(volume - state.volumeMm3) > SWEPT * swept) return Optional.of(NO_ROOM);
        FacedMesh mesh = x.mesh(solid, DEFLECTION_MM, TURN_RAD);
        if (!Edges.of(mesh.mesh()).isClosed()) return Optional.of(NO_ROOM);
        ExactBody body = new ExactBody(number, mass, faces, mesh.faceOf(), mesh.normals());
        List<FaceFacets> facets = FaceFacets.of(body, mesh.mesh());
        for (Chain c : chains) {
            Vec3 draw = draw(c, towardsA);
            for (int f : c.faceNumbers()) {
                FaceLean lean = FaceLean.of(facets.get(f), draw);
                boolean right =
                        Math.abs(lean.lowDeg() - draftDeg) < SAME_DEG && Math.abs(lean.highDeg() - draftDeg) < SAME_DEG;
                if (!right) return Optional.of("It does not come out at the draft asked for.");
            }
        }
        if (SelfCrossing.of(Bvh.of(mesh.mesh()), progress).crosses())
            return Optional.of("It would run through another wall.");
        // last, since every such look takes engine memory that does not come back
        if (!x.check(solid).isOneClosedSolid()) return Optional.of(NO_ROOM);
        state = new State(solid, faces, volume);
        return Optional.empty();
    }
}
