package shotwright.sizing;

import shotwright.measure.Band;
import shotwright.measure.Source;

/**
 * One way to the clamp.
 *
 * @param name which way
 * @param clampKn what it gives, kN
 * @param words how, with its numbers
 * @param source whose it is
 */
public record ClampWay(String name, Band clampKn, String words, Source source) {}
