package shotwright.drawing;

import java.util.List;

/**
 * A line: weight, colour, dashes. Thick is twice thin (ISO 128-2).
 *
 * @param weight width, mm on paper
 * @param rgb colour
 * @param dashes lengths on and off, mm; empty for a whole line
 */
public record Pen(double weight, int rgb, List<Double> dashes) {
    public static final Pen HAIR = new Pen(0.13, Ink.BLACK);
    public static final Pen THIN = new Pen(0.25, Ink.BLACK);
    public static final Pen THICK = new Pen(0.5, Ink.BLACK);
    public static final Pen FRAME = new Pen(0.7, Ink.BLACK);

    /** Hidden edges. */
    public static final Pen HIDDEN = new Pen(0.25, Ink.BLACK, List.of(1.25, 0.625));

    /** Centre lines: long, short. */
    public static final Pen CENTRE = new Pen(0.18, Ink.GREY, List.of(3.0, 0.625, 0.5, 0.625));

    /** Where a cut is taken. */
    public static final Pen CUT = new Pen(0.25, Ink.BLACK, List.of(3.5, 0.75, 0.75, 0.75));

    public Pen {
        if (!(weight > 0)) throw new IllegalArgumentException("weight: " + weight + " is not above zero");
        dashes = List.copyOf(dashes);
    }

    public Pen(double weight, int rgb) {
        this(weight, rgb, List.of());
    }

    public Pen in(int colour) {
        return new Pen(weight, colour, dashes);
    }

    public Pen dashed(Double... lengths) {
        return new Pen(weight, rgb, List.of(lengths));
    }

    /**
     * A chain line as it must be laid on a straight line of this length: its pattern stretched a little, so that the line begins and ends in a long
     * dash and has one in the middle, where centre lines cross (ISO 128-2, from memory). Too short for that, it is a whole line. Other lines stay.
     */
    Pen fitted(double lengthMm) {
        if (dashes.size() != 4) return this;
        double dash = dashes.getFirst(),
                period = dashes.stream().mapToDouble(Double::doubleValue).sum();
        if (lengthMm < dash + period) return new Pen(weight, rgb);
        long periods = 2 * Math.max(1, Math.round((lengthMm - dash) / (2 * period)));
        double stretch = lengthMm / (periods * period + dash);
        return new Pen(weight, rgb, dashes.stream().map(d -> d * stretch).toList());
    }
}
