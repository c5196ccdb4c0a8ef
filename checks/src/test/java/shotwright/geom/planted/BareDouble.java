package shotwright.geom.planted;

/** A length without a unit in its name, on purpose. */
public record BareDouble(double wall) {}
