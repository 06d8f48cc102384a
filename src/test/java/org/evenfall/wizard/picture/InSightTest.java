package org.evenfall.wizard.picture;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.image.BufferedImage;
import java.util.List;
import java.util.Locale;
import java.util.ResourceBundle;
import java.util.concurrent.atomic.AtomicInteger;
import javafx.scene.Scene;
import javafx.scene.canvas.Canvas;
import javafx.scene.layout.StackPane;
import javafx.stage.Stage;
import org.evenfall.finding.Sentences;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;

@ExtendWith(ApplicationExtension.class)
final class InSightTest {

    private static final Sentences WORDS =
            new Sentences(ResourceBundle.getBundle("org.evenfall.words", Locale.ENGLISH), Locale.UK);

    private Picture picture;
    private StackPane pane;

    @Start
    void start(Stage stage) {
        picture = new GranulesPicture(WORDS);
        pane = new StackPane(picture);
        stage.setScene(new Scene(pane, 420, 310));
        stage.show();
    }

    @Test
    void outOfSightThereIsNoDrawing(FxRobot robot) {
        robot.interact(() -> {
            pane.layout();
            assertThat(((Canvas) picture.getChildrenUnmodifiable().get(0)).getWidth())
                    .isEqualTo(420);
            InSight.of(pane, false);
            picture.redraw("changed meanwhile");
            pane.layout();
            assertThat(picture.getChildrenUnmodifiable()).isEmpty();
        });
    }

    @Test
    void backInSightItIsDrawnAtTheSizeOfThen(FxRobot robot) {
        robot.interact(() -> {
            InSight.of(pane, false);
            pane.resize(360, 250);
            pane.layout();
            InSight.of(pane, true);
            pane.layout();
            Canvas drawn = (Canvas) picture.getChildrenUnmodifiable().get(0);
            assertThat(drawn.getWidth()).isEqualTo(360);
            assertThat(drawn.getHeight()).isEqualTo(250);
        });
    }

    @Test
    void theCardIsDrawnEachTimeItComesInSight(FxRobot robot) {
        AtomicInteger drawn = new AtomicInteger();
        robot.interact(() -> {
            CardPreview preview = new CardPreview(WORDS, drawn::incrementAndGet);
            assertThat(preview.isInSight()).isFalse();
            InSight.of(preview, true);
            InSight.of(preview, true);
            assertThat(drawn).hasValue(1);
            preview.show(List.of(new BufferedImage(10, 20, BufferedImage.TYPE_INT_RGB)));
            assertThat(preview.getChildrenUnmodifiable()).hasSize(1);
            InSight.of(preview, false);
            assertThat(preview.getChildrenUnmodifiable()).isEmpty();
            InSight.of(preview, true);
            assertThat(drawn).hasValue(2);
        });
    }
}
