package shotwright.mesh.complex;

/** What a cell of the complex is made of. */
public enum Material {
    /** Everything outside the block. */
    WORLD,
    /** Metal of half A, above the parting surface. */
    A,
    /** Metal of half B, below it. */
    B,
    /** A molded part. */
    PART,
    /** Sprue, runner or gate. */
    FEED,
    /** A vent. */
    VENT,
    /** A hole or pocket: dowel, screw, pin, pry slot, relief. */
    HOLE
}
