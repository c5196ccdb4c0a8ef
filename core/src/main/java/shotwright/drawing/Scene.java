package shotwright.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import shotwright.geom.Plane;
import shotwright.geom.Vec3;
import shotwright.measure.LengthUnit;

/**
 * What a picture shows.
 *
 * @param bodies in any order
 * @param view where from
 * @param cut plane whose front is taken away
 * @param callouts circle numbers
 * @param legend of the map on a body
 * @param caption said below; the view's name when empty
 * @param ground colour behind everything
 * @param unit of the scale bar
 */
public record Scene(
        List<Body> bodies,
        View view,
        Optional<Plane> cut,
        List<Callout> callouts,
        Optional<Legend> legend,
        String caption,
        int ground,
        LengthUnit unit) {
    public Scene {
        bodies = List.copyOf(bodies);
        callouts = List.copyOf(callouts);
        if (bodies.stream().allMatch(b -> b.mesh().facetCount() == 0))
            throw new IllegalArgumentException("scene: there is nothing to see");
    }

    /** Bodies in the first view on the bench. */
    public static Scene of(Body... bodies) {
        return new Scene(
                List.of(bodies),
                View.first(),
                Optional.empty(),
                List.of(),
                Optional.empty(),
                "",
                Ink.BENCH,
                LengthUnit.MM);
    }

    public Scene from(View other) {
        return new Scene(bodies, other, cut, callouts, legend, caption, ground, unit);
    }

    /** What lies in front of the plane is taken away. */
    public Scene cutBy(Plane plane) {
        return new Scene(bodies, view, Optional.of(plane), callouts, legend, caption, ground, unit);
    }

    public Scene with(Legend other) {
        return new Scene(bodies, view, cut, callouts, Optional.of(other), caption, ground, unit);
    }

    public Scene with(List<Callout> more) {
        List<Callout> all = new ArrayList<>(callouts);
        all.addAll(more);
        return new Scene(bodies, view, cut, all, legend, caption, ground, unit);
    }

    public Scene with(int number, Vec3 at) {
        return with(List.of(new Callout(number, at)));
    }

    public Scene captioned(String words) {
        return new Scene(bodies, view, cut, callouts, legend, words, ground, unit);
    }

    /** With its scale bar in a unit. */
    public Scene in(LengthUnit other) {
        return new Scene(bodies, view, cut, callouts, legend, caption, ground, other);
    }

    /** On another ground, for example {@link Ink#PAPER} for print. */
    public Scene on(int rgb) {
        return new Scene(bodies, view, cut, callouts, legend, caption, rgb, unit);
    }
}
