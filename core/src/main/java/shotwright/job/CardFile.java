package shotwright.job;

import com.fasterxml.jackson.annotation.JsonInclude;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonMappingException;
import com.fasterxml.jackson.databind.SerializationFeature;
import com.fasterxml.jackson.databind.exc.UnrecognizedPropertyException;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.stream.Collectors;

/** Reads and writes a job card; says which entry is wrong and where. */
public final class CardFile {
    private static final int MOST_BYTES = 1 << 20;
    private static final JsonMapper JSON = JsonMapper.builder()
            .enable(DeserializationFeature.FAIL_ON_UNKNOWN_PROPERTIES)
            .enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS)
            .enable(JsonParser.Feature.ALLOW_COMMENTS)
            .enable(SerializationFeature.INDENT_OUTPUT)
            .defaultPropertyInclusion(
                    JsonInclude.Value.construct(JsonInclude.Include.NON_EMPTY, JsonInclude.Include.NON_EMPTY))
            .build();

    private CardFile() {}

    /**
     * Reads a card.
     *
     * @throws JobException when it cannot be read, naming the entry and the line
     */
    public static JobCard read(Path file) {
        try {
            if (Files.size(file) > MOST_BYTES)
                throw new JobException(
                        "“" + file + "” is larger than a job card can be (1 MiB). Is it the right file?", null);
            return JSON.readValue(Files.readAllBytes(file), JobCard.class);
        } catch (NoSuchFileException e) {
            throw new JobException("There is no job card at “" + file + "”.", e);
        } catch (UnrecognizedPropertyException e) {
            throw new JobException(
                    "“" + file.getFileName() + "”" + line(e) + ": “" + e.getPropertyName()
                            + "” is not an entry of a job card. " + "Known here: "
                            + e.getKnownPropertyIds().stream()
                                    .map(Object::toString)
                                    .sorted()
                                    .collect(Collectors.joining(", "))
                            + ".",
                    e);
        } catch (JsonMappingException e) {
            if (e.getCause() instanceof JobException j)
                throw new JobException("“" + file.getFileName() + "”, " + j.getMessage(), e);
            String entry = e.getPath().stream()
                    .map(r -> r.getFieldName() == null ? "[" + r.getIndex() + "]" : r.getFieldName())
                    .collect(Collectors.joining("."));
            throw new JobException(
                    "“" + file.getFileName() + "”" + line(e) + ": “" + entry
                            + "” does not hold what it should. docs/job-card.schema.json says what each entry holds.",
                    e);
        } catch (JsonProcessingException e) {
            throw new JobException(
                    "“" + file.getFileName() + "”" + line(e) + " is not valid JSON: " + e.getOriginalMessage() + ".",
                    e);
        } catch (IOException e) {
            throw new JobException("“" + file + "” cannot be read: " + e.getMessage() + ".", e);
        }
    }

    /** The card as text. */
    public static String text(JobCard card) {
        try {
            return JSON.writeValueAsString(card) + "\n";
        } catch (JsonProcessingException e) {
            throw new IllegalStateException(e);
        }
    }

    private static String line(JsonProcessingException e) {
        return e.getLocation() == null ? "" : ", line " + e.getLocation().getLineNr();
    }
}
