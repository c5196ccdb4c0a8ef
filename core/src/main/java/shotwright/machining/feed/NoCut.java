package shotwright.machining.feed;

/**
 * A cut that is not made.
 *
 * @param why in words
 */
public record NoCut(String why) implements CutChoice {}
