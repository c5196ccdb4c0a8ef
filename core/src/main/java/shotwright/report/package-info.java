/**
 * What a person or a script reads of a job: the summary in words, the summary as JSON, the first-answer page, the pictures.
 *
 * <p>What comes in: {@link shotwright.job.JobResult}.
 *
 * <p>What goes out: Markdown, plain text, JSON trees, drawings.
 *
 * <p>Whose formulas: none; numbers are only rounded to what they are worth.
 */
@org.jspecify.annotations.NullMarked
package shotwright.report;
