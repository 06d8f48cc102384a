package org.evenfall.store;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.stream.IntStream;
import org.evenfall.setup.entry.Setup;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The register says what each card replaced, whoever issues cards at the same time. */
class IssuedCardsTest {

    private static final Instant SIGNED = Instant.parse("2027-03-18T09:00:00Z");

    @TempDir
    private Path folder;

    private UserFolder user;
    private IssuedCards cards;

    @BeforeEach
    void register() {
        user = new UserFolder(folder);
        cards = new IssuedCards(user);
    }

    private static Setup setup(String field, int revision) {
        return Setup.EMPTY
                .withStart(Setup.EMPTY
                        .start()
                        .withFarm("Thornmarsh")
                        .withField(field)
                        .withSeason("2027"))
                .withCard(Setup.EMPTY.card().withRevision(revision));
    }

    private void add(String name, Setup setup) throws IOException {
        Path card = Files.createDirectories(user.cards()).resolve(name);
        Files.writeString(card, name);
        cards.add(card, user.season(2027).resolve("setup.json"), setup, "AAAA BBBB", SIGNED);
    }

    @Test
    void aCardReplacesTheOneBeforeOfTheSameField() throws Exception {
        add("one.pdf", setup("Bank", 0));
        add("other.pdf", setup("Moor", 1));
        add("two.pdf", setup(" bank ", 2));
        add("three.pdf", setup("Bank", 3));
        assertThat(cards.all()).extracting(IssuedCards.Issued::revision).containsExactly(1, 1, 2, 3);
        assertThat(cards.all())
                .extracting(IssuedCards.Issued::replaces)
                .containsExactly("", "", "cards/one.pdf", "cards/two.pdf");
        IssuedCards.Issued first = cards.all().get(0);
        assertThat(first.file()).isEqualTo(user.cards().resolve("one.pdf"));
        assertThat(first.setup()).isEqualTo(user.season(2027).resolve("setup.json"));
        assertThat(first.season()).isEqualTo(2027);
        assertThat(first.signedAt()).isEqualTo("2027-03-18T09:00:00Z");
        assertThat(first.keyCode()).isEqualTo("AAAA BBBB");
        assertThat(first.about()).containsExactly("Thornmarsh", "Bank");
    }

    @Test
    void anotherSeasonOrProductIsAnotherCard() throws Exception {
        add("one.pdf", setup("Bank", 1));
        add("next.pdf", setup("Bank", 1).withStart(setup("Bank", 1).start().withSeason("2028")));
        add("urea.pdf", setup("Bank", 1).withProduct(Setup.EMPTY.product().withName("urea")));
        assertThat(cards.all()).extracting(IssuedCards.Issued::replaces).containsOnly("");
    }

    @Test
    void keysThatThisVersionDoesNotKnowStay() throws Exception {
        add("one.pdf", setup("Bank", 1));
        ObjectMapper json = new ObjectMapper();
        ObjectNode register = (ObjectNode) json.readTree(cards.file().toFile());
        register.put("later", true);
        ((ObjectNode) register.get("cards").get(0)).put("colour", "grey");
        Files.writeString(cards.file(), register.toString());
        add("two.pdf", setup("Bank", 2));
        assertThat(cards.file()).content().contains("\"later\" : true", "\"colour\" : \"grey\"");
    }

    @Test
    void noneOfManyAtOnceIsLost() throws Exception {
        ExecutorService threads = Executors.newFixedThreadPool(4);
        try {
            List<Callable<Void>> work = IntStream.range(0, 24)
                    .<Callable<Void>>mapToObj(i -> () -> {
                        add("card-" + i + ".pdf", setup("Bank", i + 1));
                        return null;
                    })
                    .toList();
            for (Future<Void> one : threads.invokeAll(work)) {
                one.get();
            }
        } finally {
            threads.shutdown();
        }
        assertThat(cards.all()).hasSize(24);
        assertThat(cards.all()).extracting(IssuedCards.Issued::replaces).doesNotHaveDuplicates();
    }
}
