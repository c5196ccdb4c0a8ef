package shotwright.mesh;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Assumptions;
import shotwright.geom.Vec3;

/**
 * Real parts that lie beside the repository, not in it; tests that need them are skipped where they are absent. Reads just enough of STL
 * and OBJ for the tests of this package, apart from the readers of the program.
 */
public final class SharedParts {
    private SharedParts() {}

    public static Path path(String name) {
        String set = System.getProperty("shotwright.parts");
        if (set != null) return found(Path.of(set, name), name);
        Path here = Path.of("").toAbsolutePath();
        for (Path p = here; p != null; p = p.getParent()) {
            Path file = p.resolve("shared/parts").resolve(name);
            if (Files.exists(file)) return file;
        }
        return found(here.resolve(name), name);
    }

    private static Path found(Path file, String name) {
        Assumptions.assumeTrue(Files.exists(file), "shared part " + name + " is not here");
        return file;
    }

    public static TriMesh read(String name) {
        Path file = path(name);
        try {
            if (name.endsWith(".obj")) return obj(Files.readAllLines(file));
            byte[] all = Files.readAllBytes(file);
            ByteBuffer b = ByteBuffer.wrap(all).order(ByteOrder.LITTLE_ENDIAN);
            boolean binary = all.length >= 84 && 84 + 50L * b.getInt(80) == all.length;
            return binary ? binary(b) : ascii(new String(all, StandardCharsets.US_ASCII));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static TriMesh binary(ByteBuffer b) {
        Solids.Soup soup = new Solids.Soup();
        int n = b.getInt(80);
        for (int i = 0; i < n; i++) {
            b.position(84 + 50 * i + 12);
            soup.add(point(b), point(b), point(b));
        }
        return soup.mesh();
    }

    private static Vec3 point(ByteBuffer b) {
        return new Vec3(b.getFloat(), b.getFloat(), b.getFloat());
    }

    private static TriMesh ascii(String text) {
        Solids.Soup soup = new Solids.Soup();
        List<Vec3> corners = new ArrayList<>();
        for (String line : text.split("\n")) {
            String[] w = line.strip().split("\\s+");
            if (!w[0].equalsIgnoreCase("vertex")) continue;
            corners.add(new Vec3(Float.parseFloat(w[1]), Float.parseFloat(w[2]), Float.parseFloat(w[3])));
            if (corners.size() == 3) {
                soup.add(corners.get(0), corners.get(1), corners.get(2));
                corners.clear();
            }
        }
        return soup.mesh();
    }

    private static TriMesh obj(List<String> lines) {
        Solids.Soup soup = new Solids.Soup();
        List<Vec3> points = new ArrayList<>();
        for (String line : lines) {
            String[] w = line.strip().split("\\s+");
            if (w[0].equals("v"))
                points.add(new Vec3(Double.parseDouble(w[1]), Double.parseDouble(w[2]), Double.parseDouble(w[3])));
            if (!w[0].equals("f")) continue;
            int[] c = new int[w.length - 1];
            for (int i = 0; i < c.length; i++) {
                int k = Integer.parseInt(w[i + 1].split("/")[0]);
                c[i] = k < 0 ? points.size() + k : k - 1;
            }
            for (int i = 2; i < c.length; i++) soup.add(points.get(c[0]), points.get(c[i - 1]), points.get(c[i]));
        }
        return soup.mesh();
    }
}
