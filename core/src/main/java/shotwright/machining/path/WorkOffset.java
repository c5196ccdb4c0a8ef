package shotwright.machining.path;

/** The work offset in which a setup's zero is kept. */
public enum WorkOffset {
    G54,
    G55,
    G56,
    G57,
    G58,
    G59
}
