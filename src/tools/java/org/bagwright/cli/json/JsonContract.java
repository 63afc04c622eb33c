package org.bagwright.cli.json;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;

/** What {@code src/docs/json} promises of the documents of a command. */
public final class JsonContract {
    public static final Path FOLDER = Path.of("src/docs/json");

    private static final ObjectMapper MAPPER = new ObjectMapper();
    private static final SchemaRegistry REGISTRY =
            SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12);
    private static final Map<String, JsonContract> CONTRACTS = new ConcurrentHashMap<>();

    private final Schema schema;

    private JsonContract(String command) {
        try {
            schema = REGISTRY.getSchema(Files.readString(FOLDER.resolve(command + ".schema.json")));
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }

    /** The contract of a command. */
    public static JsonContract of(String command) {
        return CONTRACTS.computeIfAbsent(command, JsonContract::new);
    }

    /** What a document does not keep, each with its place. */
    public List<String> problems(JsonNode document) {
        return schema.validate(document).stream()
                .map(error -> error.getInstanceLocation() + ": " + error.getMessage())
                .toList();
    }

    /**
     * Reads a document that must keep the contract.
     *
     * @throws AssertionError if it does not
     */
    public JsonNode read(String text) {
        try {
            JsonNode document = MAPPER.readTree(text);
            List<String> problems = problems(document);
            if (!problems.isEmpty()) {
                throw new AssertionError(
                        problems.size() + " problems, such as " + problems.subList(0, Math.min(5, problems.size())));
            }
            return document;
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }
}
