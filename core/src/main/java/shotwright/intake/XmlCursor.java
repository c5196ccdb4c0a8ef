package shotwright.intake;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.PushbackInputStream;
import java.io.Reader;
import java.nio.charset.StandardCharsets;
import javax.xml.stream.XMLInputFactory;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;
import org.jspecify.annotations.Nullable;
import shotwright.progress.Progress;

/**
 * A forward walk over the elements of one XML entry. Document types and entities of any kind are refused, nothing outside the entry is
 * looked up. Faults name the entry and the line.
 */
final class XmlCursor implements AutoCloseable {
    private static final String DAMAGED = "it cannot be unpacked, the packed data are damaged";
    private static final String AGAIN = "Export or copy the file again";
    private static final int DEEPEST = 60;
    private static final XMLInputFactory FACTORY = factory();

    private final XMLStreamReader xml;
    private final ReadGuard guard;
    private final String entry;
    private int depth;

    XmlCursor(InputStream in, String entry, ReadGuard guard) {
        this.guard = guard;
        this.entry = entry;
        try {
            xml = FACTORY.createXMLStreamReader(text(in));
        } catch (XMLStreamException e) {
            throw broken(e);
        } catch (IOException e) {
            throw guard.fault(entry, DAMAGED, AGAIN);
        }
    }

    /**
     * 3MF allows UTF-8 and UTF-16. Bytes that are neither become replacement signs: names may look odd then, numbers cannot, because they
     * would no longer be numbers.
     */
    private static Reader text(InputStream in) throws IOException {
        PushbackInputStream start = new PushbackInputStream(in, 3);
        byte[] b = start.readNBytes(3);
        boolean mark8 = b.length == 3 && b[0] == (byte) 0xEF && b[1] == (byte) 0xBB && b[2] == (byte) 0xBF;
        boolean wide = b.length == 3
                && (b[0] == (byte) 0xFE && b[1] == (byte) 0xFF || b[0] == (byte) 0xFF && b[1] == (byte) 0xFE);
        if (!mark8) start.unread(b);
        return new InputStreamReader(start, wide ? StandardCharsets.UTF_16 : StandardCharsets.UTF_8);
    }

    private static XMLInputFactory factory() {
        XMLInputFactory f = XMLInputFactory.newDefaultFactory();
        f.setProperty(XMLInputFactory.SUPPORT_DTD, false);
        f.setProperty(XMLInputFactory.IS_SUPPORTING_EXTERNAL_ENTITIES, false);
        f.setProperty(XMLInputFactory.IS_REPLACING_ENTITY_REFERENCES, false);
        f.setProperty(javax.xml.XMLConstants.ACCESS_EXTERNAL_DTD, "");
        f.setXMLResolver((publicId, systemId, base, namespace) -> InputStream.nullInputStream());
        return f;
    }

    /** Moves to the next element start or end; false at the end of the entry. */
    boolean next() {
        while (true) {
            int event = event();
            switch (event) {
                case XMLStreamConstants.START_ELEMENT -> {
                    if (++depth > DEEPEST)
                        throw fault("elements are nested deeper than " + DEEPEST, "Export the part again");
                    return true;
                }
                case XMLStreamConstants.END_ELEMENT -> {
                    depth--;
                    return true;
                }
                case XMLStreamConstants.DTD, XMLStreamConstants.ENTITY_REFERENCE ->
                    throw fault(
                            "it declares or uses an XML entity, which the 3MF specification forbids and which was not resolved",
                            "Export the part again; if the file came from outside, treat it with suspicion");
                case XMLStreamConstants.END_DOCUMENT -> {
                    return false;
                }
                default -> {}
            }
        }
    }

    private int event() {
        try {
            return xml.hasNext() ? xml.next() : XMLStreamConstants.END_DOCUMENT;
        } catch (XMLStreamException e) {
            throw broken(e);
        } catch (IntakeException | Progress.Cancelled e) {
            throw e;
        } catch (RuntimeException e) { // the parser of the platform trips over some malformed bytes
            throw fault("it is no well-formed XML", "Export the part again");
        }
    }

    private IntakeException broken(XMLStreamException e) {
        Throwable root = e;
        for (Throwable t = e; t != null && t != t.getCause(); t = below(t)) {
            if (t instanceof IntakeException known) return known;
            root = t;
        }
        if (root instanceof IOException) return guard.fault(entry, DAMAGED, AGAIN);
        String message = String.valueOf(e.getMessage());
        int from = message.indexOf("Message: ");
        String why = (from < 0 ? message : message.substring(from + 9))
                .replaceAll("\\s+", " ")
                .strip();
        if (why.startsWith("JAXP")) why = "one of its elements is larger than is read here";
        if (why.endsWith(".")) why = why.substring(0, why.length() - 1);
        int line = e.getLocation() == null ? -1 : e.getLocation().getLineNumber();
        return guard.fault(entry + (line > 0 ? ", line " + line : ""), "it is no well-formed XML (" + why + ")", AGAIN);
    }

    private static @Nullable Throwable below(Throwable t) {
        return t instanceof XMLStreamException x && x.getNestedException() != null
                ? x.getNestedException()
                : t.getCause();
    }

    IntakeException fault(String wrong, String remedy) {
        return guard.fault(place(), wrong, remedy);
    }

    String place() {
        return entry + ", line " + xml.getLocation().getLineNumber();
    }

    boolean starts() {
        return xml.getEventType() == XMLStreamConstants.START_ELEMENT;
    }

    String name() {
        return xml.getLocalName();
    }

    String namespace() {
        String ns = xml.getNamespaceURI();
        return ns == null ? "" : ns;
    }

    /** The namespace a prefix stands for here; empty when it stands for none. */
    String namespaceOf(String prefix) {
        String ns = xml.getNamespaceURI(prefix);
        return ns == null ? "" : ns;
    }

    /** An attribute without namespace, or null. */
    @Nullable String attribute(String name) {
        return attribute("", name);
    }

    @Nullable String attribute(String namespace, String name) {
        for (int i = 0; i < xml.getAttributeCount(); i++) {
            String ns = xml.getAttributeNamespace(i);
            if (name.equals(xml.getAttributeLocalName(i)) && namespace.equals(ns == null ? "" : ns))
                return xml.getAttributeValue(i);
        }
        return null;
    }

    /** An attribute that must be there. */
    String required(String name) {
        String value = attribute(name);
        if (value == null) throw fault("<" + name() + "> has no attribute " + name, "Export the part again");
        return value;
    }

    /** An attribute that must be there and be a number; NaN when it says it is none. */
    double number(String name) {
        String value = required(name).strip();
        try {
            return DecimalText.parse(value);
        } catch (NumberFormatException e) {
            throw fault(name + "=\"" + shortened(value) + "\" is no number", "Export the part again");
        }
    }

    /** An attribute that must be there and be a whole number from 0 on. */
    int index(String name) {
        String value = required(name).strip();
        int n = 0;
        boolean good = !value.isEmpty() && value.length() < 10;
        for (int i = 0; good && i < value.length(); i++) {
            char c = value.charAt(i);
            good = c >= '0' && c <= '9';
            n = 10 * n + (c - '0');
        }
        if (!good) throw fault(name + "=\"" + shortened(value) + "\" is no whole number", "Export the part again");
        return n;
    }

    static String shortened(String s) {
        return s.length() > 40 ? s.substring(0, 40) + "…" : s;
    }

    @Override
    public void close() {
        try {
            xml.close();
        } catch (XMLStreamException e) {
            throw broken(e);
        }
    }
}
