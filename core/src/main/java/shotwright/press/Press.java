package shotwright.press;

import java.util.List;
import org.jspecify.annotations.Nullable;
import shotwright.measure.Quantity;
import shotwright.rack.Rack;

/**
 * One press, a class of presses or the shop's own.
 *
 * @param id id on the rack
 * @param name name shown
 * @param drive what pushes the melt
 * @param injection plunger or screw
 * @param clampKn nameplate clamp; null where a hand vise closes the mold and the clamp follows from torque
 * @param clampKind what holds the mold shut
 * @param viseLeadMm lead of the vise screw; null without a vise
 * @param viseTorqueNm torque a hand puts on the handle; null without a vise
 * @param usableShare share of the nameplate that may be counted on
 * @param frame what carries the clamp
 * @param pillarSpanMm distance between pillars, tie bars or throat; null when it does not apply
 * @param fixtureGuided true when the press guides the halves; false when they are opened by hand
 * @param nozzleMeets where the nozzle meets the mold
 * @param nozzleAxisHeightMm nozzle axis above the table or lower plate; null when it can be set
 * @param nozzleSeat how the nozzle seats on the mold
 * @param nozzleRadiusMm radius of its nose; null unless it has one
 * @param nozzleBoreMm bore of the nozzle tip
 * @param nozzleContactKn force that holds the nozzle against the mold
 * @param nozzleSelfCentring true when the seat centres the nozzle
 * @param nozzleThread whether nozzles and fittings are inch or metric
 * @param plungerDiaMm plunger or screw
 * @param strokeMm injection stroke
 * @param maxMeltMpa highest pressure in the melt
 * @param maxFlowCm3PerS highest flow; null when the drive's power sets it
 * @param ramPowerW power of the ram; null when the flow is given
 * @param shotGPs rated shot in polystyrene
 * @param barrelG melt the hot barrel or chamber holds, polystyrene
 * @param maxBarrelC highest barrel temperature
 * @param zones heated zones
 * @param moldMinMm smallest mold it can close on
 * @param moldMaxMm largest mold it takes
 * @param daylightMm widest opening between the plates
 * @param openStrokeMm travel of the moving plate
 * @param release how parts come out
 * @param knockOutN force of the knock-out; null without one
 * @param platenInsulated true when the plates hardly draw heat from the mold
 * @param fan true when a fan blows on the mold
 * @param handlingS seconds per cycle for loading, unloading, opening by hand or machine
 * @param ratePerH neutral money per hour
 * @param notes what to know
 * @param cautions what can hurt
 */
