package shotwright.mesh.complex;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.IntPredicate;
import shotwright.geom.Box3;
import shotwright.geom.Plane;
import shotwright.geom.Vec3;
import shotwright.mesh.TriMesh;

/**
 * Space divided into cells by shared triangles. Every facet is stored once and knows the cell in front of it (where its normal points) and the
 * cell behind it. A cell's solid is all facets that have it on exactly one side; two neighbours share the very same facets, so gaps and
 * overlaps between them cannot arise.
 *
 * <p>The one solid operation is {@link #split}; {@link #cut} repeats it for the planes of a convex tool. A facet may be pinned: then a split
 * takes it whole to the side it is pinned to. It also carries the number of the surface it came from, inherited by its pieces.
 */
public final class Complex {
    /** The cell outside everything. */
    public static final int WORLD = 0;

    private final Grain grain;
    private final List<Material> cells = new ArrayList<>(List.of(Material.WORLD));
    private double[] xyz = new double[96];
    private int vertexCount;
    private int[] tri = new int[96];
    private int[] front = new int[32];
    private int[] behind = new int[32];
    private int[] source = new int[32];
    private byte[] pin = new byte[32];
    private int facetCount;
    private int sourceCount;

    public Complex(Grain grain) {
        this.grain = grain;
    }

    private Complex(Complex o) {
        this(o.grain);
        cells.clear();
        cells.addAll(o.cells);
        xyz = o.xyz.clone();
        vertexCount = o.vertexCount;
        tri = o.tri.clone();
        front = o.front.clone();
        behind = o.behind.clone();
        source = o.source.clone();
        pin = o.pin.clone();
        facetCount = o.facetCount;
        sourceCount = o.sourceCount;
    }

    /** The same complex again, to try a cut on. */
    public Complex copy() {
        return new Complex(this);
    }

    // ---- cells
    // -----------------------------------------------------------------------------------------------------------------

    /** A new, empty cell. */
    public int newCell(Material material) {
        cells.add(material);
        return cells.size() - 1;
    }

    public Material material(int cell) {
        return cells.get(cell);
    }

    public int cellCount() {
        return cells.size();
    }

    /** Puts a block of a cell into the world. */
    public void insertBlock(Box3 box, int cell) {
        insert(Boxes.mesh(box), cell, WORLD);
    }

    /**
     * Puts a closed mesh into a cell that surrounds it; the inside becomes another cell. The mesh must lie inside and touch nothing.
     *
     * @return the source number of its facet 0; facet i has this + i
     */
    public int insert(TriMesh mesh, int inside, int surrounding) {
        int v0 = vertexCount, s0 = sourceCount;
        for (int v = 0; v < mesh.vertexCount(); v++) addVertex(mesh.x(v), mesh.y(v), mesh.z(v));
        for (int f = 0; f < mesh.facetCount(); f++) {
            int a = v0 + mesh.corner(f, 0), b = v0 + mesh.corner(f, 1), c = v0 + mesh.corner(f, 2);
            addFacet(a, b, c, surrounding, inside, newSource());
        }
        return s0;
    }

    /** Splits off the part of a cell above a level; the cut is spanned on its own vertices. */
    public Cap split(int cell, Level level, int newCell) {
        return split(cell, level, newCell, Grade.FLAT);
    }

    /**
     * Splits off the part of a cell that lies above a level (where its number is above zero) and gives it to another cell.
     *
     * @param grade how a cut that is not flat is filled inside its border
     * @return the cap that now divides the two
     * @throws SplitFailure when the border of the cut crosses itself
     */
    public Cap split(int cell, Level level, int newCell, Grade grade) {
        return new Split(this, cell, level).apply(newCell, grade);
    }

    /**
     * Takes a convex tool out of a cell.
     *
     * @param planes the tool's faces, normals outward
     * @param around a box around the tool
     * @param into cell that gets what was cut
     */
    public void cut(int cell, List<Plane> planes, Box3 around, int into) {
        ConvexCut.apply(this, cell, planes, around, into);
    }

    /** The closed surfaces a cell's skin falls into, the one with the most volume first. */
    public List<Shell> shells(int cell) {
        return Shell.all(this, cell);
    }

    /** Gives what shells of a cell enclose to other cells, one for each. */
    public void give(int cell, List<Shell> shells, List<Integer> to) {
        if (shells.isEmpty()) return;
        for (int i = 0; i < shells.size(); i++) for (int f : shells.get(i).facets()) retag(f, cell, to.get(i));
        removeIf(f -> front[f] == behind[f]);
    }

    // ---- vertices and facets
    // ---------------------------------------------------------------------------------------------------

    public Grain grain() {
        return grain;
    }

    public int vertexCount() {
        return vertexCount;
    }

    public double x(int v) {
        return xyz[3 * v];
    }

    public double y(int v) {
        return xyz[3 * v + 1];
    }

    public double z(int v) {
        return xyz[3 * v + 2];
    }

    public Vec3 vertex(int v) {
        return new Vec3(xyz[3 * v], xyz[3 * v + 1], xyz[3 * v + 2]);
    }

    public int facetCount() {
        return facetCount;
    }

    public int corner(int facet, int k) {
        return tri[3 * facet + k];
    }

    /** The cell the facet's normal points into. */
    public int front(int facet) {
        return front[facet];
    }

    public int behind(int facet) {
        return behind[facet];
    }

