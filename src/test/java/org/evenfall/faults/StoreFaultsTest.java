package org.evenfall.faults;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.Set;
import java.util.function.Function;
import org.evenfall.setup.entry.Setup;
import org.evenfall.setup.entry.UnitSystem;
import org.evenfall.store.FarmCheck;
import org.evenfall.store.FarmShelf;
import org.evenfall.store.IssuedCards;
import org.evenfall.store.Owner;
import org.evenfall.store.Preferences;
import org.evenfall.store.PreferencesFile;
import org.evenfall.store.SetupFile;
import org.evenfall.store.SetupFiles;
import org.evenfall.store.SetupJson;
import org.evenfall.store.SetupStore;
import org.evenfall.store.UserFolder;
import org.evenfall.store.WholeFileWriter;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Each call to the file system fails in each way, in all that the program keeps: no file is lost or half written. */
class StoreFaultsTest {

    private static final Instant NOW = Instant.parse("2027-03-18T09:00:00Z");
    private static final int SEASON = 2027;
    private static final String SETUP = "2027/setup.json";

    private final SetupStore store = new SetupStore(new SetupJson());

    @TempDir
    private Path temp;

    private static Setup farm(String name) {
        return Setup.EMPTY.withStart(Setup.EMPTY.start().withFarm(name).withSeason("2027"));
    }

    private static Setup machine(String name, String discs) {
        return farm("Thornmarsh")
                .withMachine(Setup.EMPTY.machine().withName(name).withHandbook(discs));
    }

    private SetupFiles files(Path folder) {
        return new SetupFiles(store, new UserFolder(folder), () -> new Owner("anna", "yard", NOW));
    }

    /** A setup that was saved before, twice. */
    private void saved(Path folder) throws Exception {
        store.save(farm("first"), folder.resolve(SETUP));
        try (SetupFile file = files(folder).open(folder.resolve(SETUP), SEASON)) {
            file.save(farm("second"));
        }
    }

    private static void damage(Path file) throws IOException {
        Files.writeString(file, FaultTable.DAMAGED);
    }

    private static FaultScenario.Work saving(SetupFile file, Setup setup) {
        return new FaultScenario.Work() {
            @Override
            public void run() throws Exception {
                file.save(setup);
            }

            @Override
            public void close() {
                file.close();
            }
        };
    }

    private void survives(FaultScenario scenario) throws Exception {
        FaultTable table = new FaultTable(temp);
        table.run(scenario);
        System.out.println(scenario.name() + ": " + table.tried() + " faults");
        assertThat(table.problems()).isEmpty();
        assertThat(table.tried()).isGreaterThan(10);
    }

    @Test
    void aNewSetupIsSaved() throws Exception {
        survives(new FaultScenario(
                "new setup",
                folder -> {},
                folder -> saving(files(folder).create(SEASON, "setup", farm("")), farm("typed")),
                Set.of(SETUP)));
    }

    @Test
    void anOpenSetupIsSavedFirst() throws Exception {
        survives(new FaultScenario(
                "first save",
                this::saved,
                folder -> saving(files(folder).open(folder.resolve(SETUP), SEASON), farm("third")),
                Set.of(SETUP)));
    }

    @Test
    void anOpenSetupIsSavedTheThirdTime() throws Exception {
        survives(new FaultScenario(
                "third save",
                this::saved,
                folder -> {
                    SetupFile file = files(folder).open(folder.resolve(SETUP), SEASON);
                    file.save(farm("third"));
                    file.save(farm("fourth"));
                    return saving(file, farm("fifth"));
                },
                Set.of(SETUP)));
    }

    @Test
    void aSetupIsOpenedAndSaved() throws Exception {
        survives(FaultScenario.of(
                "open",
                this::saved,
                folder -> {
                    try (SetupFile file = files(folder).open(folder.resolve(SETUP), SEASON)) {
                        assertThat(file.setup()).isEqualTo(farm("second"));
                        if (!file.writable()) {
                            throw new IOException("it can only be read");
                        }
                    }
                },
                SETUP));
    }

    @Test
    void aSetupIsTakenIn() throws Exception {
        survives(FaultScenario.of(
                "taken in",
                folder -> store.save(farm("theirs"), folder.resolve("stick").resolve("setup.json")),
                folder -> files(folder)
                        .open(folder.resolve("stick").resolve("setup.json"), SEASON)
                        .close(),
                SETUP,
                "taken-in.json"));
    }

    @Test
    void aMachineIsKept() throws Exception {
        survives(FaultScenario.of(
                "machine",
                folder -> {
                    FarmShelf shelf = new FarmShelf(store, new UserFolder(folder));
                    shelf.keep(machine("Old one", "x"));
                    shelf.keep(machine("Wide one", "x"));
                    shelf.keep(machine("Wide one", "y"));
                },
                folder -> new FarmShelf(store, new UserFolder(folder)).keep(machine("Wide one", "z")),
                "machines/machine-wide-one.json"));
    }

