package shotwright.machining.setup;

/**
 * One half as a finished block.
 *
 * @param name name shown, for example {@code "half A"}
 * @param widthMm size along x of the mold
 * @param heightMm size along y of the mold
 * @param thicknessMm from the back face to the parting face
 * @param riseMm how far cores stand out of the parting face
 */
public record HalfBlock(String name, double widthMm, double heightMm, double thicknessMm, double riseMm) {
    public HalfBlock {
        if (name.isBlank()) throw new IllegalArgumentException("name: give the half a name");
        if (!(widthMm > 0 && heightMm > 0 && thicknessMm > 0 && riseMm >= 0))
            throw new IllegalArgumentException(
                    name + ": " + widthMm + " × " + heightMm + " × " + thicknessMm + " mm, rise " + riseMm + " mm");
    }

    /** Thickness a blank must give: up to the top of the cores. */
    public double overallMm() {
        return thicknessMm + riseMm;
    }
}
