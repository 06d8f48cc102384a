package org.evenfall.store;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.evenfall.store.FarmProblem.What;

/** Looks at every file of a farm's folder: which are damaged, missing or changed, and what can be put in their place. */
public final class FarmCheck {

    private final SetupStore store;
    private final UserFolder user;
    private final IssuedCards cards;
    private final List<FarmProblem> problems = new ArrayList<>();

    private FarmCheck(SetupStore store, UserFolder user) {
        this.store = store;
        this.user = user;
        this.cards = new IssuedCards(user);
    }

    /** All that is wrong; empty when every file is sound. */
    public static List<FarmProblem> of(SetupStore store, UserFolder user) {
        FarmCheck check = new FarmCheck(store, user);
        List<Path> folders = new ArrayList<>(user.seasons());
        folders.add(user.machines());
        folders.add(user.testedProducts());
        folders.forEach(check::folder);
        check.cards();
        return List.copyOf(check.problems);
    }

    /**
     * Puts the newest sound generation in the place of a damaged or missing file; a damaged one is kept aside.
     *
     * @throws IOException when a file cannot be moved or written
     */
    public static void recover(SetupStore store, UserFolder user, Path file) throws IOException {
        IssuedCards cards = new IssuedCards(user);
        Recovery.recover(file, file.equals(cards.file()) ? cards::isSound : store::isSound);
    }

    private void folder(Path folder) {
        for (Path file : UserFolder.jsonFiles(folder)) {
            try {
                if (store.readAnyVersion(file).newer()) {
                    problems.add(new FarmProblem(What.NEWER, file, "", Optional.empty()));
                }
            } catch (InputFileException damaged) {
                String where = damaged.place().isEmpty() ? "" : damaged.place() + ": ";
                add(What.DAMAGED, file, where + damaged.problem(), store::isSound);
            }
        }
        for (Path gone : Generations.orphans(folder)) {
            add(What.MISSING, gone, "", store::isSound);
        }
    }

    private void cards() {
        try {
            for (IssuedCards.Issued card : cards.all()) {
                if (!Files.exists(card.file())) {
                    problems.add(new FarmProblem(What.MISSING, card.file(), "", Optional.empty()));
                } else if (!TakenIn.digest(Files.readAllBytes(card.file())).equals(card.sha256())) {
                    problems.add(new FarmProblem(What.CHANGED, card.file(), "", Optional.empty()));
                }
            }
        } catch (InputFileException damaged) {
            add(What.DAMAGED, cards.file(), damaged.problem(), cards::isSound);
        } catch (IOException unreadable) {
            problems.add(new FarmProblem(What.DAMAGED, user.cards(), "cannot be read", Optional.empty()));
        }
    }

    private void add(What what, Path file, String detail, Recovery.Sound sound) {
        Optional<Path> generation;
        try {
            generation = Recovery.newest(file, sound);
        } catch (IOException unreadable) {
            generation = Optional.empty();
        }
        problems.add(new FarmProblem(what, file, detail, generation.map(FarmCheck::written)));
    }

    private static Instant written(Path file) {
        try {
            return Files.getLastModifiedTime(file).toInstant();
        } catch (IOException gone) {
            return Instant.EPOCH;
        }
    }
}
