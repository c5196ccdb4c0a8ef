package shotwright.mold;

/**
 * One cut-out: what the split measured against its closed form.
 *
 * @param name which one
 * @param measuredMm3 volume taken from the halves by the split
 * @param closedFormMm3 volume by formula, before the cavity or another cut-out trimmed it
 * @param trimmed true when the cavity or another cut-out took part of it, so that the two may differ
 */
public record CutOut(String name, double measuredMm3, double closedFormMm3, boolean trimmed) {}
