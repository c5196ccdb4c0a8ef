package shotwright.machining.path;

import java.util.ArrayList;
import java.util.List;
import shotwright.geom.Box3;
import shotwright.geom.Vec3;

/**
 * What one cutter does in one go.
 *
 * @param number running number on the papers
 * @param words what is done, for example {@code "rough cavity"}
 * @param toolNumber number the control calls the cutter by
 * @param cutterId the cutter on the rack
 * @param stickoutMm how far it stands out of its holder; 0 when not told
 * @param speedRpm spindle speed
 * @param coolant what is blown or poured
 * @param moves chain of moves: each starts where the one before ended
 */
public record Operation(
        int number,
        String words,
        int toolNumber,
        String cutterId,
        double stickoutMm,
        double speedRpm,
        Coolant coolant,
        List<Move> moves) {
    /** Ends of neighbours in a chain may lie so far apart, mm. */
    private static final double GAP_MM = 1e-9;

    public Operation {
        moves = List.copyOf(moves);
        if (words.isBlank()) throw new IllegalArgumentException("words: say what operation " + number + " does");
        if (moves.isEmpty()) throw new IllegalArgumentException("moves: operation " + number + " has none");
        if (toolNumber < 0) throw new IllegalArgumentException("toolNumber: " + toolNumber + " is below zero");
        if (!(stickoutMm >= 0)) throw new IllegalArgumentException("stickoutMm: " + stickoutMm + " is below zero");
        if (!(speedRpm >= 0)) throw new IllegalArgumentException("speedRpm: " + speedRpm + " is below zero");
        for (int i = 1; i < moves.size(); i++) {
            Vec3 end = moves.get(i - 1).to(), start = moves.get(i).from();
            if (end.distance(start) > GAP_MM)
                throw new IllegalArgumentException(
                        "moves: move " + i + " starts at " + start + " but the one before ends at " + end);
        }
    }

    /** Where the tip stands before the first move. */
    public Vec3 from() {
        return moves.getFirst().from();
    }

    /** Where the tip stands after the last move. */
    public Vec3 to() {
        return moves.getLast().to();
    }

    /** Every move as single steps. */
    public List<Step> steps() {
        List<Step> out = new ArrayList<>(moves.size());
        for (Move m : moves) out.addAll(m.steps());
        return out;
    }

    /** The smallest box around the way of the tip. */
    public Box3 box() {
        Box3 box = moves.getFirst().box();
        for (Move m : moves) box = box.join(m.box());
        return box;
    }

    /** Way at a feed, mm. */
    public double feedLengthMm() {
        double sumMm = 0;
        for (Step s : steps()) if (s instanceof Feed) sumMm += s.lengthMm();
        return sumMm;
    }

    /** Way at the rapid, mm. */
    public double rapidLengthMm() {
        double sumMm = 0;
        for (Step s : steps()) if (s instanceof Rapid) sumMm += s.lengthMm();
        return sumMm;
    }

    /** The same cutter on other moves. */
    public Operation withMoves(List<? extends Move> others) {
        return new Operation(number, words, toolNumber, cutterId, stickoutMm, speedRpm, coolant, List.copyOf(others));
    }

    /** The same operation without drilling cycles: every hole as its single steps. */
    public Operation expanded() {
        return withMoves(steps());
    }

    /** The same way backwards, drilling cycles as single steps. */
    public Operation reversed() {
        return withMoves(steps().reversed().stream().map(Step::reversed).toList());
    }
}
