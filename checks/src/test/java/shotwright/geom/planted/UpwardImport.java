package shotwright.geom.planted;

import shotwright.mesh.TriMesh;

/** Breaks the floor plan on purpose, so that the test can show that it would notice. */
public record UpwardImport(TriMesh mesh) {}
