package shotwright.report;

import java.util.LinkedHashMap;
import java.util.Map;
import shotwright.job.JobResult;
import shotwright.mold.export.WholeFile;
import shotwright.progress.Progress;

/** The pictures of a job: names in the job folder, and what writes each. */
public final class Pictures {
    private Pictures() {}

    public static Map<String, WholeFile.Content> of(JobResult job, Progress progress) {
        progress.at("drawing", 0);
        return new LinkedHashMap<>();
    }
}
