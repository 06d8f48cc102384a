package org.evenfall.wizard;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.util.Optional;
import javafx.event.Event;
import javafx.event.EventType;
import javafx.scene.Node;
import javafx.scene.control.ToggleButton;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.stage.Stage;
import org.evenfall.quantity.EnteredQuantity;
import org.evenfall.setup.entry.TrayTestEntry;
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

    /** The fields that a choice brings are made with it. */
    @Test
    void fieldsThatAChoiceBringsTakeKeysAtOnce() throws Exception {
        WaitForAsyncUtils.asyncFx(() -> {
                    window.model()
                            .open(SharedWindow.cautionsRead(
                                    window, window.model().setup()));
                    window.shell().show("6a");
                    ToggleButton mass = (ToggleButton) window.scene().lookup("#/trays/catchKind/MASS");
                    mass.fire();
                    mass.requestFocus();
                    type("\n7\n52\n51");
                })
                .get();
        assertThat(window.model().setup().trays().trayCount().text()).isEqualTo("7");
        assertThat(window.model().setup().trays().trayLength().text()).isEqualTo("52");
        assertThat(window.model().setup().trays().trayWidth().text()).isEqualTo("51");
    }

    /** The button that begins the first test gives way to its fields. */
    @Test
    void fieldsThatTheMainButtonBringsTakeKeysAtOnce() throws Exception {
        WaitForAsyncUtils.asyncFx(() -> {
                    window.model()
                            .open(SharedWindow.cautionsRead(
                                    window, window.model().setup()));
                    window.shell().show("6b");
                    type("\n540\n27\n28");
                })
                .get();
        TrayTestEntry test = window.model().setup().trays().tests().get(0);
        assertThat(test.settings().ptoSpeed().text()).isEqualTo("540");
        assertThat(test.openingLeft().text()).isEqualTo("27");
        assertThat(test.openingRight().text()).isEqualTo("28");
    }

    /** A machine that is busy all the time: no frame comes between any two keys of the whole job, up to the card. */
    @Test
    void noKeyOfTheWholeJobNeedsAFrame() throws Exception {
        WaitForAsyncUtils.asyncFx(() -> {
                    for (PaperRecord.Line line : PaperRecord.lines()) {
                        if (line instanceof PaperRecord.At at) {
                            assertThat(window.shell().prompt()).isEqualTo(at.prompt());
                            if (at.prompt().equals("7c")) {
                                // not a passphrase before it is known whether there is a key
                                assertThat(String.valueOf(window.scene().getFocusOwner()))
                                        .contains("primary");
                                break;
                            }
                        } else if (line instanceof PaperRecord.Entry entry) {
                            assertThat(String.valueOf(window.scene().getFocusOwner()))
                                    .as("where the keys go")
                                    .contains("id=" + entry.pointer());
                            type((entry.key().isEmpty() ? entry.value() : entry.key()) + "\n");
                        } else if (line instanceof PaperRecord.Key key) {
                            switch (key.name()) {
                                case "space" -> type(" ");
                                case "alt+Right" -> fire(KeyEvent.KEY_PRESSED, "", KeyCode.RIGHT, true);
                                default -> type("\n");
                            }
                        }
                    }
                    return null;
                })
                .get();
    }

    /** All in one turn of the window's thread, so that no frame comes between. */
    private void type(String keys) {
        for (String key : keys.split("")) {
            KeyCode code = switch (key) {
                case "\n" -> KeyCode.ENTER;
                case " " -> KeyCode.SPACE;
                default -> key.matches("\\d") ? KeyCode.valueOf("DIGIT" + key) : KeyCode.UNDEFINED;
            };
            fire(KeyEvent.KEY_PRESSED, "", code);
            if (code != KeyCode.ENTER) {
                fire(KeyEvent.KEY_TYPED, key, KeyCode.UNDEFINED);
            }
            fire(KeyEvent.KEY_RELEASED, "", code);
        }
    }

    private void fire(EventType<KeyEvent> kind, String letter, KeyCode code) {
        fire(kind, letter, code, false);
    }

    /** To where the keys go, if anywhere. */
    private void fire(EventType<KeyEvent> kind, String letter, KeyCode code, boolean alt) {
        Node owner = window.scene().getFocusOwner();
        Event.fireEvent(
                owner == null ? window.scene() : owner, new KeyEvent(kind, letter, "", code, false, false, alt, false));
    }
}