    private static void issue(Path folder, String name) throws IOException {
        Path card = Files.createDirectories(folder.resolve("cards")).resolve(name);
        if (!Files.exists(card)) {
            Files.writeString(card, name);
        }
        new IssuedCards(new UserFolder(folder)).add(card, folder.resolve(SETUP), farm("Thornmarsh"), "AAAA BBBB", NOW);
    }

    @Test
    void aCardIsAddedToTheRegister() throws Exception {
        survives(FaultScenario.of(
                "issued card",
                folder -> {
                    issue(folder, "one.pdf");
                    issue(folder, "two.pdf");
                    Files.writeString(folder.resolve("cards/three.pdf"), "three.pdf");
                },
                folder -> new IssuedCards(new UserFolder(folder))
                        .add(
                                folder.resolve("cards/three.pdf"),
                                folder.resolve(SETUP),
                                farm("Thornmarsh"),
                                "AAAA BBBB",
                                NOW),
                "cards/issued.json"));
    }

    @Test
    void aCardIsAddedToADamagedRegister() throws Exception {
        survives(FaultScenario.of(
                "damaged register",
                folder -> {
                    issue(folder, "one.pdf");
                    issue(folder, "two.pdf");
                    Files.writeString(folder.resolve("cards/three.pdf"), "three.pdf");
                    damage(folder.resolve("cards/issued.json"));
                },
                folder -> new IssuedCards(new UserFolder(folder))
                        .add(
                                folder.resolve("cards/three.pdf"),
                                folder.resolve(SETUP),
                                farm("Thornmarsh"),
                                "AAAA BBBB",
                                NOW),
                "cards/issued.json"));
    }

    @Test
    void aDamagedSetupIsRecovered() throws Exception {
        survives(FaultScenario.of(
                "recovery",
                folder -> {
                    saved(folder);
                    damage(folder.resolve(SETUP));
                },
                folder -> FarmCheck.recover(store, new UserFolder(folder), folder.resolve(SETUP)),
                SETUP));
    }

    private static FaultScenario writing(String name, Function<Path, Path> file, FaultScenario.Prepare prepare) {
        byte[] pdf = "%PDF-1.7 signed".repeat(999).getBytes(StandardCharsets.US_ASCII);
        return FaultScenario.of(
                name, prepare, folder -> WholeFileWriter.write(file.apply(folder), pdf), "cards/card.pdf");
    }

    @Test
    void aCardIsWritten() throws Exception {
        survives(writing("new card", folder -> folder.resolve("cards/card.pdf"), folder -> {}));
        survives(writing(
                "card again",
                folder -> folder.resolve("cards/card.pdf"),
                folder -> WholeFileWriter.write(folder.resolve("cards/card.pdf"), new byte[] {1})));
    }

    @Test
    void thePreferencesAreKept() throws Exception {
        survives(FaultScenario.of(
                "preferences",
                folder -> new PreferencesFile(new UserFolder(folder)).keep(Preferences.FIRST),
                folder -> {
                    if (!new PreferencesFile(new UserFolder(folder)).keep(dark())) {
                        throw new IOException("not kept");
                    }
                },
                "preferences.json"));
    }

    private static Preferences dark() {
        return Preferences.FIRST.withUnits(UnitSystem.values()[1]);
    }

    /** What cannot be read counts for nothing, however it fails. */
    @Test
    void thePreferencesAreRead() throws Exception {
        survives(new FaultScenario(
                "preferences read",
                folder -> new PreferencesFile(new UserFolder(folder)).keep(dark()),
                folder -> () -> {
                    if (!new PreferencesFile(new UserFolder(folder)).read().equals(dark())) {
                        throw new IOException("not read");
                    }
                },
                Set.of("preferences.json")));
    }

    /** Lists of files are shorter on a broken disk, and nothing is thrown. */
    @Test
    void theFarmIsListedAndChecked() throws Exception {
        survives(FaultScenario.of(
                "lists",
                folder -> {
                    saved(folder);
                    issue(folder, "one.pdf");
                },
                folder -> {
                    UserFolder user = new UserFolder(folder);
                    user.recent();
                    FarmCheck.of(store, user);
                    files(folder).removeLeftovers(SEASON);
                },
                SETUP));
    }

    /** A test that cannot fail is worth nothing: work that writes in place is found. */
    @Test
    void writingInPlaceIsFound() throws Exception {
        FaultTable table = new FaultTable(temp);
        table.run(FaultScenario.of(
                "in place",
                folder -> Files.writeString(folder.resolve("a.txt"), "before"),
                folder -> Files.writeString(folder.resolve("a.txt"), "afterwards"),
                "a.txt"));
        assertThat(table.problems()).anyMatch(line -> line.contains("HALF_WRITTEN") && line.contains("neither"));
        assertThat(table.problems()).anyMatch(line -> line.contains("FULL_FROM_NOW"));
    }
}
