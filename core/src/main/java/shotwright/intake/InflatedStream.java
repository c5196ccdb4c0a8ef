package shotwright.intake;

import java.io.FilterInputStream;
import java.io.IOException;
import java.io.InputStream;

/**
 * What comes out of one packed entry, counted. Ends the reading when all entries together give more than the limit, when one entry gives
 * far more than any part file packed honestly would, or when megabytes go by without one element (padding, or one endless value).
 */
final class InflatedStream extends FilterInputStream {
    private static final long LOOK_AT_RATIO_FROM = 32L << 20;
    private static final int LONGEST_WITHOUT_ELEMENT = 4 << 20;

    private final ReadGuard guard;
    private final String entry;
    private final long packed;
    private final long[] total;
    private long out;
    private int sinceElement;

    /** {@code total[0]} counts over all entries of the file. */
    InflatedStream(InputStream in, String entry, long packedBytes, long[] total, ReadGuard guard) {
        super(in);
        this.guard = guard;
        this.entry = entry;
        this.packed = Math.max(1, packedBytes);
        this.total = total;
    }

    @Override
    public int read() throws IOException {
        byte[] one = new byte[1];
        return read(one, 0, 1) < 0 ? -1 : one[0] & 0xFF;
    }

    @Override
    public int read(byte[] b, int off, int len) throws IOException {
        int n = super.read(b, off, len);
        if (n <= 0) return n;
        out += n;
        total[0] += n;
        int last = off + n - 1;
        while (last >= off && b[last] != '<') last--;
        sinceElement = last < off ? sinceElement + n : off + n - 1 - last;
        check();
        return n;
    }

    private void check() {
        String again = "Export the part again; if the file came from outside, treat it with suspicion";
        if (total[0] > guard.limits().maxInflatedByteCount())
            throw guard.fault(
                    entry,
                    "unpacked it has more than " + (guard.limits().maxInflatedByteCount() >> 20)
                            + " MiB, the most that is read",
                    "Export the part coarser");
        if (sinceElement > LONGEST_WITHOUT_ELEMENT)
            throw guard.fault(
                    entry,
                    "more than " + (LONGEST_WITHOUT_ELEMENT >> 20)
                            + " MiB come out of it without a single element, as in a file padded to fill the memory",
                    again);
        if (out > LOOK_AT_RATIO_FROM && out > packed * guard.limits().maxInflateRatio())
            throw guard.fault(
                    entry,
                    "it unpacks to more than " + Math.round(guard.limits().maxInflateRatio())
                            + " times its size, which no mesh does",
                    again);
        if ((out & 0xFFFFF) < 8192) guard.at("unpacking " + entry, 0.1);
    }
}
