/**
 * The traveller: what was decided, what the stations answered, what is stale; the only place that knows the order of the line.
 *
 * <p>What comes in: a part file and a job card.
 *
 * <p>What goes out: {@link shotwright.job.JobResult}, the job card as it was used, files in the job folder.
 *
 * <p>Whose formulas: none.
 */
@org.jspecify.annotations.NullMarked
package shotwright.job;