    /** Number of the surface this facet is a piece of: a facet of an inserted mesh, or a cut. */
    public int source(int facet) {
        return source[facet];
    }

    /** +1 or −1 when the facet is kept whole on that side of a split, 0 when it may be cut. */
    public int pin(int facet) {
        return pin[facet];
    }

    public void setPin(int facet, int side) {
        pin[facet] = (byte) Integer.signum(side);
    }

    /** Lets every facet be cut again. */
    public void unpin() {
        Arrays.fill(pin, (byte) 0);
    }

    /** True when exactly one side of the facet is this cell. */
    public boolean bounds(int facet, int cell) {
        return (front[facet] == cell) != (behind[facet] == cell);
    }

    /** Normal of a facet times twice its area. */
    public Vec3 doubleAreaNormal(int facet) {
        Vec3 a = vertex(tri[3 * facet]);
        return vertex(tri[3 * facet + 1])
                .minus(a)
                .cross(vertex(tri[3 * facet + 2]).minus(a));
    }

    int newSource() {
        return sourceCount++;
    }

    int addVertex(double x, double y, double z) {
        if (3 * vertexCount + 3 > xyz.length) xyz = Arrays.copyOf(xyz, 2 * xyz.length);
        xyz[3 * vertexCount] = x;
        xyz[3 * vertexCount + 1] = y;
        xyz[3 * vertexCount + 2] = z;
        return vertexCount++;
    }

    int addFacet(int a, int b, int c, int cellFront, int cellBehind, int from) {
        if (facetCount == front.length) growFacets();
        front[facetCount] = cellFront;
        behind[facetCount] = cellBehind;
        source[facetCount] = from;
        pin[facetCount] = 0;
        setCorners(facetCount, a, b, c);
        return facetCount++;
    }

    /** A further piece of a facet, with all it carries. */
    int addPiece(int of, int a, int b, int c) {
        int f = addFacet(a, b, c, front[of], behind[of], source[of]);
        pin[f] = pin[of];
        return f;
    }

    void setCorners(int facet, int a, int b, int c) {
        tri[3 * facet] = a;
        tri[3 * facet + 1] = b;
        tri[3 * facet + 2] = c;
    }

    void retag(int facet, int from, int to) {
        if (front[facet] == from) front[facet] = to;
        if (behind[facet] == from) behind[facet] = to;
    }

    /** A complex with all cells and vertices of this one and a choice of its facets. */
    Complex only(boolean[] chosen) {
        Complex o = new Complex(grain);
        o.cells.clear();
        o.cells.addAll(cells);
        o.xyz = Arrays.copyOf(xyz, 3 * vertexCount + 3072);
        o.vertexCount = vertexCount;
        o.sourceCount = sourceCount;
        for (int f = 0; f < facetCount; f++) if (chosen[f]) o.copyFacet(this, f);
        return o;
    }

    /** Takes the facets of another complex back, in place of those it was made from. */
    void replace(boolean[] chosen, Complex by) {
        removeIf(f -> chosen[f]);
        xyz = by.xyz;
        vertexCount = by.vertexCount;
        sourceCount = by.sourceCount;
        cells.clear();
        cells.addAll(by.cells);
        for (int f = 0; f < by.facetCount; f++) copyFacet(by, f);
    }

    private void copyFacet(Complex from, int f) {
        int n = addFacet(
                from.tri[3 * f],
                from.tri[3 * f + 1],
                from.tri[3 * f + 2],
                from.front[f],
                from.behind[f],
                from.source[f]);
        pin[n] = from.pin[f];
    }

    /** Removes facets; the others keep their order. */
    void removeIf(IntPredicate gone) {
        int n = 0;
        for (int f = 0; f < facetCount; f++) {
            if (gone.test(f)) continue;
            front[n] = front[f];
            behind[n] = behind[f];
            source[n] = source[f];
            pin[n] = pin[f];
            setCorners(n++, tri[3 * f], tri[3 * f + 1], tri[3 * f + 2]);
        }
        facetCount = n;
    }

    private void growFacets() {
        int n = 2 * front.length;
        tri = Arrays.copyOf(tri, 3 * n);
        front = Arrays.copyOf(front, n);
        behind = Arrays.copyOf(behind, n);
        source = Arrays.copyOf(source, n);
        pin = Arrays.copyOf(pin, n);
    }

    // ---- what is left behind
    // ---------------------------------------------------------------------------------------------------

    /** Exact volume of a cell. */
    public double volume(int cell) {
        return Solid.volume(this, c -> c == cell);
    }

    /** Exact volume of all cells of a material. */
    public double volume(Material material) {
        return Solid.volume(this, c -> cells.get(c) == material);
    }

    /** A cell as a closed mesh, normals outward. */
    public TriMesh extract(int cell) {
        return Solid.mesh(this, c -> c == cell);
    }

    /** All cells of a material as one closed mesh, normals outward. */
    public TriMesh extract(Material material) {
        return Solid.mesh(this, c -> cells.get(c) == material);
    }

    /** Where two cells meet, as an open mesh, normals out of the first. */
    public TriMesh between(int from, int to) {
        return Solid.between(this, from, to);
    }

    /** Unmatched directed edges of a cell's surface: 0 when it is closed. */
    public int openEdges(int cell) {
        return Solid.openEdges(this, c -> c == cell);
    }

    public int openEdges(Material material) {
        return Solid.openEdges(this, c -> cells.get(c) == material);
    }
}
