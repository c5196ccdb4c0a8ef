package shotwright.intake;

import shotwright.progress.Progress;

/** Held by every reader: names the file in complaints, counts against the limits, watches the clock, and hears when to stop. */
final class ReadGuard {
    private static final String SPLIT_OR_RAISE = "Export it coarser, or raise the limit if the file is meant to be so";

    private final String fileName;
    private final Limits limits;
    private final Progress progress;
    private final long startNs = System.nanoTime();

    ReadGuard(String fileName, Limits limits, Progress progress) {
        this.fileName = fileName;
        this.limits = limits;
        this.progress = progress;
    }

    String fileName() {
        return fileName;
    }

    Limits limits() {
        return limits;
    }

    /** A view of the progress for work after reading that also keeps the deadline. */
    Progress progress() {
        return this::at;
    }

    boolean isOverdue() {
        return (System.nanoTime() - startNs) * 1e-9 > limits.deadlineS();
    }

    /** Says how far the work is; ends it when time is up or the person asked to stop. */
    void at(String doing, double share) {
        if (isOverdue()) {
            String s = limits.deadlineS() + " s";
            throw fault(
                    "",
                    "reading took longer than " + s + " and was stopped while " + doing,
                    "Export the part coarser, in a binary format");
        }
        progress.at(doing, Math.min(1, Math.max(0, share)));
    }

    IntakeException fault(String place, String wrong, String remedy) {
        return new IntakeException(fileName, place, wrong, remedy);
    }

    void facets(long count, String place) {
        if (count > limits.maxFacetCount())
            throw fault(
                    place,
                    "there are more than " + limits.maxFacetCount() + " facets, the most that is read",
                    SPLIT_OR_RAISE);
    }

    void vertices(long count, String place) {
        if (count > limits.maxVertexCount())
            throw fault(
                    place,
                    "there are more than " + limits.maxVertexCount() + " corner points, the most that is read",
                    SPLIT_OR_RAISE);
    }
}
