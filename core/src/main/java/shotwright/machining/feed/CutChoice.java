package shotwright.machining.feed;

/** Speed and feed of a cut, or why it cannot be made. */
public sealed interface CutChoice permits CutData, NoCut {
    /**
     * Chooses speed, chip load, depth and width: start values of the table, less what reach, frame and kind of cut take away, then as much less as
     * power, bending and stress ask.
     */
    static CutChoice of(Cut cut, FeedTable table) {
        return new CutChooser(cut, table).choose();
    }
}
