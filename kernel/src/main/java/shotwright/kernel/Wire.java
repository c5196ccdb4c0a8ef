package shotwright.kernel;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.util.ArrayList;
import java.util.List;

/**
 * Values as bytes, little end first, every value on a multiple of eight so that the script can look at arrays where they lie. A message is a
 * count and a zero, then for each value its kind, its length, and its data filled up to eight bytes. {@code exact.mjs} holds the other end.
 */
final class Wire {
    private static final int INT = 1, DOUBLE = 2, TEXT = 3, BYTES = 4, INTS = 5, FLOATS = 6, DOUBLES = 7;

    private Wire() {}

    static byte[] bytes(List<Object> values) {
        int size = 8;
        for (Object v : values) size += 8 + padded(dataSize(v));
        ByteBuffer out = ByteBuffer.allocate(size).order(ByteOrder.LITTLE_ENDIAN);
        out.putInt(values.size()).putInt(0);
        for (Object v : values) put(out, v);
        return out.array();
    }

    private static int padded(int bytes) {
        return (bytes + 7) / 8 * 8;
    }

    private static int dataSize(Object v) {
        return switch (v) {
            case Integer i -> 8;
            case Double d -> 8;
            case String s -> s.getBytes(UTF_8).length;
            case byte[] b -> b.length;
            case int[] a -> 4 * a.length;
            case float[] a -> 4 * a.length;
            case double[] a -> 8 * a.length;
            default -> throw new IllegalArgumentException("value: " + v.getClass() + " cannot be sent");
        };
    }

    private static void put(ByteBuffer out, Object v) {
        int end = out.position() + 8 + padded(dataSize(v));
        switch (v) {
            case Integer i -> out.putInt(INT).putInt(1).putInt(i);
            case Double d -> out.putInt(DOUBLE).putInt(1).putDouble(d);
            case String s -> {
                byte[] b = s.getBytes(UTF_8);
                out.putInt(TEXT).putInt(b.length).put(b);
            }
            case byte[] b -> out.putInt(BYTES).putInt(b.length).put(b);
            case int[] a -> {
                out.putInt(INTS).putInt(a.length);
                out.asIntBuffer().put(a);
            }
            case float[] a -> {
                out.putInt(FLOATS).putInt(a.length);
                out.asFloatBuffer().put(a);
            }
            case double[] a -> {
                out.putInt(DOUBLES).putInt(a.length);
                out.asDoubleBuffer().put(a);
            }
            default -> throw new IllegalArgumentException("value: " + v.getClass() + " cannot be sent");
        }
        out.position(end);
    }

    /**
     * Reads a message.
     *
     * @throws IllegalArgumentException when the bytes are no message
     */
    static List<Object> values(byte[] message) {
        ByteBuffer in = ByteBuffer.wrap(message).order(ByteOrder.LITTLE_ENDIAN);
        try {
            int count = in.getInt();
            in.getInt();
            List<Object> out = new ArrayList<>();
            for (int i = 0; i < count; i++) out.add(take(in));
            return out;
        } catch (java.nio.BufferUnderflowException | NegativeArraySizeException e) {
            throw new IllegalArgumentException("message: it ends too early", e);
        }
    }

    private static Object take(ByteBuffer in) {
        int kind = in.getInt(), length = in.getInt(), start = in.position();
        if (length < 0 || length > in.remaining()) throw new IllegalArgumentException("message: length " + length);
        Object value =
                switch (kind) {
                    case INT -> in.getInt();
                    case DOUBLE -> in.getDouble();
                    case TEXT -> new String(taken(in, length), UTF_8);
                    case BYTES -> taken(in, length);
                    case INTS -> {
                        int[] a = new int[length];
                        in.asIntBuffer().get(a);
                        yield a;
                    }
                    case FLOATS -> {
                        float[] a = new float[length];
                        in.asFloatBuffer().get(a);
                        yield a;
                    }
                    case DOUBLES -> {
                        double[] a = new double[length];
                        in.asDoubleBuffer().get(a);
                        yield a;
                    }
                    default -> throw new IllegalArgumentException("message: kind " + kind);
                };
        in.position(Math.min(in.limit(), start + padded(dataSize(value))));
        return value;
    }

    private static byte[] taken(ByteBuffer in, int length) {
        byte[] b = new byte[length];
        in.get(b);
        return b;
    }
}
