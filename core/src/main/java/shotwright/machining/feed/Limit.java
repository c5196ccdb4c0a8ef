package shotwright.machining.feed;

/** What keeps a feed where it is. */
public enum Limit {
    CHIP_LOAD("the chip load of the table"),
    POWER("the power of the spindle"),
    BENDING("how far the cutter bends"),
    BREAKAGE("the stress the cutter stands"),
    MACHINE_FEED("the fastest feed of the mill"),
    THIN_CHIP("the thinnest chip that still cuts"),
    SMOOTHING("a feed that may not jump");

    private final String words;

    Limit(String words) {
        this.words = words;
    }

    public String words() {
        return words;
    }
}
