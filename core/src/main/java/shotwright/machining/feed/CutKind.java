package shotwright.machining.feed;

/** What a cut is for. */
public enum CutKind {
    SLOT("slot", 0.7, false),
    ROUGH("rough", 1, false),
    CLEAR("rough with bounded engagement", 1, false),
    FLOOR("finish a floor", 0.6, true),
    WALL("finish a wall", 0.6, true),
    DRAFT_WALL("finish a wall with a tapered cutter", 0.6, true),
    CURVED("finish curved ground", 0.6, true),
    FACE("face", 1, false),
    ENGRAVE("engrave", 1, false);

    private final String words;
    private final double chipShare;
    private final boolean finishes;

    CutKind(String words, double chipShare, boolean finishes) {
        this.words = words;
        this.chipShare = chipShare;
        this.finishes = finishes;
    }

    public String words() {
        return words;
    }

    /** Share of the tabled chip load (common practice: slots 0.7, finishing 0.5 to 0.7). */
    public double chipShare() {
        return chipShare;
    }

    /** True when the surface it leaves stays. */
    public boolean finishes() {
        return finishes;
    }
}
