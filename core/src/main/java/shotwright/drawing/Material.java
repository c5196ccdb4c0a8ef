package shotwright.drawing;

/** What a body is made of, as far as a picture tells. */
public enum Material {
    PLASTIC(0xe4e1d8),
    ALUMINIUM(0xdfe0dd),
    STEEL(0xc3c8cc),
    HOLDER(0xb3b8bc);

    private final int rgb;

    Material(int rgb) {
        this.rgb = rgb;
    }

    public int rgb() {
        return rgb;
    }
}
