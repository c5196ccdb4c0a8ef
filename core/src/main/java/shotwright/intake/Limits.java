package shotwright.intake;

/**
 * What a part file may cost before it is put down. A limit that is hit ends in an {@link IntakeException} that names it.
 *
 * @param maxByteCount size of the file
 * @param maxFacetCount triangles, after polygons are split and components placed
 * @param maxVertexCount different corner points
 * @param maxInflatedByteCount bytes that come out of a packed file, all entries together
 * @param maxInflateRatio bytes out for one byte in, looked at once 32 MiB have come out of one entry
 * @param maxDepthCount components within components
 * @param maxInstanceCount placed copies of objects
 * @param deadlineS seconds for the whole reading
 */
public record Limits(
        long maxByteCount,
        int maxFacetCount,
        int maxVertexCount,
        long maxInflatedByteCount,
        double maxInflateRatio,
        int maxDepthCount,
        int maxInstanceCount,
        double deadlineS) {

    /** What the desk and the command line use. */
    public static final Limits USUAL = new Limits(256L << 20, 5_000_000, 5_000_000, 256L << 20, 200, 16, 10_000, 55);

    public Limits {
        if (maxByteCount <= 0) throw new IllegalArgumentException("maxByteCount: " + maxByteCount);
        if (maxFacetCount <= 0) throw new IllegalArgumentException("maxFacetCount: " + maxFacetCount);
        if (maxVertexCount <= 0) throw new IllegalArgumentException("maxVertexCount: " + maxVertexCount);
        if (maxInflatedByteCount <= 0)
            throw new IllegalArgumentException("maxInflatedByteCount: " + maxInflatedByteCount);
        if (!(maxInflateRatio > 1)) throw new IllegalArgumentException("maxInflateRatio: " + maxInflateRatio);
        if (maxDepthCount <= 0) throw new IllegalArgumentException("maxDepthCount: " + maxDepthCount);
        if (maxInstanceCount <= 0) throw new IllegalArgumentException("maxInstanceCount: " + maxInstanceCount);
        if (!(deadlineS > 0)) throw new IllegalArgumentException("deadlineS: " + deadlineS);
    }
}
