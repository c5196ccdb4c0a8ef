package shotwright.drawing;

import java.util.List;

/**
 * Values laid on a map: knots say which value stands at which share of the map, straight between them.
 *
 * @param map colours
 * @param values rising
 * @param shares of the map, rising from 0 to 1, one for each value
 * @param bands number of equal steps of colour; 0 for none
 */
public record ColourScale(ColourMap map, List<Double> values, List<Double> shares, int bands) {
    public ColourScale {
        values = List.copyOf(values);
        shares = List.copyOf(shares);
        if (values.size() < 2 || values.size() != shares.size())
            throw new IllegalArgumentException("values: " + values.size() + " for " + shares.size() + " shares");
        for (int i = 1; i < values.size(); i++) {
            if (!(values.get(i) > values.get(i - 1)))
                throw new IllegalArgumentException("values: " + values + " do not rise");
        }
    }

    /** Even from one value to another; equal ends are spread a little. */
    public static ColourScale even(ColourMap map, double from, double to) {
        double end = to > from ? to : from + Math.max(1e-6, Math.abs(from) * 1e-6);
        return new ColourScale(map, List.of(from, end), List.of(0.0, 1.0), 0);
    }

    /** Draft: 0 at the dark end, the draft asked for near white, half as much again at the sand end. */
    public static ColourScale draft(double askedDeg) {
        return new ColourScale(ColourMap.DRAFT, List.of(0.0, askedDeg, 1.5 * askedDeg), List.of(0.0, 2.0 / 3, 1.0), 0);
    }

    public ColourScale banded(int count) {
        return new ColourScale(map, values, shares, count);
    }

    public double from() {
        return values.getFirst();
    }

    public double to() {
        return values.getLast();
    }

    /** Share of the map for a value. */
    public double share(double value) {
        int i = 0;
        while (i < values.size() - 2 && value > values.get(i + 1)) i++;
        double v0 = values.get(i), v1 = values.get(i + 1), s0 = shares.get(i), s1 = shares.get(i + 1);
        double s = Math.clamp(s0 + (s1 - s0) * (value - v0) / (v1 - v0), 0, 1);
        return bands <= 0 ? s : bands == 1 ? 0.5 : Math.min(bands - 1, Math.floor(s * bands)) / (bands - 1);
    }

    /** The colour of a value; mid grey for no value. */
    public int rgb(double value) {
        return Double.isNaN(value) ? Ink.NO_VALUE : map.at(share(value));
    }
}
