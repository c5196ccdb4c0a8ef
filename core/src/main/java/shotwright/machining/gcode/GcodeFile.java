package shotwright.machining.gcode;

/**
 * A program file.
 *
 * @param fileName name, plain letters and digits
 * @param text its lines, ASCII, each ended by a line feed
 */
public record GcodeFile(String fileName, String text) {}