public record Press(
        String id,
        String name,
        Drive drive,
        Injection injection,
        @Nullable Quantity clampKn,
        ClampKind clampKind,
        @Nullable Quantity viseLeadMm,
        @Nullable Quantity viseTorqueNm,
        Quantity usableShare,
        Frame frame,
        @Nullable Quantity pillarSpanMm,
        boolean fixtureGuided,
        NozzleMeets nozzleMeets,
        @Nullable Quantity nozzleAxisHeightMm,
        NozzleSeat nozzleSeat,
        @Nullable Quantity nozzleRadiusMm,
        Quantity nozzleBoreMm,
        Quantity nozzleContactKn,
        boolean nozzleSelfCentring,
        NozzleThread nozzleThread,
        Quantity plungerDiaMm,
        Quantity strokeMm,
        Quantity maxMeltMpa,
        @Nullable Quantity maxFlowCm3PerS,
        @Nullable Quantity ramPowerW,
        Quantity shotGPs,
        Quantity barrelG,
        Quantity maxBarrelC,
        int zones,
        MoldSize moldMinMm,
        MoldSize moldMaxMm,
        Quantity daylightMm,
        Quantity openStrokeMm,
        Release release,
        @Nullable Quantity knockOutN,
        boolean platenInsulated,
        boolean fan,
        Quantity handlingS,
        Quantity ratePerH,
        List<String> notes,
        List<String> cautions)
        implements Rack.Entry {
    /** What pushes the melt. */
    public enum Drive {
        LEVER("hand lever"),
        PNEUMATIC("air cylinder"),
        ELECTRIC("electric drive"),
        HYDRAULIC("hydraulic cylinder"),
        SCREW_JACK("screw jack");

        private final String words;

        Drive(String words) {
            this.words = words;
        }

        public String words() {
            return words;
        }
    }

    /** What melts and injects. */
    public enum Injection {
        PLUNGER,
        SCREW
    }

    /** What holds the mold shut. */
    public enum ClampKind {
        SCREW_VISE("screw vise"),
        TOGGLE("toggle"),
        PLATENS_CLAMPS("platens, mold held by toe clamps"),
        PLATENS_BOLTS("platens, mold bolted on");

        private final String words;

        ClampKind(String words) {
            this.words = words;
        }

        public String words() {
            return words;
        }
    }

    /** What carries the clamp force. */
    public enum Frame {
        VISE,
        C_FRAME,
        TWO_PILLAR,
        FOUR_PILLAR
    }

    /** Where the nozzle meets the mold. */
    public enum NozzleMeets {
        PARTING_EDGE("on the edge, at the parting line"),
        BACK_OF_A("through the back of half A");

        private final String words;

        NozzleMeets(String words) {
            this.words = words;
        }

        public String words() {
            return words;
        }
    }

    /** How the nozzle seats. */
    public enum NozzleSeat {
        FLAT,
        CONE,
        RADIUS
    }

    /** Whether nozzles and fittings are inch or metric. */
    public enum NozzleThread {
        INCH,
        METRIC
    }

    /** How parts come out. */
    public enum Release {
        HAND("by hand, the mold is opened on the bench"),
        KNOCK_OUT("by a knock-out bar"),
        PLATE("by an ejector plate");

        private final String words;

        Release(String words) {
            this.words = words;
        }

        public String words() {
            return words;
        }
    }

    public Press {
        notes = List.copyOf(notes);
        cautions = List.copyOf(cautions);
        if (clampKn == null && (viseLeadMm == null || viseTorqueNm == null))
            throw new IllegalArgumentException(
                    "clampKn: give the clamp, or viseLeadMm and viseTorqueNm of the vise that closes the mold");
        if (maxFlowCm3PerS == null && ramPowerW == null)
            throw new IllegalArgumentException("maxFlowCm3PerS: give the highest flow or ramPowerW");
    }

    /** True when the clamp is only an estimate from a hand's torque. */
    public boolean clampIsEstimate() {
        return clampKn == null;
    }

    /**
     * Clamp of the press before the usable share, kN: the nameplate, or the vise estimate 2π·η·T/lead with η = {@link ViseClamp#EFFICIENCY}.
     */
    public double nameplateKn() {
        Quantity given = clampKn, lead = viseLeadMm, torque = viseTorqueNm;
        if (given != null) return given.value();
        if (lead == null || torque == null) throw new IllegalStateException("checked when built");
        return ViseClamp.forceKn(torque.value(), lead.value(), ViseClamp.EFFICIENCY);
    }

    /** Clamp that may be counted on, kN. */
    public double usableKn() {
        return nameplateKn() * usableShare.value();
    }

    /** Highest flow at a melt pressure, cm³/s: the given flow, or power over pressure, whichever is less. */
    public double flowCm3PerS(double meltMpa) {
        double flow = Double.POSITIVE_INFINITY;
        Quantity most = maxFlowCm3PerS, power = ramPowerW;
        if (most != null) flow = most.value();
        if (power != null && meltMpa > 0) flow = Math.min(flow, power.value() / meltMpa);
        return flow;
    }

    /** Volume the injection stroke sweeps, cm³. */
    public double sweptCm3() {
        double d = plungerDiaMm.value() / 10;
        return Math.PI * d * d / 4 * strokeMm.value() / 10;
    }
}
