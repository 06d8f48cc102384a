package org.evenfall.store;

import java.io.IOException;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.evenfall.setup.entry.MachineEntries;
import org.evenfall.setup.entry.Setup;

/**
 * The machines of the farm and the products tested on each: entered once, then chosen. Each is a file of its own in the
 * format of a setup, with nothing else in it.
 */
public final class FarmShelf {

    private static final String ENDING = ".json";

    private final SetupStore store;
    private final UserFolder user;

    /** @param user the folder of the farm */
    public FarmShelf(SetupStore store, UserFolder user) {
        this.store = store;
        this.user = user;
    }

    /** The machines by name; files that cannot be read are left out. */
    public List<MachineEntries> machines() {
        return in(user.machines()).stream().map(Setup::machine).toList();
    }

    /** The tested products of each machine; each setup has the machine's name and its library only. */
    public List<Setup> testedProducts() {
        return in(user.testedProducts());
    }

    /**
     * Keeps the machine of a setup and the products tested on it; nothing without a name of the machine, and nothing of an
     * invented example.
     *
     * @throws IOException when a file cannot be written; it is then as it was
     */
    public void keep(Setup setup) throws IOException {
        if (!keeps(setup)) {
            return;
        }
        write(user.machines(), Setup.EMPTY.withMachine(setup.machine()));
        Optional<Setup> products = products(setup);
        if (products.isPresent()) {
            write(user.testedProducts(), products.get());
        }
    }

    /** Whether the machine of a setup is kept: one with a name, of no invented example. */
    public static boolean keeps(Setup setup) {
        return !setup.machine().name().isBlank() && !setup.guide().isInvented();
    }

    /** The products tested on the machine of a setup, as a setup with nothing else; empty where there are none. */
    public static Optional<Setup> products(Setup setup) {
        return setup.match().library().isEmpty()
                ? Optional.empty()
                : Optional.of(Setup.EMPTY
                        .withMachine(
                                MachineEntries.EMPTY.withName(setup.machine().name()))
                        .withMatch(Setup.EMPTY.match().withLibrary(setup.match().library())));
    }

    private void write(Path folder, Setup part) throws IOException {
        Path file = file(folder, part.machine().name().strip());
        byte[] before;
        try {
            before = WholeFileReader.read(file);
        } catch (NoSuchFileException none) {
            store.save(part, file);
            return;
        }
        if (!Arrays.equals(before, store.bytes(part))) {
            Generations.rotate(file, before);
            store.save(part, file);
        }
    }

    /** The file that a machine has, else a free one named after it. */
    private Path file(Path folder, String machine) throws IOException {
        for (Path file : UserFolder.allJsonFiles(folder)) {
            if (store.readIfSound(file)
                    .filter(setup -> setup.machine().name().strip().equals(machine))
                    .isPresent()) {
                return file;
            }
        }
        String stem = machine.toLowerCase(Locale.ROOT).replaceAll("[^\\p{L}\\p{N}]+", "-");
        return FreeNames.in(folder, "machine-" + stem, ENDING);
    }

    private List<Setup> in(Path folder) {
        List<Setup> setups = new ArrayList<>();
        for (Path file : UserFolder.jsonFiles(folder)) {
            read(file).ifPresent(setups::add);
        }
        return List.copyOf(setups);
    }

    private Optional<Setup> read(Path file) {
        try {
            return Optional.of(store.read(file));
        } catch (InputFileException unreadable) {
            return Optional.empty();
        }
    }
}
