package shotwright.machining.gcode;

import java.util.List;
import shotwright.machining.path.Program;

/** A program read from a file, with the line that each move came from. */
public final class Listing {
    private final Program program;
    private final List<int[]> lines;

    Listing(Program program, List<int[]> lines) {
        this.program = program;
        this.lines = lines;
    }

    public Program program() {
        return program;
    }

    /** Line in the file, from 1, of a move of an operation, both counted from 0. */
    public int line(int operation, int move) {
        return lines.get(operation)[move];
    }
}
