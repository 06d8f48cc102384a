package org.evenfall.wizard.step.match;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Locale;
import java.util.ResourceBundle;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.control.Label;
import javafx.scene.control.ProgressBar;
import javafx.scene.layout.Pane;
import javafx.stage.Stage;
import org.evenfall.finding.Sentences;
import org.evenfall.setup.Assessor;
import org.evenfall.setup.entry.Setup;
import org.evenfall.wizard.form.Form;
import org.evenfall.wizard.form.SetupModel;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;
import org.testfx.util.WaitForAsyncUtils;

/** The simulation's progress, its end, its failure, and how it is stopped. */
@ExtendWith(ApplicationExtension.class)
class MatchSimulationViewTest {

    private final Pane root = new Pane();
    private final CountDownLatch changed = new CountDownLatch(1);
    private Form form;

    @Start
    void start(Stage stage) {
        Sentences words = new Sentences(ResourceBundle.getBundle("org.evenfall.words", Locale.ENGLISH), Locale.UK);
        form = new Form(new SetupModel(Setup.EMPTY, Assessor::assess, setup -> {}), words);
        stage.setScene(new Scene(root, 400, 100));
        stage.show();
    }

    private void begin(FxRobot robot, MatchSimulation.Computation computation) {
        robot.interact(() -> {
            root.getChildren().setAll(new MatchSimulationView(form, computation, changed::countDown).node());
        });
        robot.interact(() -> robot.lookup(node -> "match.closer".equals(node.getId()))
                .queryButton()
                .fire());
    }

    private boolean shows(FxRobot robot, Class<? extends Node> type) {
        return robot.lookup((Node node) -> type.isInstance(node)).tryQuery().isPresent();
    }

    private void waitUntilTheBarIsGone(FxRobot robot) throws TimeoutException {
        WaitForAsyncUtils.waitFor(20, TimeUnit.SECONDS, () -> !shows(robot, ProgressBar.class));
    }

    @Test
    void aFailureIsShownAndItCanBeStartedAgain(FxRobot robot) throws Exception {
        begin(robot, (setup, progress) -> {
            throw new IllegalStateException("no numbers");
        });
        waitUntilTheBarIsGone(robot);
        Label sentence = robot.lookup((Node node) -> node instanceof Label).query();
        assertThat(sentence.getText()).startsWith("The simulation failed: ").contains("no numbers");
        assertThat(robot.lookup(node -> "match.closer".equals(node.getId())).tryQuery())
                .isPresent();
        assertThat(changed.getCount()).as("nothing new to show").isEqualTo(1);
    }

    @Test
    void progressIsShownUntilItEnds(FxRobot robot) throws Exception {
        CountDownLatch half = new CountDownLatch(1);
        CountDownLatch goOn = new CountDownLatch(1);
        begin(robot, (setup, progress) -> {
            progress.shouldContinue(0.5);
            half.countDown();
            await(goOn);
            return null;
        });
        assertThat(half.await(20, TimeUnit.SECONDS)).isTrue();
        ProgressBar bar =
                robot.lookup((Node node) -> node instanceof ProgressBar).query();
        WaitForAsyncUtils.waitFor(20, TimeUnit.SECONDS, () -> bar.getProgress() == 0.5);
        goOn.countDown();
        assertThat(changed.await(20, TimeUnit.SECONDS)).isTrue();
        waitUntilTheBarIsGone(robot);
    }

    @Test
    void stopEndsItWithWhatThereIs(FxRobot robot) throws Exception {
        CountDownLatch begun = new CountDownLatch(1);
        CountDownLatch stopped = new CountDownLatch(1);
        begin(robot, (setup, progress) -> {
            while (progress.shouldContinue(0.1)) {
                begun.countDown();
            }
            stopped.countDown();
            return null;
        });
        assertThat(begun.await(20, TimeUnit.SECONDS)).isTrue();
        robot.interact(() -> robot.lookup(node -> "match.closerStop".equals(node.getId()))
                .queryButton()
                .fire());
        assertThat(stopped.await(20, TimeUnit.SECONDS)).isTrue();
        assertThat(changed.await(20, TimeUnit.SECONDS)).isTrue();
        waitUntilTheBarIsGone(robot);
    }

    private static void await(CountDownLatch latch) {
        try {
            latch.await();
        } catch (InterruptedException stopped) {
            throw new IllegalStateException(stopped);
        }
    }
}
