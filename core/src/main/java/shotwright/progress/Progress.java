package shotwright.progress;

/** Told by long work how far it is; asked by it whether to go on. Implementations must be safe to call from several threads. */
@FunctionalInterface
public interface Progress {
    /** For work that nobody watches. */
    Progress SILENT = (doing, share) -> {};

    /**
     * Says what is being done and how much of it is done.
     *
     * @param doing a few plain words, for example {@code "casting rays"}
     * @param share from 0 to 1
     * @throws Cancelled when the person asked to stop; the work ends there and leaves nothing half written
     */
    void at(String doing, double share);

    /** A view of this progress in which 0 … 1 stands for {@code from} … {@code to}. */
    default Progress part(double from, double to) {
        return (doing, share) -> at(doing, from + (to - from) * share);
    }

    /** Thrown out of long work when it was asked to stop. */
    final class Cancelled extends RuntimeException {
        public Cancelled() {
            super("stopped on request");
        }
    }
}
