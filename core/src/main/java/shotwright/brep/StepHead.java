package shotwright.brep;

import static java.nio.charset.StandardCharsets.ISO_8859_1;

import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Names in an exchange structure (ISO 10303-21): the header says where the file is from and no time of day, so that the same solids give the
 * same bytes; the products carry the name asked for, numbered when there are several.
 */
final class StepHead {
    private static final String NO_TIME = "1980-01-01T00:00:00";
    private static final Pattern FILE_NAME = Pattern.compile("FILE_NAME\\(.*?\\);", Pattern.DOTALL);
    private static final Pattern PRODUCT = Pattern.compile("= PRODUCT\\('[^']*',\\s*'[^']*'");

    private StepHead() {}

    static byte[] named(byte[] file, String name) {
        String text = new String(file, ISO_8859_1), shown = encoded(name);
        String head = "FILE_NAME('" + shown + "','" + NO_TIME + "',(''),(''),'','Shotwright','');";
        text = FILE_NAME.matcher(text).replaceFirst(Matcher.quoteReplacement(head));
        Matcher product = PRODUCT.matcher(text);
        boolean several = product.results().count() > 1;
        int[] number = {0};
        return PRODUCT.matcher(text)
                .replaceAll(found -> {
                    String own = several ? shown + " " + ++number[0] : shown;
                    return Matcher.quoteReplacement("= PRODUCT('" + own + "','" + own + "'");
                })
                .getBytes(ISO_8859_1);
    }

    /** Text between quotes: quotes and backslashes doubled, what is not ASCII by its number. */
    private static String encoded(String name) {
        StringBuilder b = new StringBuilder();
        for (char c : name.toCharArray()) {
            if (c == '\'' || c == '\\') b.append(c).append(c);
            else if (c >= ' ' && c <= '~') b.append(c);
            else b.append(String.format(Locale.ROOT, "\\X2\\%04X\\X0\\", (int) c));
        }
        return b.toString();
    }
}
