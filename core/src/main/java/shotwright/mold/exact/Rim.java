package shotwright.mold.exact;

/** What a border edge of a piece of the parting surface runs along. */
enum Rim {
    /** The part. */
    PART(1e-3),
    /** A level piece of the parting surface. */
    LEVEL(1e-2),
    /** A side of the block. */
    BLOCK(1e-2);

    private final double slackMm;

    Rim(double slackMm) {
        this.slackMm = slackMm;
    }

    /** How far the border may move when its edges are made fewer, mm. */
    double slackMm() {
        return slackMm;
    }
}
