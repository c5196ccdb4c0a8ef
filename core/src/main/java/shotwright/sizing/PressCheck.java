package shotwright.sizing;

import shotwright.measure.Quantity;

/**
 * One thing a press was asked.
 *
 * @param subject what was looked at
 * @param verdict the answer
 * @param words the answer in a sentence with numbers and units
 * @param needed what the job asks for
 * @param available what the press or the resin allows, and whose number that is
 */
public record PressCheck(Subject subject, Verdict verdict, String words, Quantity needed, Quantity available) {
    /** Order in which a press is asked. */
    public enum Subject {
        CLAMP("clamp"),
        ENTRY("nozzle entry"),
        ENVELOPE("mold size"),
        SHOT("shot"),
        PRESSURE("melt pressure"),
        SPEED("filling speed"),
        TEMPERATURE("temperature"),
        EJECTION("taking out"),
        CYCLE("time in the barrel");

        private final String words;

        Subject(String words) {
            this.words = words;
        }

        /** The subject in trade words. */
        public String words() {
            return words;
        }
    }
}
