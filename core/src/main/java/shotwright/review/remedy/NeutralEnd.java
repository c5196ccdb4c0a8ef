package shotwright.review.remedy;

import java.util.Optional;
import java.util.stream.Stream;

/** Which end of a wall keeps its size when the wall is leaned. */
public enum NeutralEnd {
    /** The end at the parting: the part only gets smaller away from it. */
    PARTING("parting", "at the parting"),
    /** The end on the side to which its half leaves: the mouth of a hole, the top of a boss. */
    OPEN_EDGE("open-edge", "at the open edge");

    private final String word;
    private final String words;

    NeutralEnd(String word, String words) {
        this.word = word;
        this.words = words;
    }

    /** The end with this word. */
    public static Optional<NeutralEnd> named(String word) {
        return Stream.of(values()).filter(e -> e.word.equals(word)).findFirst();
    }

    NeutralEnd other() {
        return this == PARTING ? OPEN_EDGE : PARTING;
    }

    /** As on the command line and the job card. */
    public String word() {
        return word;
    }

    /** In a sentence. */
    public String words() {
        return words;
    }
}
