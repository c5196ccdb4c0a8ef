package shotwright.mesh.pull;

/** How the pull along +z meets a facet. */
public enum Sight {
    /** Along the pull, or too thin to have a meaningful normal: may be parted anywhere. */
    FREE,
    /** Looks up and sees open sky: half A must form it. */
    UP,
    /** Looks down and sees open ground: half B must form it. */
    DOWN,
    /** Looks up or down but another piece of the part lies before it: neither half can form it straight. */
    HIDDEN
}
