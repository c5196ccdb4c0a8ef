package shotwright.brep.exchange;

/** A STEP file that breaks the rules of its own encoding; says at which line. */
public final class ExchangeFault extends RuntimeException {
    private static final long serialVersionUID = 1;
    private final int line;

    ExchangeFault(int line, String message) {
        super(message);
        this.line = line;
    }

    /** Line of the file, counted from 1. */
    public int line() {
        return line;
    }
}
