package org.evenfall.wizard;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Executor;
import java.util.function.Consumer;
import java.util.function.Predicate;
import org.evenfall.finding.Arg;
import org.evenfall.finding.Sentences;
import org.evenfall.setup.entry.MachineEntries;
import org.evenfall.setup.entry.Setup;
import org.evenfall.store.FarmShelf;
import org.evenfall.wizard.form.SetupModel;
import org.evenfall.wizard.step.start.KnownMachines;
import org.jspecify.annotations.Nullable;

/**
 * The machines of the farm and the products tested on them: kept from the open setup, and taken into it. Files are read once
 * and written on another thread.
 */
final class FarmMachines implements KnownMachines {

    private final FarmShelf shelf;
    private final Sentences words;
    private final Consumer<String> notices;
    private final Executor writes;
    private final List<MachineEntries> machines;
    private final List<Setup> products;

    /** Whether what was kept last could not be written: it is tried again. */
    private volatile boolean failed;

    private @Nullable SetupModel model;

    /** The setup as it was opened or kept last. */
    private Setup before = Setup.EMPTY;

    /**
     * @param notices shows a sentence to the person, called on any thread
     * @param writes where files are written
     */
    FarmMachines(FarmShelf shelf, Sentences words, Consumer<String> notices, Executor writes) {
        this.shelf = shelf;
        this.words = words;
        this.notices = notices;
        this.writes = writes;
        this.machines = new ArrayList<>(shelf.machines());
        this.products = new ArrayList<>(shelf.testedProducts());
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

    @Override
    public List<MachineEntries> all() {
        return List.copyOf(machines);
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
                ? products.stream()
                        .filter(known -> same(known.machine(), machine))
                        .findFirst()
                        .map(known -> next.withMatch(
                                next.match().withLibrary(known.match().library())))
                        .orElse(next)
                : next;
    }

    /** The tested products of each machine. */
    List<Setup> testedProducts() {
        return List.copyOf(products);
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
        Setup setup = open.setup();
        before = setup;
        failed = false;
        if (FarmShelf.keeps(setup)) {
            put(machines, setup.machine(), machine -> same(machine, setup.machine()));
            FarmShelf.products(setup)
                    .ifPresent(own -> put(products, own, other -> same(other.machine(), own.machine())));
        }
        writes.execute(() -> {
            try {
                shelf.keep(setup);
            } catch (IOException notWritten) {
                failed = true;
                notices.accept(words.text("document.notSaved", Arg.text(String.valueOf(notWritten.getMessage()))));
            }
        });
    }

    private static <T> void put(List<T> list, T item, Predicate<T> replaces) {
        list.removeIf(replaces);
        list.add(item);
    }

    private static boolean same(MachineEntries a, MachineEntries b) {
        return a.name().strip().equals(b.name().strip());
    }

    private boolean isNews(Setup setup) {
        return failed
                || !setup.machine().equals(before.machine())
                || !setup.match().library().equals(before.match().library())
                || machines.stream().noneMatch(machine -> same(machine, setup.machine()));
    }
}
