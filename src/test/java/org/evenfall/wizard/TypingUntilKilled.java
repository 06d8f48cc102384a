package org.evenfall.wizard;

import java.nio.file.Path;
import java.time.Instant;
import java.util.Locale;
import java.util.Random;
import java.util.ResourceBundle;
import org.evenfall.finding.Sentences;
import org.evenfall.setup.Assessor;
import org.evenfall.setup.ConditionDraft;
import org.evenfall.setup.entry.Setup;
import org.evenfall.setup.path.EntryPath;
import org.evenfall.setup.path.StartPaths;
import org.evenfall.store.Owner;
import org.evenfall.store.SetupFile;
import org.evenfall.store.SetupFiles;
import org.evenfall.store.SetupJson;
import org.evenfall.store.SetupStore;
import org.evenfall.store.UserFolder;
import org.evenfall.wizard.form.SetupModel;

/**
 * Types into the model of the window, with its saver, until the process is ended: one key each 40 to 220 ms. After each key
 * it prints the time and how many letters are typed.
 */
final class TypingUntilKilled {

    private static final int LEAST_MILLIS = 40;
    private static final int MOST_MILLIS = 220;

    private TypingUntilKilled() {}

    /** Arguments: folder of the farm, seed. */
    public static void main(String[] args) throws Exception {
        UserFolder user = new UserFolder(Path.of(args[0]));
        Random random = new Random(Long.parseLong(args[1]));
        SetupFiles files = new SetupFiles(
                new SetupStore(new SetupJson()), user, () -> new Owner("typist", "bench", Instant.now()));
        SetupFile file = files.create(2027, "setup", Setup.EMPTY);
        AutoSaver saver = new AutoSaver(file, Setup.EMPTY, SetupDocument::isNew, new Silent(), AutoSaver.Delays.USUAL);
        saver.saveAtExit();
        SetupModel model = new SetupModel(
                Setup.EMPTY,
                Assessor::assess,
                saver::keep,
                (next, before, assessment) -> ConditionDraft.begun(
                        next, before, assessment, (value, decimals) -> String.format(Locale.ROOT, "%.2f", value)));
        Sentences words = new Sentences(ResourceBundle.getBundle("org.evenfall.words", Locale.ENGLISH), Locale.UK);
        FarmMachines machines = new FarmMachines(
                new org.evenfall.store.FarmShelf(new SetupStore(new SetupJson()), user),
                words,
                sentence -> {},
                saver::later);
        machines.attach(model);
        EntryPath<String> farm = StartPaths.FARM.path();
        StringBuilder typed = new StringBuilder();
        System.out.println("ready");
        while (true) {
            typed.append((char) ('a' + typed.length() % 26));
            model.set(farm, typed.toString());
            System.out.println(System.currentTimeMillis() + " " + typed.length());
            if (typed.length() % 10 == 0) {
                model.change(setup -> setup.withMachine(setup.machine().withName("machine " + typed.length() % 3)));
                machines.keep();
            }
            Thread.sleep(LEAST_MILLIS + random.nextInt(MOST_MILLIS - LEAST_MILLIS + 1));
        }
    }

    private static final class Silent implements AutoSaver.Listener {

        @Override
        public void failed(Exception problem) {
            System.out.println("failed: " + problem);
        }

        @Override
        public void changedElsewhere(Path theirs, Path ours) {
            System.out.println("failed: changed elsewhere");
        }
    }
}
