package org.evenfall.store;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.evenfall.setup.Seasons;
import org.evenfall.setup.entry.Setup;

/** The cards that were issued, in {@code cards/issued.json}: of which setup and revision, and what each replaced. */
public final class IssuedCards {

    private final Path farm;
    private final Register register;

    /** @param user the folder of the farm */
    public IssuedCards(UserFolder user) {
        this.farm = user.farm();
        this.register = new Register(user.cards().resolve("issued.json"), "cards");
    }

    /**
     * One card.
     *
     * @param file its PDF file
     * @param setup file of its setup
     * @param season year of the season; 0 when the setup names none
     * @param revision revision of the card
     * @param keyCode short code of the key that signed it
     * @param sha256 digest of the PDF file, hexadecimal
     * @param replaces name of the file of the card before; empty for a first one
     * @param about farm, field, crop, product and machine, as far as they are typed
     */
    public record Issued(
            Path file,
            Path setup,
            int season,
            int revision,
            String signedAt,
            String keyCode,
            String sha256,
            String replaces,
            List<String> about) {

        /** Copies the list. */
        public Issued {
            about = List.copyOf(about);
        }
    }

    /** The file of the register. */
    public Path file() {
        return register.file();
    }

    boolean isSound(Path file) throws IOException {
        return register.isSound(file);
    }

    /**
     * All cards, the first one first.
     *
     * @throws InputFileException when the register cannot be read
     */
    public List<Issued> all() throws InputFileException {
        List<Issued> all = new ArrayList<>();
        for (JsonNode one : register.items()) {
            all.add(new Issued(
                    farm.resolve(one.path("file").asText()),
                    farm.resolve(one.path("setup").asText()),
                    one.path("season").asInt(),
                    one.path("revision").asInt(),
                    one.path("signedAt").asText(),
                    one.path("key").asText(),
                    one.path("sha256").asText(),
                    one.path("replaces").asText(),
                    Stream.of("farm", "field", "crop", "product", "machine")
                            .map(key -> one.path(key).asText())
                            .filter(text -> !text.isBlank())
                            .toList()));
        }
        return List.copyOf(all);
    }

    /**
     * Adds a card that was just written. It replaces the one issued last for the same farm, field, crop, product and
     * machine in the same season.
     *
     * @param card its PDF file
     * @param file file of its setup
     * @throws IOException when the register cannot be written, or the card not be read
     */
    public void add(Path card, Path file, Setup setup, String keyCode, Instant signedAt) throws IOException {
        byte[] bytes = WholeFileReader.read(card);
        register.change(cards -> {
            ObjectNode one = cards.objectNode();
            one.put("file", Register.relative(farm, card));
            one.put("setup", Register.relative(farm, file));
            one.put("season", Seasons.of(setup, 0));
            one.put("farm", setup.start().farm().strip());
            one.put("field", setup.start().field().strip());
            one.put("crop", setup.start().crop().strip());
            one.put("product", setup.product().name().strip());
            one.put("machine", setup.machine().name().strip());
            one.put("revision", Math.max(1, setup.card().revision()));
            one.put("signedAt", signedAt.toString());
            one.put("key", keyCode);
            one.put("sha256", TakenIn.digest(bytes));
            one.put("replaces", before(cards, one));
            cards.add(one);
        });
    }

    private static String before(ArrayNode cards, ObjectNode card) {
        for (int i = cards.size() - 1; i >= 0; i--) {
            if (same(cards.get(i), card)) {
                return cards.get(i).path("file").asText();
            }
        }
        return "";
    }

    private static boolean same(JsonNode a, JsonNode b) {
        return Stream.of("season", "farm", "field", "crop", "product", "machine")
                .allMatch(key -> folded(a.path(key)).equals(folded(b.path(key))));
    }

    private static String folded(JsonNode text) {
        return text.asText().strip().toLowerCase(Locale.ROOT);
    }
}
