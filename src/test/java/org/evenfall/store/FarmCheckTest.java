package org.evenfall.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.evenfall.quantity.EnteredQuantity;
import org.evenfall.setup.entry.Setup;
import org.evenfall.store.FarmProblem.What;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Damaged, missing and changed files are found, and the newest sound generation comes back. */
class FarmCheckTest {

    private static final Instant SAVED = Instant.parse("2027-03-18T09:00:00Z");
    private static final Instant SAVED_LATER = Instant.parse("2027-03-18T09:05:00Z");

    private final SetupStore store = new SetupStore(new SetupJson());

    @TempDir
    private Path folder;

    private UserFolder user;
    private Path file;

    private static Setup farm(String name) {
        return Setup.EMPTY.withStart(
                Setup.EMPTY.start().withFarm(name).withField("Bank").withSeason("2027"));
    }

    private List<FarmProblem> check() {
        return FarmCheck.of(store, user);
    }

    @BeforeEach
    void threeSaves() throws Exception {
        user = new UserFolder(folder);
        file = user.season(2027).resolve("setup.json");
        store.save(farm("a"), file);
        Files.setLastModifiedTime(file, FileTime.from(SAVED));
        try (SetupFile open = SetupFile.open(store, file, new Owner("anna", "yard", SAVED))) {
            open.save(farm("ab"));
            Files.setLastModifiedTime(file, FileTime.from(SAVED_LATER));
            open.save(farm("abc"));
        }
    }

    @Test
    void aSoundFolderHasNoProblems() throws Exception {
        new FarmShelf(store, user)
                .keep(farm("a").withMachine(Setup.EMPTY.machine().withName("broadcaster")));
        assertThat(check()).isEmpty();
        assertThat(FarmCheck.of(store, new UserFolder(folder.resolve("none")))).isEmpty();
    }

    @Test
    void aDamagedFileIsOfferedItsNewestSoundGeneration() throws Exception {
        Files.writeString(file, "{\"evenfall\": 1, \"start\": {\"farm\": []}}");
        assertThat(check())
                .containsExactly(
                        new FarmProblem(What.DAMAGED, file, "/start/farm: expected a text", Optional.of(SAVED_LATER)));
        FarmCheck.recover(store, user, file);
        assertThat(store.read(file)).isEqualTo(farm("ab"));
        assertThat(file.resolveSibling("earlier").resolve("setup.damaged.json"))
                .content()
                .contains("\"farm\": []");
        assertThat(check()).isEmpty();
    }

    @Test
    void aDamagedGenerationIsPassedOver() throws Exception {
        Files.writeString(file, "");
        Files.writeString(Generations.of(file, 1), "{");
        assertThat(check()).singleElement().satisfies(problem -> {
            assertThat(problem.what()).isEqualTo(What.DAMAGED);
            assertThat(problem.soundSince()).contains(SAVED);
        });
        FarmCheck.recover(store, user, file);
        assertThat(store.read(file)).isEqualTo(farm("a"));
    }

    @Test
    void withoutASoundGenerationNothingIsOffered() throws Exception {
        Files.writeString(file, "");
        Files.writeString(Generations.of(file, 1), "{");
        Files.delete(Generations.of(file, 2));
        assertThat(check())
                .singleElement()
                .satisfies(problem -> assertThat(problem.soundSince()).isEmpty());
    }

    @Test
    void aFileThatIsGoneIsMissing() throws Exception {
        Files.delete(file);
        assertThat(check()).containsExactly(new FarmProblem(What.MISSING, file, "", Optional.of(SAVED_LATER)));
        FarmCheck.recover(store, user, file);
        assertThat(store.read(file)).isEqualTo(farm("ab"));
    }

    @Test
    void aFileOfANewerProgramIsNamed() throws Exception {
        Files.writeString(file, "{\"evenfall\": 2}");
        assertThat(check()).containsExactly(new FarmProblem(What.NEWER, file, "", Optional.empty()));
    }

    @Test
    void aDamagedMachineComesBackToo() throws Exception {
        FarmShelf shelf = new FarmShelf(store, user);
        Setup machine = farm("a").withMachine(Setup.EMPTY.machine().withName("broadcaster"));
        shelf.keep(machine);
        shelf.keep(machine.withMachine(machine.machine().withDiscDiameter(EnteredQuantity.parse("80 cm"))));
        Path kept = user.machines().resolve("machine-broadcaster.json");
        Files.writeString(kept, "x");
        assertThat(check())
                .singleElement()
                .satisfies(problem -> assertThat(problem.file()).isEqualTo(kept));
        FarmCheck.recover(store, user, kept);
        assertThat(store.read(kept).machine()).isEqualTo(machine.machine());
    }

    @Test
    void aCardIsCheckedAgainstTheRegister() throws Exception {
        IssuedCards cards = new IssuedCards(user);
        Path card = Files.createDirectories(user.cards()).resolve("card.pdf");
        Files.writeString(card, "one");
        cards.add(card, file, farm("a"), "AAAA", SAVED);
        assertThat(check()).isEmpty();
        Files.writeString(card, "two");
        assertThat(check()).containsExactly(new FarmProblem(What.CHANGED, card, "", Optional.empty()));
        Files.delete(card);
        assertThat(check()).containsExactly(new FarmProblem(What.MISSING, card, "", Optional.empty()));
        Files.writeString(cards.file(), "{}");
        assertThat(check())
                .singleElement()
                .satisfies(problem -> assertThat(problem.file()).isEqualTo(cards.file()));
    }

    @Test
    void theRegisterOfCardsComesBack() throws Exception {
        IssuedCards cards = new IssuedCards(user);
        Path card = Files.createDirectories(user.cards()).resolve("card.pdf");
        Files.write(card, "one".getBytes(StandardCharsets.US_ASCII));
        cards.add(card, file, farm("a"), "AAAA", SAVED);
        cards.add(card, file, farm("a"), "AAAA", SAVED_LATER);
        Files.writeString(cards.file(), "damaged");
        FarmCheck.recover(store, user, cards.file());
        assertThat(cards.all()).hasSize(1);
    }
}
