package org.evenfall.wizard;

import static org.assertj.core.api.Assertions.assertThat;
import static org.evenfall.OrdinaryUser.mode;

import java.nio.file.Path;
import java.util.Optional;
import javafx.scene.control.Labeled;
import javafx.stage.Stage;
import org.evenfall.OrdinaryUser;
import org.evenfall.setup.entry.Setup;
import org.evenfall.store.SetupJson;
import org.evenfall.store.SetupStore;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.util.WaitForAsyncUtils;

/** Farm and settings in a folder that this user may not write: the window opens, says so, and keeps what is typed. */
@Tag("ordinary")
@ExtendWith(ApplicationExtension.class)
class FolderNotWritableTest {

    @TempDir
    private Path folder;

    @Test
    void theWindowOpensAndKeepsWhatIsTyped() throws Exception {
        OrdinaryUser.required(folder);
        mode(folder, "r-xr-xr-x");
        WizardWindow window = WaitForAsyncUtils.asyncFx(() -> {
                    WizardWindow opened =
                            SharedWindow.whole(new WizardWindow(Stage0.context(folder), Optional.empty()));
                    opened.show(new Stage());
                    Setup setup = opened.model().setup();
                    opened.model().open(setup.withStart(setup.start().withFarm("Thornmarsh")));
                    return opened;
                })
                .get();
        try {
            assertThat(window.saver().save()).isFalse();
            WaitForAsyncUtils.waitForFxEvents();
            assertThat(Nodes.find(
                            window.shell(),
                            node -> node instanceof Labeled text
                                    && String.valueOf(text.getText()).startsWith("Not saved: ")
                                    && text.getText().contains("no permission to write here")))
                    .isPresent();
        } finally {
            mode(folder, "rwx------");
        }
        assertThat(window.saver().save()).isTrue();
        assertThat(new SetupStore(new SetupJson())
                        .read(window.saver().file())
                        .start()
                        .farm())
                .isEqualTo("Thornmarsh");
        WaitForAsyncUtils.asyncFx(window::close).get();
    }
}
