package shotwright.brep;

/**
 * A shape the engine keeps.
 *
 * @param number its number there
 */
public record Solid(int number) {}
