package shotwright.job;

/** The stations of the line in working order, with the numbers of a traveller. */
public enum Station {
    INTAKE(10, "Intake", "what did I get?"),
    REVIEW(20, "Review", "can it be molded in two plates?"),
    SIZING(30, "Press", "which press, how many up?"),
    LAYOUT(40, "Layout", "where does the plastic enter, where does the air leave, how does the part come out?"),
    HALVES(50, "Halves", "what metal remains?"),
    FILL(60, "Fill", "will it fill?"),
    COOL(70, "Cool", "how fast can it run?"),
    MILLING(80, "Milling", "how do I cut it?"),
    QUOTE(90, "Quote", "what do I charge?"),
    SHEET(100, "Press sheet", "how do I start the press?");

    private final int number;
    private final String title;
    private final String question;

    Station(int number, String title, String question) {
        this.number = number;
        this.title = title;
        this.question = question;
    }

    public int number() {
        return number;
    }

    public String title() {
        return title;
    }

    public String question() {
        return question;
    }
}
