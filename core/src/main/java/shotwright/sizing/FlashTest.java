package shotwright.sizing;

import static shotwright.sizing.Figures.kn;
import static shotwright.sizing.Figures.mm2;
import static shotwright.sizing.Figures.number;

import shotwright.press.Press;

/**
 * How a shop measures the clamp of a hand vise: flash sets in when pressure times area equals the clamp. From the pressure at that moment
 * follow the clamp and the efficiency of the vise screw.
 */
public final class FlashTest {
    private FlashTest() {}

    /** Clamp from the mean melt pressure at which a film of flash just shows all round, kN. */
    public static double clampKn(double meanMpa, double areaMm2) {
        return ClampForce.meanPressureKn(meanMpa, areaMm2);
    }

    /** Efficiency of the vise screw from that clamp, F·p/(2π·T). */
    public static double efficiencyShare(double clampKn, double torqueNm, double leadMm) {
        return clampKn * leadMm / (2 * Math.PI * torqueNm);
    }

    /** The test in words for one press and one mold. */
    public static String words(Press press, double areaMm2) {
        double expected = press.nameplateKn(), atMpa = expected * 1000 / areaMm2;
        return "Measure the clamp before you trust it: close the vise with a torque wrench and write the torque down. Fill at the lowest pressure"
                + " that fills, then raise the pressure a little from shot to shot, standing beside the vise, until a film of flash just shows all"
                + " round the part. At that moment the clamp is the mean melt pressure times " + mm2(areaMm2) + "; "
                + kn(expected)
                + " would mean flash at about " + number(atMpa)
                + " MPa mean. Enter the result as the press’s own clamp.";
    }
}
