package org.evenfall.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.evenfall.setup.entry.LeverEntry;
import org.evenfall.setup.entry.MachineEntries;
import org.evenfall.setup.entry.Setup;
import org.evenfall.setup.entry.TestedProductEntry;
import org.evenfall.setup.entry.YesNo;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Machines and tested products of a farm. */
class FarmShelfTest {

    @TempDir
    Path folder;

    private UserFolder user;
    private FarmShelf shelf;

    @BeforeEach
    void shelf() {
        user = new UserFolder(folder);
        shelf = new FarmShelf(new SetupStore(new SetupJson()), user);
    }

    private static Setup with(String machine, String... products) {
        Setup setup = Setup.EMPTY.withMachine(
                MachineEntries.EMPTY.withName(machine).withLevers(List.of(LeverEntry.EMPTY.withLabel("long vane"))));
        return setup.withMatch(setup.match()
                .withLibrary(List.of(products).stream()
                        .map(id -> TestedProductEntry.EMPTY.withId(id))
                        .toList()));
    }

    @Test
    void aMachineIsKeptOnceAndFollowsItsChanges() throws Exception {
        shelf.keep(with("A-1", "a"));
        shelf.keep(with("A-1", "a"));
        shelf.keep(with("A-1", "a", "b"));
        Setup changed = with("A-1", "a").withMachine(with("A-1").machine().withHandbook("page 12"));
        shelf.keep(changed);
        assertThat(shelf.machines()).containsExactly(changed.machine());
        assertThat(shelf.testedProducts()).singleElement().satisfies(products -> {
            assertThat(products.machine().name()).isEqualTo("A-1");
            assertThat(products.match().library())
                    .extracting(TestedProductEntry::id)
                    .containsExactly("a");
        });
    }

    @Test
    void twoMachinesWhoseNamesGiveOneFileNameAreTwoFiles() throws Exception {
        shelf.keep(with("A 1"));
        shelf.keep(with("a-1"));
        assertThat(shelf.machines()).extracting(MachineEntries::name).containsExactlyInAnyOrder("A 1", "a-1");
        assertThat(shelf.testedProducts()).isEmpty();
    }

    @Test
    void nothingIsKeptOfAnInventedExampleOrWithoutAName() throws Exception {
        Setup demo = with("A");
        shelf.keep(demo.withGuide(demo.guide().withInvented(YesNo.YES)));
        shelf.keep(with("  "));
        assertThat(user.machines()).doesNotExist();
    }

    @Test
    void aDamagedFileIsLeftOutAndStays() throws Exception {
        Files.createDirectories(user.machines());
        Path damaged = Files.writeString(user.machines().resolve("machine-a.json"), "{\"evenfall\": 1, ");
        shelf.keep(with("A"));
        assertThat(shelf.machines()).extracting(MachineEntries::name).containsExactly("A");
        assertThat(damaged).hasContent("{\"evenfall\": 1, ");
    }
}
