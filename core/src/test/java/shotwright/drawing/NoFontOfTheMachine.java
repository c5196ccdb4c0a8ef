package shotwright.drawing;

import shotwright.demo.PlainCap;

/** Run in a process of its own: makes a picture with letters. */
final class NoFontOfTheMachine {
    private NoFontOfTheMachine() {}

    public static void main(String[] args) {
        Drawing d = Picture.drawing(Scene.of(Body.part(PlainCap.mesh())).with(Legend.draft(1)), 90, 70, 60);
        if (PngFile.bytes(d, 60).length < 1000) throw new IllegalStateException("the picture is empty");
    }
}
