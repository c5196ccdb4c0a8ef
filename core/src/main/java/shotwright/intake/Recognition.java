package shotwright.intake;

import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.util.Locale;

/** Tells formats apart by what stands in the file. The ending of the name is never looked at. */
final class Recognition {
    private static final int LOOK = 256 * 1024;
    private static final String READ_HERE = "Export the part as STEP, STL, OBJ or 3MF";

    private Recognition() {}

    /** The format of a file; refuses what is none of those read here and says what was found instead. */
    static FileFormat of(ByteBuffer b, ReadGuard guard) {
        if (b.limit() == 0) throw guard.fault("", "the file is empty, 0 bytes", "Export or copy it again");
        if (starts(b, 0, "PK\3\4")) return FileFormat.THREE_MF;
        if (sizeFitsBinaryStl(b)) return FileFormat.STL_BINARY;
        String known = foreign(b);
        if (!known.isEmpty())
            throw guard.fault("byte 0", "this is " + known + ", which is not read as a part file", READ_HERE);
        int head = skipBlank(b);
        if (startsWord(b, head, "iso-10303-21")) return FileFormat.STEP;
        boolean text = looksLikeText(b);
        if (text && startsWord(b, head, "solid") && holdsWord(b, "facet", "endsolid")) return FileFormat.STL_ASCII;
        if (text && startsWord(b, head, "facet")) return FileFormat.STL_ASCII;
        if (text && hasObjLine(b)) return FileFormat.OBJ;
        if (!text && plausibleBinaryStl(b)) return FileFormat.STL_BINARY;
        throw guard.fault(
                "byte 0",
                "the file begins with " + firstBytes(b) + (text ? ", text" : ", bytes")
                        + " that belong to no format read here",
                READ_HERE);
    }

    /** A few formats people send by mistake, by their published first bytes. */
    private static String foreign(ByteBuffer b) {
        if (starts(b, 0, "PK\5\6")) return "an empty zip archive";
        if (starts(b, 0, "%PDF")) return "a PDF document";
        if (starts(b, 0, "\u0089PNG")) return "a PNG picture";
        if (starts(b, 0, "\u00ff\u00d8\u00ff")) return "a JPEG picture";
        if (starts(b, 0, "\u001f\u008b")) return "a gzip archive (unpack it first)";
        if (starts(b, 0, "7z\u00bc\u00af")) return "a 7z archive (unpack it first)";
        if (starts(b, 0, "\u00d0\u00cf\u0011\u00e0"))
            return "a compound document, mostly a drawing program's own format";
        if (starts(b, 0, "glTF")) return "a glTF scene";
        if (starts(b, 0, "ply\n") || starts(b, 0, "ply\r")) return "a PLY mesh";
        if (starts(b, 0, "#VRML")) return "a VRML scene";
        int head = skipBlank(b);
        if (startsWord(b, head, "<?xml") || startsWord(b, head, "<")) return "a bare XML or HTML text";
        return "";
    }

    private static boolean sizeFitsBinaryStl(ByteBuffer b) {
        int n = b.limit();
        if (n < StlBinaryReader.HEAD + StlBinaryReader.FACET) return false;
        long said = Integer.toUnsignedLong(b.order(ByteOrder.LITTLE_ENDIAN).getInt(80));
        return StlBinaryReader.HEAD + said * StlBinaryReader.FACET == n;
    }

    /** The first facets hold numbers a part can have, so a file whose count is wrong may still be binary STL. */
    private static boolean plausibleBinaryStl(ByteBuffer b) {
        int whole = (b.limit() - StlBinaryReader.HEAD) / StlBinaryReader.FACET;
        if (whole < 1) return false;
        int good = 0, seen = Math.min(whole, 20);
        for (int f = 0; f < seen; f++) if (plausibleFacet(b, StlBinaryReader.HEAD + f * StlBinaryReader.FACET)) good++;
        return 4 * good >= 3 * seen;
    }

    private static boolean plausibleFacet(ByteBuffer b, int at) {
        for (int i = 0; i < 12; i++) {
            float x = b.order(ByteOrder.LITTLE_ENDIAN).getFloat(at + 4 * i);
            float most = i < 3 ? 1e3f : 1e8f;
            if (!(Math.abs(x) <= most) || (x != 0 && Math.abs(x) < 1e-20f)) return false;
        }
        return true;
    }

    private static boolean looksLikeText(ByteBuffer b) {
        int n = Math.min(b.limit(), LOOK), odd = 0;
        for (int i = 0; i < n; i++) {
            int c = b.get(i);
            if (c == 0) return false;
            if (c > 0 && c < 32 && c != '\n' && c != '\r' && c != '\t' && c != '\f') odd++;
        }
        return 100L * odd <= n;
    }

    private static boolean hasObjLine(ByteBuffer b) {
        int n = Math.min(b.limit(), LOOK);
        boolean lineStart = true;
        for (int i = 0; i + 1 < n; i++) {
            char c = (char) b.get(i);
            if (lineStart && (c == 'v' || c == 'f') && (b.get(i + 1) == ' ' || b.get(i + 1) == '\t')) return true;
            lineStart = c == '\n' || c == '\r' || (lineStart && (c == ' ' || c == '\t'));
        }
        return false;
    }

    private static boolean holdsWord(ByteBuffer b, String... words) {
        int n = Math.min(b.limit(), LOOK);
        byte[] head = new byte[n];
        b.get(0, head);
        String text = new String(head, java.nio.charset.StandardCharsets.ISO_8859_1).toLowerCase(Locale.ROOT);
        for (String w : words) if (text.contains(w)) return true;
        return false;
    }

    private static int skipBlank(ByteBuffer b) {
        int i = starts(b, 0, "\u00ef\u00bb\u00bf") ? 3 : 0;
        while (i < Math.min(b.limit(), LOOK) && b.get(i) >= 0 && b.get(i) <= ' ') i++;
        return i;
    }

    private static boolean starts(ByteBuffer b, int at, String latin) {
        if (b.limit() < at + latin.length()) return false;
        for (int i = 0; i < latin.length(); i++) if ((b.get(at + i) & 0xFF) != latin.charAt(i)) return false;
        return true;
    }

    private static boolean startsWord(ByteBuffer b, int at, String lower) {
        if (b.limit() < at + lower.length()) return false;
        for (int i = 0; i < lower.length(); i++)
            if (Character.toLowerCase((char) (b.get(at + i) & 0xFF)) != lower.charAt(i)) return false;
        return true;
    }

    /** The first bytes, readable ones as text, others as hexadecimal numbers. */
    private static String firstBytes(ByteBuffer b) {
        int n = Math.min(b.limit(), 16);
        StringBuilder text = new StringBuilder(), hex = new StringBuilder();
        boolean readable = true;
        for (int i = 0; i < n; i++) {
            int c = b.get(i) & 0xFF;
            readable &= c >= 32 && c < 127 || c == '\n' || c == '\r' || c == '\t';
            text.append(c < 32 ? ' ' : (char) c);
            hex.append(String.format(Locale.ROOT, "%s%02x", i == 0 ? "" : " ", c));
        }
        return readable ? "\"" + text.toString().strip() + "\"" : hex.toString();
    }
}
