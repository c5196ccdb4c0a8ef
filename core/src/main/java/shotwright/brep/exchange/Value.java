package shotwright.brep.exchange;

import java.util.List;

/** One value of an entity. */
public sealed interface Value {
    /** A number; whole numbers too. */
    record Number(double bare) implements Value {}

    /** Text, its escapes undone. */
    record Text(String text) implements Value {}

    /** A word between dots. */
    record Word(String word) implements Value {}

    /** Another entity, by its number. */
    record Reference(int number) implements Value {}

    /** Values in brackets. */
    record Many(List<Value> values) implements Value {}

    /** A value with a type of its own. */
    record Typed(String type, List<Value> values) implements Value {}

    /** Left out, or worked out by the reader. */
    record Nothing() implements Value {}
}
