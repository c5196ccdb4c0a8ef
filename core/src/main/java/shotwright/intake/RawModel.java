package shotwright.intake;

import java.util.List;
import org.jspecify.annotations.Nullable;
import shotwright.finding.Finding;
import shotwright.measure.LengthUnit;

/**
 * What a reader found in a file.
 *
 * @param format the format in words
 * @param unit the unit the file states, null when it states none
 * @param singlePrecision whether the numbers carry about seven digits only
 * @param objects the objects in the order of the file
 * @param notes what the reader has to tell
 * @param findings what the reader has to warn about
 */
record RawModel(
        String format,
        @Nullable LengthUnit unit,
        boolean singlePrecision,
        List<RawObject> objects,
        List<String> notes,
        List<Finding> findings) {}
