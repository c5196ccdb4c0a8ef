package shotwright.press;

import shotwright.measure.Quantity;

/**
 * A closed mold as it stands in the press.
 *
 * @param widthMm across the press, x of the mold frame
 * @param heightMm along the nozzle edge direction, y of the mold frame
 * @param thicknessMm both halves together, along the pull
 */
public record MoldSize(Quantity widthMm, Quantity heightMm, Quantity thicknessMm) {}
