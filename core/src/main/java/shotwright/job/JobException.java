package shotwright.job;

import org.jspecify.annotations.Nullable;

/** The job card, the folder or a name on the rack is not usable as given. The message says what is wrong and what to do. */
public final class JobException extends RuntimeException {
    public JobException(String message, @Nullable Throwable cause) {
        super(message, cause);
    }
}
