package org.evenfall.wizard;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.Locale;
import java.util.ResourceBundle;
import org.evenfall.finding.Sentences;
import org.evenfall.setup.Assessor;
import org.evenfall.setup.entry.MachineEntries;
import org.evenfall.setup.entry.Setup;
import org.evenfall.store.FarmShelf;
import org.evenfall.store.SetupJson;
import org.evenfall.store.SetupStore;
import org.evenfall.store.UserFolder;
import org.evenfall.wizard.form.SetupModel;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class FarmMachinesTest {

    private static final Setup OLD =
            Setup.EMPTY.withMachine(MachineEntries.EMPTY.withName("east barn").withHandbook("old"));

    @TempDir
    Path folder;

    private FarmShelf shelf() {
        return new FarmShelf(new SetupStore(new SetupJson()), new UserFolder(folder));
    }

    private FarmMachines machines(SetupModel model) {
        Sentences words = new Sentences(ResourceBundle.getBundle("org.evenfall.words", Locale.ENGLISH), Locale.UK);
        FarmMachines machines = new FarmMachines(shelf(), words, sentence -> {}, Runnable::run);
        machines.attach(model);
        return machines;
    }

    @Test
    void anOldSetupThatIsOnlyLookedAtBringsNoOldMachineBack() throws Exception {
        MachineEntries now = OLD.machine().withHandbook("new");
        shelf().keep(OLD.withMachine(now));
        SetupModel model = new SetupModel(OLD, Assessor::assess, setup -> {});
        FarmMachines machines = machines(model);
        machines.keep();
        assertThat(shelf().machines()).containsExactly(now);
        model.change(setup -> setup.withMachine(setup.machine().withHandbook("page 9")));
        machines.keep();
        assertThat(shelf().machines()).extracting(MachineEntries::handbook).containsExactly("page 9");
        machines.opened(OLD);
        model.open(OLD);
        machines.keep();
        assertThat(shelf().machines()).extracting(MachineEntries::handbook).containsExactly("page 9");
    }

    @Test
    void aMachineThatTheFarmDoesNotHaveIsKeptAsItIs() {
        machines(new SetupModel(OLD, Assessor::assess, setup -> {})).keep();
        assertThat(shelf().machines()).containsExactly(OLD.machine());
    }
}
