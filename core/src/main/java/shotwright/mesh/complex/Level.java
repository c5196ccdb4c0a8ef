package shotwright.mesh.complex;

import shotwright.geom.Plane;
import shotwright.geom.Vec3;

/** The surface a cell is split along: the points where a number given at every vertex is zero. */
public interface Level {
    /** Above zero on the side that is split off. */
    double at(Complex complex, int vertex);

    /** The unit direction in which the number grows; caps are triangulated looked at against it. */
    Vec3 up();

    /** The level of a plane: what lies in front of it is split off. */
    static Level of(Plane plane) {
        double nx = plane.normal().x(),
                ny = plane.normal().y(),
                nz = plane.normal().z();
        return new Level() {
            @Override
            public double at(Complex c, int v) {
                return nx * c.x(v) + ny * c.y(v) + nz * c.z(v) - plane.offset();
            }

            @Override
            public Vec3 up() {
                return plane.normal();
            }
        };
    }

    /** The level z = height, where every vertex of the complex has its own height; vertices beyond the array take the last number. */
    static Level aboveHeights(double[] heights, double elsewhere) {
        return new Level() {
            @Override
            public double at(Complex c, int v) {
                return c.z(v) - (v < heights.length ? heights[v] : elsewhere);
            }

            @Override
            public Vec3 up() {
                return Vec3.Z;
            }
        };
    }
}
