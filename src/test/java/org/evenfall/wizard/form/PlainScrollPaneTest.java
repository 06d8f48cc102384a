package org.evenfall.wizard.form;

import static org.assertj.core.api.Assertions.assertThat;

import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.stage.Stage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;

@ExtendWith(ApplicationExtension.class)
class PlainScrollPaneTest {

    @Start
    void start(Stage stage) {
        // only its toolkit is needed
    }

    @Test
    void nothingOfItIsKeptAsAnImage(FxRobot robot) {
        robot.interact(() -> {
            PlainScrollPane pane = new PlainScrollPane(new Label("scrolled"));
            styled(pane);
            assertThat(pane.lookupAll("*")).hasSizeGreaterThan(3).noneMatch(Node::isCache);
        });
    }

    /** Else there would be no need of it any more. */
    @Test
    void theOneOfThePlatformKeepsOne(FxRobot robot) {
        robot.interact(() -> {
            ScrollPane pane = new ScrollPane(new Label("scrolled"));
            styled(pane);
            assertThat(pane.lookupAll("*")).anyMatch(Node::isCache);
        });
    }

    private static void styled(ScrollPane pane) {
        new Scene(pane, 200, 100).getRoot().applyCss();
        pane.layout();
    }
}
