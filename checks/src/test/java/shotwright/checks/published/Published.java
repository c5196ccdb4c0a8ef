package shotwright.checks.published;

import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/**
 * A test against a number from outside the project. The inputs stand in the body with their units; each compared number goes through
 * {@link Check}. A number from a run of our own is never allowed here.
 */
@Test
@Tag("published")
@Target(ElementType.METHOD)
@Retention(RetentionPolicy.RUNTIME)
public @interface Published {
    /** Rows of the register in {@code checks/src/test/resources/register.txt} that this test covers, for example {@code CV-12, F38}. */
    String[] id();

    /** Key of {@code docs/SOURCES.md}, or {@code common practice}, or {@code closed form}. */
    String source();

    /** Page, table or equation, as the source numbers it. */
    String where();

    /** How far the number can be trusted. */
    Mark mark();

    /** Marks of outside numbers. */
    enum Mark {
        /** Read in a copy of the source. */
        PUBLISHED("published"),
        /** A closed form or a value derived by hand from published inputs. */
        DERIVED("derived from published inputs"),
        /** Habit of the trade. */
        COMMON_PRACTICE("common practice"),
        /** Remembered from the source named, not read again. */
        FROM_MEMORY("from memory");

        final String words;

        Mark(String words) {
            this.words = words;
        }
    }
}
