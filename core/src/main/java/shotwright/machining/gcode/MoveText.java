package shotwright.machining.gcode;

import java.util.List;
import shotwright.geom.Vec2;
import shotwright.geom.Vec3;
import shotwright.machining.path.Arc;
import shotwright.machining.path.Coolant;
import shotwright.machining.path.Drilling;
import shotwright.machining.path.Dwell;
import shotwright.machining.path.Line;
import shotwright.machining.path.Move;
import shotwright.machining.path.Operation;
import shotwright.machining.path.Rapid;

/** Operations as blocks: keeps where the control stands, in whole last digits, so that rounding never adds up. */
final class MoveText {
    /** Arcs that turn further are written in two halves: ends near each other say too little about the centre. */
    private static final double MOST_TURN_RAD = Math.PI * 1.0001;

    /** Arcs shorter or tighter than this are written as a line: the handbook's least arc, mm. */
    private static final double LEAST_ARC_MM = 0.01;

    /** Rounding may turn an arc by so much before it is written as lines instead. */
    private static final double MOST_SLIP_RAD = 0.2;

    private final Dialect dialect;
    private final BlockText out;
    private final double clearanceZMm;
    private final double spinUpS;

    private long x;
    private long y;
    private long z;
    private boolean placed;
    private String feed = "";
    private int tool = -1;
    private long speedRpm = -1;
    private Coolant coolant = Coolant.OFF;
    private boolean cycle;
    private long heldZ;

    MoveText(Dialect dialect, BlockText out, double clearanceZMm, double spinUpS) {
        this.dialect = dialect;
        this.out = out;
        this.clearanceZMm = clearanceZMm;
        this.spinUpS = spinUpS;
    }

    void write(List<Operation> operations) {
        for (Operation o : operations) {
            out.comment("OP " + o.number() + ": " + o.words());
            ready(o);
            feed = "";
            approach(o.from());
            for (Move m : o.moves()) move(m);
            endCycle();
            rise();
        }
    }

    private void ready(Operation o) {
        boolean change = o.toolNumber() != tool;
        if (change && tool >= 0) {
            out.block("M5");
            if (coolant != Coolant.OFF) out.block("M9");
            coolant = Coolant.OFF;
            speedRpm = -1;
        }
        if (change) changeTool(o);
        if (Math.round(o.speedRpm()) != speedRpm) spindle(Math.round(o.speedRpm()));
        coolant(o.coolant());
        if (change) rise();
    }

    private void changeTool(Operation o) {
        tool = o.toolNumber();
        String stickout = o.stickoutMm() > 0 ? ", STICKOUT " + out.length(o.stickoutMm()) + " AT LEAST" : "";
        out.comment("CUTTER T" + tool + " " + o.cutterId() + stickout);
        switch (dialect.toolChange()) {
            case M6 -> out.block("T" + tool + " M6");
            case PAUSE -> {
                if (dialect.machineRetract()) out.block("G53 G0 Z0.");
                out.block("T" + tool);
                out.comment("PUT IN T" + tool + ", TOUCH OFF Z, THEN GO ON");
                out.block("M0");
            }
        }
        if (dialect.lengthCompensation()) out.block("G43 H" + tool);
        placed = false;
    }

    private void spindle(long rpm) {
        boolean starts = speedRpm <= 0;
        speedRpm = rpm;
        if (rpm == 0) {
            out.block("M5");
            return;
        }
        out.block("S" + rpm + " M3");
        if (starts && spinUpS > 0) out.block("G4 P" + out.dwell(spinUpS));
    }

    private void coolant(Coolant wanted) {
        Coolant possible =
                switch (wanted) {
                    case OFF -> Coolant.OFF;
                    case MIST -> dialect.mist() ? Coolant.MIST : dialect.flood() ? Coolant.FLOOD : Coolant.OFF;
                    case FLOOD -> dialect.flood() ? Coolant.FLOOD : dialect.mist() ? Coolant.MIST : Coolant.OFF;
                };
        if (possible == coolant) return;
        if (coolant != Coolant.OFF) out.block("M9");
        if (possible != Coolant.OFF) out.block(possible == Coolant.MIST ? "M7" : "M8");
        coolant = possible;
    }

    private void rise() {
        long up = out.digits(clearanceZMm);
        if (placed && z == up) return;
        out.block("G0 Z" + out.length(up));
        z = up;
    }

    private void approach(Vec3 from) {
        long toX = out.digits(from.x()), toY = out.digits(from.y()), toZ = out.digits(from.z());
        if (toZ > z) vertical(toZ);
        if (!placed || toX != x || toY != y) out.block("G0 X" + out.length(toX) + " Y" + out.length(toY));
        x = toX;
        y = toY;
        placed = true;
        if (toZ != z) vertical(toZ);
    }

    private void vertical(long toZ) {
        out.block("G0 Z" + out.length(toZ));
        z = toZ;
    }

