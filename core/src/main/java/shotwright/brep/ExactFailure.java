package shotwright.brep;

/** An exact operation that came to nothing; says in a sentence what is wrong. */
public final class ExactFailure extends Exception {
    /** Why nothing came of it. */
    public enum Why {
        /** There is no engine for this computer. */
        NO_ENGINE,
        /** The engine ended: killed, out of memory or over its time. What it kept is gone; the work can be tried again. */
        ENDED,
        /** The engine goes on, but these shapes cannot be handled so. */
        REFUSED
    }

    private static final long serialVersionUID = 1;
    private final Why why;

    public ExactFailure(Why why, String message) {
        super(message);
        this.why = why;
    }

    public Why why() {
        return why;
    }
}
