package shotwright.machining.setup;

/**
 * A bar that does not give the block.
 *
 * @param why in words, and what would
 */
public record NoBlank(String why) implements BlankChoice {}
