package shotwright.brep;

import java.util.List;
import shotwright.progress.Progress;

/** What works on exact solids. It keeps shapes by number from one call to the next; when it ends they are gone. */
public interface ExactEngine extends AutoCloseable {
    /** For where there is none: every call says so. */
    ExactEngine NONE = new ExactEngine() {
        @Override
        public List<Object> call(Progress watch, String operation, Object... values) throws ExactFailure {
            throw new ExactFailure(
                    ExactFailure.Why.NO_ENGINE, "STEP is not read here, for want of an exact-solid engine");
        }

        @Override
        public void close() {}
    };

    /**
     * Runs one operation.
     *
     * @param watch asked all the while whether to go on
     * @param operation its name
     * @param values numbers ({@link Integer}, {@link Double}), text, and arrays of byte, int, float or double
     * @return values of the same kinds
     * @throws ExactFailure when there is no engine, when it ended, or when the operation cannot be done
     * @throws Progress.Cancelled when the watcher asked to stop; the engine is ended then
     */
    List<Object> call(Progress watch, String operation, Object... values) throws ExactFailure;

    /** Lets the engine start ahead of need, without waiting for it; what keeps it from starting is told by the first call. */
    default void prepare() {}

    /** Ends the engine; everything it kept is gone. */
    @Override
    void close();
}
