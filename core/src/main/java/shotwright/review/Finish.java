package shotwright.review;

/**
 * How the show faces are to look.
 *
 * @param words as said at the bench
 * @param textureDepthMm depth of the texture; 0 for a smooth face
 */
public record Finish(String words, double textureDepthMm) {
    /** Polished along the draw, Ra 0.8 µm or better. */
    public static final Finish SMOOTH = new Finish("smooth, Ra 0.8", 0);

    public Finish {
        if (!(textureDepthMm >= 0 && textureDepthMm <= 0.15))
            throw new IllegalArgumentException("textureDepthMm: " + textureDepthMm + " is not from 0 to 0.15");
    }

    /** A texture of a given depth. */
    public static Finish textured(double depthMm) {
        return new Finish(Say.mm(depthMm, 3) + " texture", depthMm);
    }

    /** Draft it asks for on top of the smooth value. */
    public double textureDraftDeg() {
        return DraftRule.textureDraftDeg(textureDepthMm);
    }
}
