package shotwright.mold.export;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Arrays;
import shotwright.geom.Vec3;
import shotwright.mesh.TriMesh;
import shotwright.progress.Progress;

/** Binary STL: an 80-byte title, a count, 50 bytes per facet, little endian, single precision. */
public final class StlFile {
    private static final int TITLE = 80;
    private static final int FACET = 50;

    private StlFile() {}

    /**
     * Writes a mesh.
     *
     * @param file the file; its folder must exist, an older file of the name is replaced
     * @param mesh closed facets, millimetres
     * @param name put into the title together with the unit, so that a person can tell
     * @param origin subtracted from every coordinate before rounding; a corner of the block keeps the most digits
     * @return the mesh as the file holds it
     * @throws IOException when the folder cannot be written to; no part of the file is left behind
     */
    public static Rounded write(Path file, TriMesh mesh, String name, Vec3 origin, Progress progress)
            throws IOException {
        Rounded rounded = Rounded.toSinglePrecision(mesh, origin);
        WholeFile.write(file, out -> put(rounded.mesh(), title(name), out, progress));
        return rounded;
    }

    private static byte[] title(String name) {
        String text = ("Shotwright, millimetres: " + name).replaceAll("[^\\x20-\\x7e]", "?");
        byte[] title = new byte[TITLE];
        byte[] bytes = text.getBytes(StandardCharsets.US_ASCII);
        System.arraycopy(bytes, 0, title, 0, Math.min(bytes.length, TITLE));
        return title;
    }

    private static void put(TriMesh mesh, byte[] title, OutputStream out, Progress progress) throws IOException {
        int n = mesh.facetCount();
        ByteBuffer b = ByteBuffer.allocate(FACET).order(ByteOrder.LITTLE_ENDIAN);
        out.write(title);
        out.write(b.putInt(n).array(), 0, 4);
        for (int f = 0; f < n; f++) {
            if ((f & 0xFFFF) == 0) progress.at("writing STL", (double) f / n);
            Arrays.fill(b.array(), (byte) 0);
            b.clear();
            Vec3 normal = mesh.doubleAreaNormal(f);
            double l = normal.length();
            put(b, l > 0 ? normal.times(1 / l) : Vec3.ZERO);
            for (int k = 0; k < 3; k++) put(b, mesh.cornerPoint(f, k));
            out.write(b.array());
        }
    }

    private static void put(ByteBuffer b, Vec3 p) {
        b.putFloat((float) p.x()).putFloat((float) p.y()).putFloat((float) p.z());
    }
}
