package shotwright.review;

import java.util.List;
import org.jspecify.annotations.Nullable;
import shotwright.finding.Finding;

/** A row of a table and what has to be said about it; null when nothing. Several rows may share one finding. */
record Said<T>(T row, @Nullable Finding finding) {
    static <T> List<T> rows(List<Said<T>> said) {
        return said.stream().map(Said::row).toList();
    }
}
