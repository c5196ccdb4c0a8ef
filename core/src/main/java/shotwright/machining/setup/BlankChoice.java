package shotwright.machining.setup;

/** A blank, or why a bar does not give one. */
public sealed interface BlankChoice permits Blank, NoBlank {}
