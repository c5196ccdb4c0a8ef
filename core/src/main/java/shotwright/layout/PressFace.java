package shotwright.layout;

import java.util.OptionalDouble;
import shotwright.measure.Quantity;
import shotwright.press.Press;

/**
 * What the layout needs to know of the press, or of two presses the mold must serve.
 *
 * @param name name shown to people
 * @param entry how its nozzle meets the mold
 * @param guided true when platens carry and guide the halves, false when the mold is opened by hand on the bench
 * @param boreMm nozzle bore
 * @param nozzleRadiusMm radius of the nozzle's nose
 * @param contactN force with which the nozzle is pressed on the mold
 * @param axisHeightMm height of the nozzle axis above the table, when the nozzle lies and cannot be moved up or down
 * @param pressureMpa highest pressure on the melt
 * @param flowMm3PerS highest flow
 * @param clampN clamp force that can be used
 * @param smallestWidthMm narrowest mold it can close on, along x
 * @param smallestHeightMm lowest mold it can close on, along y
 * @param largestWidthMm widest mold, along x
 * @param largestHeightMm highest mold, along y
 * @param smallestThicknessMm thinnest closed mold, along z
 * @param largestThicknessMm thickest closed mold
 * @param knockOutN force of its knock-out; 0 when it has none
 * @param knockOutStrokeMm stroke of its knock-out
 * @param boltsHalves true when the halves are screwed to platens or to each other
 */
public record PressFace(
        String name,
        LayoutResult.NozzleEntry entry,
        boolean guided,
        double boreMm,
        double nozzleRadiusMm,
        double contactN,
        OptionalDouble axisHeightMm,
        double pressureMpa,
        double flowMm3PerS,
        double clampN,
        double smallestWidthMm,
        double smallestHeightMm,
        double largestWidthMm,
        double largestHeightMm,
        double smallestThicknessMm,
        double largestThicknessMm,
        double knockOutN,
        double knockOutStrokeMm,
        boolean boltsHalves) {

    /** A press of the rack. Its flow is taken at half its pressure. */
    public static PressFace of(Press p) {
        Quantity radius = p.nozzleRadiusMm(), axis = p.nozzleAxisHeightMm(), knockOut = p.knockOutN();
        boolean edge = p.nozzleMeets() == Press.NozzleMeets.PARTING_EDGE;
        return new PressFace(
                p.name(),
                edge ? LayoutResult.NozzleEntry.PARTING_EDGE : LayoutResult.NozzleEntry.BACK,
                p.fixtureGuided(),
                p.nozzleBoreMm().value(),
                radius != null ? radius.value() : 0,
                1000 * p.nozzleContactKn().value(),
                axis != null && edge ? OptionalDouble.of(axis.value()) : OptionalDouble.empty(),
                p.maxMeltMpa().value(),
                1000 * p.flowCm3PerS(p.maxMeltMpa().value() / 2),
                1000 * p.usableKn(),
                p.moldMinMm().widthMm().value(),
                p.moldMinMm().heightMm().value(),
                p.moldMaxMm().widthMm().value(),
                p.moldMaxMm().heightMm().value(),
                p.moldMinMm().thicknessMm().value(),
                p.moldMaxMm().thicknessMm().value(),
                knockOut != null ? knockOut.value() : 0,
                knockOut != null ? p.openStrokeMm().value() : 0,
                p.clampKind() == Press.ClampKind.PLATENS_BOLTS && !p.fixtureGuided());
    }

    /** The tighter of two presses in everything but the way the nozzle enters, which the first decides. */
    public PressFace with(PressFace other) {
        return new PressFace(
                name + " and " + other.name,
                entry,
                guided && other.guided,
                Math.max(boreMm, other.boreMm),
                Math.max(nozzleRadiusMm, other.nozzleRadiusMm),
                Math.max(contactN, other.contactN),
                axisHeightMm.isPresent() ? axisHeightMm : other.axisHeightMm,
                Math.min(pressureMpa, other.pressureMpa),
                Math.min(flowMm3PerS, other.flowMm3PerS),
                Math.min(clampN, other.clampN),
                Math.max(smallestWidthMm, other.smallestWidthMm),
                Math.max(smallestHeightMm, other.smallestHeightMm),
                Math.min(largestWidthMm, other.largestWidthMm),
                Math.min(largestHeightMm, other.largestHeightMm),
                Math.max(smallestThicknessMm, other.smallestThicknessMm),
                Math.min(largestThicknessMm, other.largestThicknessMm),
                Math.min(knockOutN, other.knockOutN),
                Math.min(knockOutStrokeMm, other.knockOutStrokeMm),
                boltsHalves || other.boltsHalves);
    }
}
