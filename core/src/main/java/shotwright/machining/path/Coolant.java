package shotwright.machining.path;

/** What is blown or poured at the cutter. */
public enum Coolant {
    OFF,
    MIST,
    FLOOD
}
