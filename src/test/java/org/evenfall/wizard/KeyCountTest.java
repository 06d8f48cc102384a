package org.evenfall.wizard;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.nio.file.Files;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import javafx.scene.Node;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.stage.Stage;
import org.evenfall.store.SetupJson;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;
import org.testfx.util.WaitForAsyncUtils;

/**
 * The whole job from a paper record, from an empty Home to a signed card: every value arrives in its entry, with few keys in
 * addition; the first tray test is uneven, the second has the move advised, and the bucket is caught once more.
 */
@ExtendWith(ApplicationExtension.class)
class KeyCountTest {

    /** The guide allows 130. */
    private static final int MOST = 12;

    private final List<String> special = new ArrayList<>();
    private WizardWindow window;

    @Start
    void start(Stage stage) throws Exception {
        window = SharedWindow.whole(
                new WizardWindow(Stage0.context(Files.createTempDirectory("evenfall-keys")), Optional.empty()));
        stage.setWidth(1366);
        stage.setHeight(768);
        window.show(stage);
        window.scene().addEventFilter(KeyEvent.KEY_PRESSED, this::count);
    }

    /** Tab, arrow and function keys, and what is pressed together with Alt or Ctrl. */
    private void count(KeyEvent event) {
        KeyCode code = event.getCode();
        boolean counts = code == KeyCode.TAB || code.isArrowKey() || code.isFunctionKey();
        boolean together = (event.isAltDown() || event.isControlDown()) && !code.isModifierKey();
        if (counts || together) {
            special.add((event.isAltDown() ? "Alt+" : "") + (event.isControlDown() ? "Ctrl+" : "") + code);
        }
    }

    @Test
    void theWholeJobTakesFewKeys(FxRobot robot) throws Exception {
        List<String> wrong = new ArrayList<>();
        for (PaperRecord.Line line : PaperRecord.lines()) {
            if (line instanceof PaperRecord.At at) {
                assertThat(window.shell().prompt()).isEqualTo(at.prompt());
            } else if (line instanceof PaperRecord.Key key) {
                press(robot, key.name());
            } else if (line instanceof PaperRecord.Entry entry) {
                enter(robot, entry);
            }
        }
        JsonNode saved = new SetupJson()
                .mapper()
                .readTree(new SetupJson().write(window.model().setup()));
        for (PaperRecord.Line line : PaperRecord.lines()) {
            if (line instanceof PaperRecord.Entry entry && !entry.value().isEmpty()) {
                String there = saved.at(entry.pointer()).asText();
                if (!there.equals(entry.value()) && !there.startsWith(entry.value() + " ")) {
                    wrong.add(entry + ": " + there);
                }
            }
        }
        assertThat(wrong).isEmpty();
        System.out.println("The whole job: " + special.size() + " Tab, arrow, function and Alt keys: " + special);
        assertThat(special).hasSizeLessThanOrEqualTo(MOST);
        WaitForAsyncUtils.waitFor(
                60,
                TimeUnit.SECONDS,
                () -> new Typing(robot).words().stream().anyMatch(word -> word.startsWith("Signed ")));
    }

    private void enter(FxRobot robot, PaperRecord.Entry entry) {
        Node owner = window.scene().getFocusOwner();
        assertThat(String.valueOf(owner.getId())).as("where the keyboard is").startsWith(entry.pointer());
        if (entry.key().isBlank() && !entry.key().isEmpty()) {
            robot.type(KeyCode.SPACE);
        } else {
            robot.write(entry.key().isEmpty() ? entry.value() : entry.key(), 0);
        }
        robot.type(KeyCode.ENTER);
        WaitForAsyncUtils.waitForFxEvents();
    }

    private static KeyCode key(String name) {
        String constant = name.equals("Return") ? "ENTER" : name.toUpperCase(Locale.ROOT);
        return KeyCode.valueOf(name.matches("\\d") ? "DIGIT" + name : constant);
    }

    /** A key by the name that xdotool has for it. */
    private static void press(FxRobot robot, String name) {
        List<KeyCode> keys = new ArrayList<>();
        for (String part : name.split("\\+")) {
            keys.add(key(part));
        }
        robot.press(keys.toArray(new KeyCode[0]));
        robot.release(keys.toArray(new KeyCode[0]));
        WaitForAsyncUtils.waitForFxEvents();
    }
}
