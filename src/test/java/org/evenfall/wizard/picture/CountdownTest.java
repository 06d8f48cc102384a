package org.evenfall.wizard.picture;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Locale;
import java.util.ResourceBundle;
import javafx.scene.Scene;
import javafx.scene.control.Button;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import javafx.scene.layout.VBox;
import javafx.stage.Stage;
import org.evenfall.finding.Sentences;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;
import org.testfx.util.WaitForAsyncUtils;

/** The countdown by a clock that is set by hand, while the keyboard is in a field. */
@ExtendWith(ApplicationExtension.class)
class CountdownTest {

    private static final Sentences WORDS =
            new Sentences(ResourceBundle.getBundle("org.evenfall.words", Locale.ENGLISH), Locale.UK);

    private long nanos;
    private Countdown countdown;
    private TextField field;

    @Start
    void start(Stage stage) {
        countdown = new Countdown(WORDS, () -> nanos);
        countdown.set(20.0, "");
        field = new TextField();
        stage.setScene(new Scene(new VBox(field, countdown), 500, 400));
        stage.show();
    }

    private String at(FxRobot robot, double seconds) {
        robot.interact(() -> {
            nanos = Math.round(seconds * 1e9);
            countdown.refresh();
        });
        return countdown.face().getAccessibleText().replace('\u00a0', ' ');
    }

    private void key(FxRobot robot) {
        robot.press(KeyCode.CONTROL).type(KeyCode.T).release(KeyCode.CONTROL);
        WaitForAsyncUtils.waitForFxEvents();
    }

    @Test
    void itCountsDownSaysCloseNowAndGivesTheTimeItWasOpen(FxRobot robot) {
        robot.interact(field::requestFocus);
        assertThat(at(robot, 5)).isEqualTo("20 Seconds to catch.");
        key(robot);
        assertThat(at(robot, 5)).isEqualTo("20 Open.");
        assertThat(at(robot, 6.5)).isEqualTo("19 Open.");
        assertThat(at(robot, 24.9)).isEqualTo("1 Open.");
        assertThat(at(robot, 25)).isEqualTo("0 Close now.");
        assertThat(at(robot, 25.4)).isEqualTo("0 Close now.");
        key(robot);
        assertThat(at(robot, 90)).isEqualTo("20.4 Stopped after 20.4 s.");
        assertThat(field.isFocused()).isTrue();
    }

    @Test
    void forAKnownWeightItCountsUp(FxRobot robot) {
        robot.interact(() -> countdown.set(null, "Timing by hand is off."));
        assertThat(at(robot, 1)).isEqualTo("0 Seconds, counted up. Timing by hand is off.");
        key(robot);
        assertThat(at(robot, 63.3)).startsWith("62.3 Running through.");
        key(robot);
        assertThat(at(robot, 70)).startsWith("62.3 Through in 62.3 s.");
        // once more from the start
        key(robot);
        assertThat(at(robot, 71)).startsWith("1.0 Running through.");
    }

    @Test
    void itsButtonDoesTheSameAndTakesNoKeyboard(FxRobot robot) {
        robot.interact(field::requestFocus);
        Button button = robot.lookup("#countdown").queryButton();
        assertThat(button.getText()).isEqualTo("Start (Ctrl+T)");
        robot.clickOn(button);
        WaitForAsyncUtils.waitForFxEvents();
        assertThat(button.getText()).isEqualTo("Stop (Ctrl+T)");
        assertThat(field.isFocused()).isTrue();
    }

    /** On a page that is not in front the key belongs to somebody else. */
    @Test
    void hiddenItDoesNotStart(FxRobot robot) {
        robot.interact(() -> countdown.setVisible(false));
        key(robot);
        assertThat(at(robot, 3)).isEqualTo("20 Seconds to catch.");
    }
}
