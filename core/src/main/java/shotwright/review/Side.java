package shotwright.review;

/** The half of the mold that forms a face. */
public enum Side {
    /** Above, moves off along the pull. */
    A,
    /** Below. */
    B;

    /** As said at the bench. */
    public String words() {
        return "half " + name();
    }
}
