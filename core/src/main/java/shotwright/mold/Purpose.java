package shotwright.mold;

import shotwright.mesh.complex.Material;

/** What is cut out of a half for. */
public enum Purpose {
    SPRUE(Material.FEED),
    /** Catches the cold front, or pulls the sprue. */
    WELL(Material.FEED),
    RUNNER(Material.FEED),
    GATE(Material.FEED),
    /** The shallow part of a vent, at the cavity's rim. */
    VENT_LAND(Material.VENT),
    /** The deeper part of a vent, to the open air. */
    VENT_CHANNEL(Material.VENT),
    /** Opens the mold. */
    PRY_POCKET(Material.HOLE),
    /** Keeps a dowel. */
    DOWEL_HELD(Material.HOLE),
    /** A dowel slides in it. */
    DOWEL_SLIDING(Material.HOLE),
    /** A screw goes through it. */
    CLEARANCE(Material.HOLE),
    /** A screw's head lies in it. */
    COUNTERBORE(Material.HOLE),
    /** To be tapped. */
    THREAD(Material.HOLE),
    /** Guides an ejector pin. */
    PIN(Material.HOLE),
    /** Gives the pin room behind its guide. */
    PIN_RELIEF(Material.HOLE);

    private final Material material;

    Purpose(Material material) {
        this.material = material;
    }

    /** What fills it. */
    public Material material() {
        return material;
    }
}
