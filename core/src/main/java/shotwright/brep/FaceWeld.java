package shotwright.brep;

import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import shotwright.mesh.TriMesh;

/** Joins the triangles of separate faces at their common corners, which the engine gives alike to the last bit. */
final class FaceWeld {
    private record Corner(float x, float y, float z) {}

    private FaceWeld() {}

    /** From corners, normals, corner numbers, and three numbers a face: first index, count of indices, name. */
    static FacedMesh weld(List<Object> engineMesh) {
        float[] at = (float[]) engineMesh.get(0), normal = (float[]) engineMesh.get(1);
        int[] tri = (int[]) engineMesh.get(2), groups = (int[]) engineMesh.get(3);
        Map<Corner, Integer> seen = new HashMap<>();
        double[] xyz = new double[at.length];
        int[] number = new int[at.length / 3];
        for (int v = 0; v < number.length; v++) {
            // adding zero turns −0 into 0, so that both weld
            Corner c = new Corner(at[3 * v] + 0f, at[3 * v + 1] + 0f, at[3 * v + 2] + 0f);
            number[v] = seen.computeIfAbsent(c, k -> seen.size());
            xyz[3 * number[v]] = c.x();
            xyz[3 * number[v] + 1] = c.y();
            xyz[3 * number[v] + 2] = c.z();
        }
        int[] corners = new int[tri.length], faceOf = new int[tri.length / 3];
        float[] normals = new float[3 * tri.length];
        int n = 0;
        for (int face = 0; face < groups.length / 3; face++) {
            int from = groups[3 * face], to = from + groups[3 * face + 1];
            for (int i = from; i < to; i += 3) {
                int a = number[tri[i]], b = number[tri[i + 1]], c = number[tri[i + 2]];
                if (a == b || b == c || c == a) continue;
                faceOf[n] = face;
                for (int k = 0; k < 3; k++) {
                    corners[3 * n + k] = number[tri[i + k]];
                    System.arraycopy(normal, 3 * tri[i + k], normals, 9 * n + 3 * k, 3);
                }
                n++;
            }
        }
        TriMesh mesh = new TriMesh(Arrays.copyOf(xyz, 3 * seen.size()), Arrays.copyOf(corners, 3 * n));
        return new FacedMesh(mesh, Arrays.copyOf(faceOf, n), Arrays.copyOf(normals, 9 * n));
    }
}
