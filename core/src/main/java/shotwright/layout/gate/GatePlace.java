package shotwright.layout.gate;

import org.jspecify.annotations.Nullable;
import shotwright.geom.Vec2;
import shotwright.layout.Gate;
import shotwright.layout.Half;
import shotwright.layout.cavity.RimPoint;

/**
 * A place where the plastic could enter one cavity, in the cavity frame.
 *
 * @param kind how it would enter
 * @param at where, seen along the pull
 * @param zMm height of the place, 0 on the rim
 * @param out unit direction from the cavity to the runner; zero for a direct gate
 * @param half the half it would be cut into
 * @param rim the point on the rim; null for a direct gate
 * @param wallMm wall there
 * @param flowLengthMm longest way from there
 * @param lastOnRimMm way round the rim from the place to where the air ends up; 0 when that is not on the rim
 * @param keepClear it lies where the customer wants no mark
 * @param score 0 … 1
 * @param reason what speaks for and against it
 */
public record GatePlace(
        Gate.Kind kind,
        Vec2 at,
        double zMm,
        Vec2 out,
        Half half,
        @Nullable RimPoint rim,
        double wallMm,
        double flowLengthMm,
        double lastOnRimMm,
        boolean keepClear,
        double score,
        String reason) {}
