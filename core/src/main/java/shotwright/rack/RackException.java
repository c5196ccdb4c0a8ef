package shotwright.rack;

/** A rack file cannot be used, or the rack holds nothing by that id. The message names file and key and says what to do. */
public final class RackException extends RuntimeException {
    public RackException(String message) {
        super(message);
    }

    public RackException(String message, Throwable cause) {
        super(message, cause);
    }
}
