package org.evenfall.store;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.networknt.schema.JsonSchema;
import com.networknt.schema.JsonSchemaFactory;
import com.networknt.schema.SpecVersion;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import org.evenfall.setup.entry.Setup;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What the registers of a farm write is what their schemas describe: every key, and no other. */
class RegisterSchemaTest {

    private static final ObjectMapper MAPPER = new ObjectMapper();

    @TempDir
    private Path folder;

    private static JsonNode schema(String name) throws Exception {
        try (InputStream in = RegisterSchemaTest.class.getResourceAsStream("/org/evenfall/" + name)) {
            return MAPPER.readTree(in);
        }
    }

    private static void check(Path file, String schemaName, String list) throws Exception {
        JsonNode schema = schema(schemaName);
        JsonSchema validator =
                JsonSchemaFactory.getInstance(SpecVersion.VersionFlag.V202012).getSchema(schema);
        JsonNode written = MAPPER.readTree(file.toFile());
        assertThat(validator.validate(written)).isEmpty();
        JsonNode item = written.get(list).get(0);
        assertThat(item.fieldNames())
                .toIterable()
                .containsExactlyInAnyOrderElementsOf(() ->
                        schema.at("/properties/" + list + "/items/properties").fieldNames());
        ((ObjectNode) item).put("sha256", "no digest");
        assertThat(validator.validate(written)).isNotEmpty();
    }

    @Test
    void issuedCards() throws Exception {
        UserFolder user = new UserFolder(folder);
        Path card = Files.createDirectories(user.cards()).resolve("card.pdf");
        Files.writeString(card, "card");
        IssuedCards cards = new IssuedCards(user);
        cards.add(card, user.season(2027).resolve("setup.json"), Setup.EMPTY, "AAAA", Instant.EPOCH);
        check(cards.file(), "issued-cards.schema.json", "cards");
    }

    @Test
    void takenIn() throws Exception {
        UserFolder user = new UserFolder(folder);
        SetupStore store = new SetupStore(new SetupJson());
        Path outside = folder.resolve("stick.json");
        store.save(Setup.EMPTY, outside);
        new SetupFiles(store, user, () -> new Owner("a", "b", Instant.EPOCH))
                .open(outside, 2027)
                .close();
        check(folder.resolve("taken-in.json"), "taken-in.schema.json", "files");
    }
}
