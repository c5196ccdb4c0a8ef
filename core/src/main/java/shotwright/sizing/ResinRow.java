package shotwright.sizing;

import shotwright.measure.Band;
import shotwright.resin.Resin;

/**
 * What the same mold would ask for in another resin.
 *
 * @param resin the resin
 * @param verdict what our press says
 * @param clampNeededKn clamp
 * @param clampBandKn its band
 * @param shotG shot
 * @param roughMpa melt pressure, rough (±40 %)
 * @param sizeChangePercent how much larger (+) or smaller (−) the parts come out of a mold cut for the first resin
 * @param words first reason, empty when it fits
 */
public record ResinRow(
        Resin resin,
        Verdict verdict,
        double clampNeededKn,
        Band clampBandKn,
        double shotG,
        double roughMpa,
        double sizeChangePercent,
        String words) {}
