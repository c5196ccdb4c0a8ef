package shotwright.rack;

import shotwright.measure.Source;

/** Reads the source of a number as it stands in a rack file. */
final class SourceText {
    private SourceText() {}

    /**
     * {@code "KEY place"} is published; {@code "from memory"}, {@code "common practice"}, {@code "measured"}, {@code "worked out"} and
     * {@code "your own entry"}, alone or followed by a colon and a remark, are what they say.
     */
    static Source parse(String text) {
        String t = text.strip();
        for (Source.Kind kind : Source.Kind.values()) {
            if (kind == Source.Kind.PUBLISHED) continue;
            String word = kind.words();
            if (t.equals(word)) return new Source(kind, word);
            if (t.startsWith(word + ":")) {
                String remark = t.substring(word.length() + 1).strip();
                return new Source(kind, remark.isEmpty() ? word : remark);
            }
        }
        return Source.published(t);
    }
}
