package shotwright.mold;

import java.util.List;
import shotwright.finding.Finding;
import shotwright.mesh.TriMesh;

/**
 * What station 50 leaves behind.
 *
 * @param a half A
 * @param b half B
 * @param parting where the halves meet, before feed, vents and holes are cut: an open mesh, normals out of half B
 * @param stepMm how far the parting surface leaves its plane on the part
 * @param blockVolumeMm3 both halves' block before cutting
 * @param partVolumeMm3 all cavities, shrink included
 * @param cutVolumeMm3 feed, vents and holes
 * @param balanceError |A + B + parts + cut-outs − block| / block
 * @param badColumns columns of the independent check in which the materials do not follow one another
 * @param columns columns checked
 * @param partingUsed which way of parting was used, in words
 * @param cutOuts each cut-out against its closed form
 * @param circles exact circles
 * @param specks loose specks of metal given to what they touch
 * @param findings what has to be said
 */
public record MoldResult(
        MoldHalf a,
        MoldHalf b,
        TriMesh parting,
        double stepMm,
        double blockVolumeMm3,
        double partVolumeMm3,
        double cutVolumeMm3,
        double balanceError,
        int badColumns,
        int columns,
        String partingUsed,
        List<CutOut> cutOuts,
        List<ExactCircle> circles,
        Specks specks,
        List<Finding> findings) {
    public MoldResult {
        cutOuts = List.copyOf(cutOuts);
        circles = List.copyOf(circles);
        findings = List.copyOf(findings);
    }
}
