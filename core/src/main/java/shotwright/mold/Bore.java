package shotwright.mold;

/** What a round hole is for. */
public enum Bore {
    /** Keeps a dowel. */
    DOWEL_HELD,
    /** A dowel slides in it. */
    DOWEL_SLIDING,
    /** A screw goes through it. */
    CLEARANCE,
    /** A screw's head lies in it. */
    COUNTERBORE,
    /** To be tapped. */
    THREAD,
    /** Guides an ejector pin. */
    PIN,
    /** Gives the pin room behind its guide. */
    PIN_RELIEF,
    /** Sprue, or a well below it. */
    FEED
}
