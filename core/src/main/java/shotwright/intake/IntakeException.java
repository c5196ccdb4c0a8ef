package shotwright.intake;

/** A part file that cannot be read: which file, where in it, what is wrong, what to do. One paragraph, fit to be shown as it is. */
public final class IntakeException extends RuntimeException {
    private final String fileName;
    private final String place;
    private final String wrong;
    private final String remedy;

    /**
     * @param fileName the file's name without folder
     * @param place line, byte, facet or entry inside the file; empty when the whole file is meant
     * @param wrong what is wrong, a sentence without its full stop
     * @param remedy what to do, a sentence without its full stop
     */
    public IntakeException(String fileName, String place, String wrong, String remedy) {
        super(fileName + (place.isEmpty() ? "" : ", " + place) + ": " + wrong + ". " + remedy + ".");
        this.fileName = fileName;
        this.place = place;
        this.wrong = wrong;
        this.remedy = remedy;
    }

    public String fileName() {
        return fileName;
    }

    public String place() {
        return place;
    }

    public String wrong() {
        return wrong;
    }

    public String remedy() {
        return remedy;
    }
}
