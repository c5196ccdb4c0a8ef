package shotwright.mold;

import shotwright.finding.Finding;

/** No halves can be made at all; the finding says why, where, and what to do. */
public final class HalvesRefused extends RuntimeException {
    private final transient Finding finding;

    public HalvesRefused(Finding finding) {
        super(finding.text());
        this.finding = finding;
    }

    public Finding finding() {
        return finding;
    }
}
