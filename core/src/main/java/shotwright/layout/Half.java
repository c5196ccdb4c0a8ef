package shotwright.layout;

/** The two halves of the mold: A above the parting plane (+z of the mold frame), B below. */
public enum Half {
    A,
    B;

    /** +1 for A, −1 for B: the way from the parting plane into this half's metal. */
    public int sign() {
        return this == A ? 1 : -1;
    }

    public Half other() {
        return this == A ? B : A;
    }
}
