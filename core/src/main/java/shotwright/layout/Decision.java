package shotwright.layout;

/**
 * One choice that was made, as it is shown to the person who may change it.
 *
 * @param name what was decided, in trade words, for example {@code "gate"}
 * @param value what was taken
 * @param reason why, with the number that decided
 * @param key key on the job card that overrides it; empty when it follows from others
 */
public record Decision(String name, String value, String reason, String key) {}