    private void move(Move m) {
        if (!(m instanceof Drilling)) endCycle();
        switch (m) {
            case Rapid r -> approach(r.to());
            case Line l -> line(l.to(), l.feedMmPerMin());
            case Arc a -> arc(a);
            case Dwell d -> out.block("G4 P" + out.dwell(d.timeS()));
            case Drilling d -> drilling(d);
        }
    }

    private void line(Vec3 to, double feedMmPerMin) {
        long toX = out.digits(to.x()), toY = out.digits(to.y()), toZ = out.digits(to.z());
        if (toX == x && toY == y && toZ == z) return;
        StringBuilder words = new StringBuilder("G1");
        if (toX != x) words.append(" X").append(out.length(toX));
        if (toY != y) words.append(" Y").append(out.length(toY));
        if (toZ != z) words.append(" Z").append(out.length(toZ));
        feedWord(words, feedMmPerMin);
        out.block(words.toString());
        x = toX;
        y = toY;
        z = toZ;
    }

    private void feedWord(StringBuilder words, double feedMmPerMin) {
        String wanted = out.feed(feedMmPerMin);
        if (wanted.equals(feed)) return;
        words.append(" F").append(wanted);
        feed = wanted;
    }

    private void arc(Arc a) {
        if (!dialect.arcs()) {
            asLines(a);
        } else if (a.sweepRad() > MOST_TURN_RAD) {
            arc(a.piece(0, 0.5));
            arc(a.piece(0.5, 1));
        } else {
            oneArc(a);
        }
    }

    private void oneArc(Arc a) {
        long toX = out.digits(a.to().x()), toY = out.digits(a.to().y()), toZ = out.digits(a.to().z());
        if (toX == x && toY == y || a.radiusMm() < LEAST_ARC_MM || a.radiusMm() * a.sweepRad() < LEAST_ARC_MM) {
            line(a.to(), a.feedMmPerMin());
            return;
        }
        double digitMm = dialect.digitMm();
        Vec2 start = new Vec2(x, y), end = new Vec2(toX, toY);
        long[] ij = RoundedArc.centre(start, end, a.centre().times(1 / digitMm));
        Vec2 centre = start.plus(new Vec2(ij[0], ij[1]));
        Arc rounded = new Arc(
                start.times(digitMm).atZ(0),
                end.times(digitMm).atZ(0),
                centre.times(digitMm),
                a.counterClockwise(),
                a.feedMmPerMin());
        if (Math.abs(rounded.sweepRad() - a.sweepRad()) > MOST_SLIP_RAD) {
            asLines(a);
            return;
        }
        StringBuilder words = new StringBuilder(a.counterClockwise() ? "G3" : "G2")
                .append(" X")
                .append(out.length(toX))
                .append(" Y")
                .append(out.length(toY));
        if (toZ != z) words.append(" Z").append(out.length(toZ));
        words.append(" I").append(out.length(ij[0])).append(" J").append(out.length(ij[1]));
        feedWord(words, a.feedMmPerMin());
        out.block(words.toString());
        x = toX;
        y = toY;
        z = toZ;
    }

    /** Chord error of a piece of angle α: r(1 − cos(α/2)). */
    private void asLines(Arc a) {
        double most = Math.clamp(1 - dialect.arcChordMm().value() / a.radiusMm(), -1, 1);
        double pieceRad = Math.min(Math.PI / 4, 2 * Math.acos(most));
        int pieces = (int) Math.max(1, Math.ceil(a.sweepRad() / pieceRad));
        for (int k = 1; k <= pieces; k++) line(a.at(k / (double) pieces), a.feedMmPerMin());
    }

    private void drilling(Drilling d) {
        if (!dialect.cycles()) {
            d.steps().forEach(this::move);
            return;
        }
        long held = Math.max(z, out.digits(d.retractZMm()));
        if (cycle && !d.toRetract() && heldZ != held) endCycle();
        if (!cycle) heldZ = held;
        StringBuilder words = new StringBuilder(d.toRetract() ? "G99" : "G98")
                .append(" G")
                .append(d.kind().code())
                .append(" X")
                .append(out.length(d.at().x()))
                .append(" Y")
                .append(out.length(d.at().y()))
                .append(" Z")
                .append(out.length(d.bottomZMm()))
                .append(" R")
                .append(out.length(d.retractZMm()));
        if (d.kind().pecks()) words.append(" Q").append(out.length(d.peckMm()));
        if (d.kind() == Drilling.Kind.SPOT) words.append(" P").append(out.dwell(d.dwellS()));
        feedWord(words, d.feedMmPerMin());
        out.block(words.toString());
        cycle = true;
        x = out.digits(d.to().x());
        y = out.digits(d.to().y());
        z = d.toRetract() ? out.digits(d.retractZMm()) : held;
    }

    private void endCycle() {
        if (cycle) out.block("G80");
        cycle = false;
    }
}
