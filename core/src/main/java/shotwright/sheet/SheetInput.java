package shotwright.sheet;

import org.jspecify.annotations.Nullable;
import shotwright.cool.CoolResult;
import shotwright.fill.FillResult;
import shotwright.layout.LayoutResult;
import shotwright.press.Press;
import shotwright.resin.Resin;

/**
 * What the press sheet is made from.
 *
 * @param part name of the part
 * @param resin the resin
 * @param before what was in the barrel before; null when not known
 * @param press the press
 * @param layout the mold
 * @param fill answer of station 60
 * @param cool answer of station 70
 * @param shotG mass of one shot with its feed
 * @param clampNeededKn clamp from sizing
 * @param residenceS time in the barrel, from sizing
 */
public record SheetInput(
        String part,
        Resin resin,
        @Nullable Resin before,
        Press press,
        LayoutResult layout,
        FillResult fill,
        CoolResult cool,
        double shotG,
        double clampNeededKn,
        double residenceS) {
    public SheetInput {
        if (!(shotG > 0)) throw new IllegalArgumentException("shot: " + shotG + " g is not above zero");
    }
}
