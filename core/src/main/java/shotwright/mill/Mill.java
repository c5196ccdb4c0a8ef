package shotwright.mill;

import java.util.List;
import org.jspecify.annotations.Nullable;
import shotwright.measure.Quantity;
import shotwright.measure.QuantityRange;
import shotwright.rack.Rack;

/**
 * A three-axis mill.
 *
 * @param id id on the rack
 * @param name name shown
 * @param travelXMm travel in x
 * @param travelYMm travel in y
 * @param travelZMm travel in z
 * @param minRpm lowest spindle speed
 * @param maxRpm highest spindle speed
 * @param baseRpm speed from which full power is there
 * @param powerW spindle power
 * @param maxFeedMmPerMin highest cutting feed
 * @param rapidMmPerMin rapid
 * @param accelerationMmPerS2 acceleration of an axis
 * @param junctionMm how far the path may round a corner
 * @param toolChangeS time for a tool change
 * @param spinUpS time for the spindle to reach speed
 * @param largestShankMm largest shank its collets take
 * @param viseOpeningMm widest opening of its vise
 * @param viseJawMm width of the jaws
 * @param repeatMm repeatability
 * @param ratePerH neutral money per hour
 * @param frame what its frame and spindle hold; null when nothing is known of it
 * @param notes what to know
 * @param cautions what can hurt
 */
public record Mill(
        String id,
        String name,
        Quantity travelXMm,
        Quantity travelYMm,
        Quantity travelZMm,
        Quantity minRpm,
        Quantity maxRpm,
        Quantity baseRpm,
        Quantity powerW,
        Quantity maxFeedMmPerMin,
        Quantity rapidMmPerMin,
        Quantity accelerationMmPerS2,
        Quantity junctionMm,
        Quantity toolChangeS,
        Quantity spinUpS,
        Quantity largestShankMm,
        Quantity viseOpeningMm,
        Quantity viseJawMm,
        Quantity repeatMm,
        Quantity ratePerH,
        @Nullable Frame frame,
        List<String> notes,
        List<String> cautions)
        implements Rack.Entry {
    /**
     * How stiff it is.
     *
     * @param depthShare share of the usual depth of cut it takes
     * @param feedShare share of the usual chip load it takes
     * @param runOutMm total reading of an indicator on a cutter in its collet
     * @param complianceUmPerN how far spindle and collet give way under a side force at the holder's nose
     */
    public record Frame(Quantity depthShare, Quantity feedShare, Quantity runOutMm, QuantityRange complianceUmPerN) {}

    public Mill {
        notes = List.copyOf(notes);
        cautions = List.copyOf(cautions);
        if (minRpm.value() > maxRpm.value()) throw new IllegalArgumentException("minRpm: is above maxRpm");
    }

    /** Power at a speed, W: rated·min(1, n/n_base). */
    public double powerAtW(double speedRpm) {
        return powerW.value() * Math.min(1, speedRpm / baseRpm.value());
    }

    /** A speed brought into what the spindle can do, 1/min. */
    public double speedRpm(double wantedRpm) {
        return Math.clamp(wantedRpm, minRpm.value(), maxRpm.value());
    }
}
