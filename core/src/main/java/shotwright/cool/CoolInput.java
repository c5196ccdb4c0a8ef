package shotwright.cool;

import shotwright.layout.LayoutResult;
import shotwright.mesh.WallThickness;
import shotwright.press.Press;
import shotwright.resin.Resin;
import shotwright.stock.MoldMaterial;

/**
 * What station 70 needs.
 *
 * @param resin the resin
 * @param meltC melt temperature set
 * @param press the press
 * @param material alloy of the halves
 * @param layout block, feed and gates
 * @param walls wall samples of the part
 * @param metalVolumeMm3 metal of both halves (the block when they are not made yet)
 * @param shotG mass of one shot with its feed
 * @param fillTimeS fill time
 * @param holdTimeS hold time; it runs inside the cooling time
 * @param roomC room temperature
 */
public record CoolInput(
        Resin resin,
        double meltC,
        Press press,
        MoldMaterial material,
        LayoutResult layout,
        WallThickness walls,
        double metalVolumeMm3,
        double shotG,
        double fillTimeS,
        double holdTimeS,
        double roomC) {
    public CoolInput {
        Excess.positive("metal volume", metalVolumeMm3, "mm³");
        Excess.positive("shot", shotG, "g");
    }
}
