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
    /** A value so near below a limit, as a share of a band, lies on it: single figures are no truer. */
    private static final double ON_LIMIT = 1e-5;

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

    /** Share of the map for a value; that of its band when there are bands. */
    public double share(double value) {
        double s = plain(value);
        return bands <= 0 ? s : bands == 1 ? 0.5 : (double) band(value) / (bands - 1);
    }

    /** Share of the way as if there were no bands. */
    double plain(double value) {
        int i = 0;
        while (i < values.size() - 2 && value > values.get(i + 1)) i++;
        double v0 = values.get(i), v1 = values.get(i + 1), s0 = shares.get(i), s1 = shares.get(i + 1);
        return Math.clamp(s0 + (s1 - s0) * (value - v0) / (v1 - v0), 0, 1);
    }

    /**
     * Equal bands between round values that hold the data, at most {@code most} of them: steps of 1, 2, 2.5 or 5 times a power of ten.
     */
    public static ColourScale rounded(ColourMap map, double least, double greatest, int most) {
        double span = Math.max(greatest - least, Math.max(1e-6, 0.02 * Math.abs(greatest)));
        for (double ten = Math.pow(10, Math.floor(Math.log10(span / most))); ; ten *= 10) {
            for (double f : new double[] {1, 2, 2.5, 5}) {
                double step = f * ten;
                long low = (long) Math.floor(least / step + 1e-9), high = (long) Math.ceil(greatest / step - 1e-9);
                if (high <= low) high = low + 1;
                if (high - low <= most)
                    return even(map, low * step, high * step).banded((int) (high - low));
            }
        }
    }

    /** The band a value lies in, one on a limit in the band above it, counted from 0; −1 for no value or a scale without bands. */
    public int band(double value) {
        if (bands <= 0 || Double.isNaN(value)) return -1;
        return (int) Math.clamp(Math.floor(plain(value) * bands + ON_LIMIT), 0, bands - 1);
    }

    /** Lower limits of the bands and the upper limit of the last. */
    public List<Double> limits() {
        return java.util.stream.IntStream.rangeClosed(0, Math.max(1, bands))
                .mapToObj(i -> from() + (to() - from()) * i / Math.max(1, bands))
                .toList();
    }

    /** The colour of a value; mid grey for no value. */
    public int rgb(double value) {
        return Double.isNaN(value) ? Ink.NO_VALUE : map.at(share(value));
    }
}
