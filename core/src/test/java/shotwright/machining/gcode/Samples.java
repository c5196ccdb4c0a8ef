package shotwright.machining.gcode;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import shotwright.geom.Box3;
import shotwright.geom.Vec2;
import shotwright.geom.Vec3;
import shotwright.machining.path.Arc;
import shotwright.machining.path.Coolant;
import shotwright.machining.path.Drilling;
import shotwright.machining.path.Dwell;
import shotwright.machining.path.Line;
import shotwright.machining.path.Move;
import shotwright.machining.path.Operation;
import shotwright.machining.path.Program;
import shotwright.machining.path.Rapid;
import shotwright.machining.path.WorkOffset;

/** Programs for the tests: seeded random ones, and a plain one. */
final class Samples {
    static final Box3 STOCK = new Box3(new Vec3(-40, -30, -20), new Vec3(40, 30, 0.5));
    static final double CLEARANCE_MM = 12.5;

    private Samples() {}

    /** Operations of lines, arcs, helices, full circles, dwells, drilling; every move longer than a few last digits. */
    static Program random(long seed) {
        Random random = new Random(seed);
        List<Operation> operations = new ArrayList<>();
        int count = 1 + random.nextInt(4);
        for (int n = 1; n <= count; n++) {
            List<Move> moves = new ArrayList<>();
            Vec3 at = new Vec3(30 * random.nextDouble() - 15, 30 * random.nextDouble() - 15, CLEARANCE_MM);
            moves.add(new Rapid(at, at = new Vec3(at.x(), at.y(), 2 + random.nextDouble())));
            int size = 5 + random.nextInt(60);
            for (int i = 0; i < size; i++) {
                Move m = move(random, at);
                moves.add(m);
                at = m.to();
            }
            moves.add(new Rapid(at, new Vec3(at.x(), at.y(), CLEARANCE_MM)));
            Coolant coolant = Coolant.values()[random.nextInt(3)];
            operations.add(new Operation(
                    n,
                    "cut no. " + n,
                    1 + random.nextInt(3),
                    "flat-3.0x9",
                    20,
                    1000 * (1 + random.nextInt(20)),
                    coolant,
                    moves));
        }
        return new Program("half A, parting face", WorkOffset.G55, STOCK, CLEARANCE_MM, operations);
    }

    private static Move move(Random random, Vec3 at) {
        double feed = 50 + Math.round(1000 * random.nextDouble());
        Vec3 there =
                new Vec3(30 * random.nextDouble() - 15, 30 * random.nextDouble() - 15, 3 * random.nextDouble() - 5);
        double pick = random.nextDouble();
        if (pick < 0.4) return new Line(at, there, feed);
        if (pick < 0.85) {
            double radius = Math.exp(-2 + 6 * random.nextDouble()), angle = 2 * Math.PI * random.nextDouble();
            double most = Math.min(1, 300 / radius), sweep = (0.02 + 0.93 * random.nextDouble()) * 2 * Math.PI * most;
            boolean left = random.nextBoolean();
            Vec2 centre = at.xy().plus(new Vec2(radius * Math.cos(angle), radius * Math.sin(angle)));
            double end = angle + Math.PI + (left ? sweep : -sweep);
            double rise = random.nextBoolean() ? 0 : random.nextDouble() - 0.5;
            Vec2 to = centre.plus(new Vec2(radius * Math.cos(end), radius * Math.sin(end)));
            if (random.nextInt(8) == 0) to = at.xy();
            return new Arc(at, to.atZ(at.z() + rise), centre, left, feed);
        }
        if (pick < 0.88) return new Dwell(at, 0.5);
        if (pick < 0.94) return new Rapid(at, new Vec3(at.x(), at.y(), at.z() + 3 * random.nextDouble()));
        Drilling.Kind kind = Drilling.Kind.values()[random.nextInt(4)];
        double peck = kind.pecks() ? 0.5 + random.nextDouble() : 0, dwell = kind == Drilling.Kind.SPOT ? 0.25 : 0;
        return new Drilling(kind, at, there.xy(), 1.5, -6.25, peck, dwell, random.nextBoolean(), feed);
    }
}
