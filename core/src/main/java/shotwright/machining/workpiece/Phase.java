package shotwright.machining.workpiece;

/** What a task is for, in working order: rough before fine, what locates before what it locates, the cavity before gate and vents. */
public enum Phase {
    FACE("face"),
    OUTSIDE("mill outside"),
    ROUGH("rough"),
    REST("rough what the larger cutter left"),
    SPOT("spot"),
    DRILL("drill"),
    BORE("mill round"),
    REAM("ream"),
    FLOOR("finish floors"),
    WALL("finish walls"),
    GROUND("finish curved ground"),
    CORNER("finish corners"),
    FEED("mill runner"),
    GATE("mill gate"),
    VENT("mill vents"),
    LETTERS("engrave"),
    CHAMFER("break outside edges");

    private final String words;

    Phase(String words) {
        this.words = words;
    }

    public String words() {
        return words;
    }
}
