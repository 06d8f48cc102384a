package org.evenfall.wizard;

import java.io.IOException;
import java.util.List;
import java.util.function.Consumer;
import org.evenfall.finding.Arg;
import org.evenfall.finding.Sentences;
import org.evenfall.setup.entry.MachineEntries;
import org.evenfall.setup.entry.Setup;
import org.evenfall.store.FarmShelf;
import org.evenfall.wizard.form.SetupModel;
import org.evenfall.wizard.step.start.KnownMachines;
import org.jspecify.annotations.Nullable;

/** The machines of the farm and the products tested on them: kept from the open setup, and taken into it. */
final class FarmMachines implements KnownMachines {

    private final FarmShelf shelf;
    private final Sentences words;
    private final Consumer<String> notices;
    private List<MachineEntries> machines;
    private @Nullable SetupModel model;

    /** The setup as it was opened or kept last. */
    private Setup before = Setup.EMPTY;

    /** @param notices shows a sentence to the person */
    FarmMachines(FarmShelf shelf, Sentences words, Consumer<String> notices) {
        this.shelf = shelf;
        this.words = words;
        this.notices = notices;
        this.machines = shelf.machines();
    }

    /** Connects them with the open setup, once there is one. */
    void attach(SetupModel open) {
        model = open;
        opened(open.setup());
    }

    /** Another setup is open. */
    void opened(Setup setup) {
        before = setup;
    }

    /** As read last. */
    @Override
    public List<MachineEntries> all() {
        return machines;
    }

    @Override
    public boolean isKnown() {
        SetupModel open = model;
        return open != null && machines.contains(open.setup().machine());
    }

    /** With its tested products where none are typed. */
    @Override
    public void choose(MachineEntries machine) {
        SetupModel open = model;
        if (open != null) {
            open.change(setup -> with(setup, machine));
        }
    }

    /** A setup with a machine, and with its tested products where none are typed. */
    Setup with(Setup setup, MachineEntries machine) {
        Setup next = setup.withMachine(machine);
        return next.match().library().isEmpty()
                ? shelf.testedProducts(machine.name())
                        .map(known -> next.withMatch(
                                next.match().withLibrary(known.match().library())))
                        .orElse(next)
                : next;
    }

    /** The tested products of each machine. */
    List<Setup> testedProducts() {
        return shelf.testedProducts();
    }

    /**
     * Keeps the machine of the open setup and its tested products for later setups; says so where that fails. Nothing is
     * kept of a setup that was only looked at, so that an old one does not bring an old machine back.
     */
    void keep() {
        SetupModel open = model;
        if (open == null || !isNews(open.setup())) {
            return;
        }
        try {
            shelf.keep(open.setup());
            before = open.setup();
            machines = shelf.machines();
        } catch (IOException notWritten) {
            notices.accept(words.text("document.notSaved", Arg.text(String.valueOf(notWritten.getMessage()))));
        }
    }

    private boolean isNews(Setup setup) {
        String name = setup.machine().name().strip();
        return !setup.machine().equals(before.machine())
                || !setup.match().library().equals(before.match().library())
                || machines.stream().noneMatch(machine -> machine.name().strip().equals(name));
    }
}
