package shotwright.review;

/**
 * A wall with what surrounds it, the half that forms it and what a person would call it.
 *
 * @param wall the wall
 * @param around what lies round it
 * @param side the half that forms it
 * @param shape its kind
 * @param acrossMm the size in its name: a diameter or a width; 0 when its name has none
 */
record FormedWall(Wall wall, WallSurroundings around, Side side, WallShape shape, double acrossMm) {
    /** Lean counted towards the half that forms it: below zero it leans against the draw. */
    double hasDeg() {
        return side == Side.A ? wall.leanDeg() : -wall.leanDeg();
    }

    double leastDeg() {
        return side == Side.A ? wall.lowLeanDeg() : -wall.highLeanDeg();
    }

    String name() {
        return switch (shape) {
            case HOLE -> "wall of the " + Say.mm(acrossMm) + " hole";
            case BOSS -> "outside of the " + Say.mm(acrossMm) + " boss";
            case POCKET -> "wall of the " + Say.mm(acrossMm) + " pocket";
            case OUTER, INNER, RIB, FLAT, CURVED -> shape.words();
        };
    }
}
