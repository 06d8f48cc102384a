package org.evenfall.wizard;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.util.Optional;
import javafx.event.Event;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.stage.Stage;
import org.evenfall.quantity.EnteredQuantity;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;
import org.testfx.util.WaitForAsyncUtils;

/** On a slow machine many keys come before the next frame is drawn: none of them is lost. */
@ExtendWith(ApplicationExtension.class)
class KeysBeforeFrameTest {

    private WizardWindow window;

    @Start
    void start(Stage stage) throws Exception {
        window = SharedWindow.whole(
                new WizardWindow(Stage0.context(Files.createTempDirectory("evenfall-frame")), Optional.empty()));
        stage.setWidth(1366);
        stage.setHeight(768);
        window.show(stage);
    }

    @Test
    void rowsThatAreAddedTakeKeysAtOnce() throws Exception {
        WaitForAsyncUtils.asyncFx(() -> {
                    window.shell().show("4a");
                    type("21\n22\n23");
                })
                .get();
        assertThat(window.model().setup().height().cropHeights())
                .extracting(EnteredQuantity::text)
                .containsExactly("21", "22", "23");
    }

    @Test
    void thePromptThatComesToTheFrontTakesKeysAtOnce() throws Exception {
        WaitForAsyncUtils.asyncFx(() -> {
                    window.shell().show("0c");
                    type("east\nbook\n42");
                })
                .get();
        assertThat(window.model().setup().machine().name()).isEqualTo("east");
        assertThat(window.model().setup().machine().handbook()).isEqualTo("book");
        assertThat(window.model().setup().machine().discDiameter().text()).isEqualTo("42");
    }

    /** All in one turn of the window's thread, so that no frame comes between. */
    private void type(String keys) {
        for (String key : keys.split("")) {
            boolean enter = key.equals("\n");
            fire(KeyEvent.KEY_PRESSED, "", enter ? KeyCode.ENTER : KeyCode.UNDEFINED);
            if (!enter) {
                fire(KeyEvent.KEY_TYPED, key, KeyCode.UNDEFINED);
            }
        }
    }

    private void fire(javafx.event.EventType<KeyEvent> kind, String letter, KeyCode code) {
        Event.fireEvent(
                window.scene().getFocusOwner(), new KeyEvent(kind, letter, "", code, false, false, false, false));
    }
}
