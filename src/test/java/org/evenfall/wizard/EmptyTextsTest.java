package org.evenfall.wizard;

import static org.assertj.core.api.Assertions.assertThat;

import java.lang.reflect.Field;
import java.lang.reflect.Method;
import java.nio.file.Files;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.canvas.Canvas;
import javafx.scene.control.Control;
import javafx.scene.control.Labeled;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.TextInputControl;
import javafx.scene.text.Text;
import javafx.stage.Stage;
import org.evenfall.finding.Step;
import org.evenfall.wizard.layout.RawKeys;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;
import org.testfx.util.WaitForAsyncUtils;

/** Every step of an empty setup: no text, drawn or written, is the key of a sentence that is missing or not looked up. */
@ExtendWith(ApplicationExtension.class)
class EmptyTextsTest {

    private WizardWindow window;

    @Start
    void start(Stage stage) throws Exception {
        window = SharedWindow.whole(
                new WizardWindow(Stage0.context(Files.createTempDirectory("evenfall-empty")), Optional.empty()));
        stage.setWidth(1280);
        stage.setHeight(860);
        window.show(stage);
    }

    @Test
    void noTextLooksLikeAKey() throws Exception {
        Set<String> texts = new TreeSet<>();
        Set<String> drawn = new TreeSet<>();
        for (Step step : Step.values()) {
            WaitForAsyncUtils.asyncFx(() -> window.shell().go(step.ordinal())).get();
            WaitForAsyncUtils.waitForFxEvents();
            WaitForAsyncUtils.asyncFx(() -> collect(window.scene().getRoot(), texts, drawn))
                    .get();
        }
        assertThat(texts).hasSizeGreaterThan(200).noneMatch(RawKeys::looksLikeAKey);
        assertThat(drawn).contains("tyres").hasSizeGreaterThan(10).noneMatch(RawKeys::looksLikeAKey);
    }

    private static void collect(Node node, Set<String> texts, Set<String> drawn) {
        add(node.getAccessibleText(), texts);
        add(node.getAccessibleHelp(), texts);
        if (node instanceof Labeled labeled) {
            add(labeled.getText(), texts);
        }
        if (node instanceof Text text) {
            add(text.getText(), texts);
        }
        if (node instanceof TextInputControl input) {
            add(input.getPromptText(), texts);
        }
        if (node instanceof Control control && control.getTooltip() != null) {
            add(control.getTooltip().getText(), texts);
        }
        if (node instanceof Canvas canvas) {
            drawn.addAll(drawnOn(canvas));
        }
        if (node instanceof ScrollPane scroll && scroll.getContent() != null) {
            collect(scroll.getContent(), texts, drawn);
        }
        if (node instanceof Parent parent) {
            parent.getChildrenUnmodifiable().forEach(child -> collect(child, texts, drawn));
        }
    }

    private static void add(String text, Set<String> texts) {
        if (text != null && !text.isBlank()) {
            texts.add(text);
        }
    }

    /**
     * The texts of a picture: drawn anew, and read from the drawing commands that wait for the screen. JavaFX has no
     * public way to ask a canvas for its texts.
     */
    private static Set<String> drawnOn(Canvas canvas) {
        Parent picture = canvas.getParent();
        picture.requestLayout();
        picture.layout();
        Set<String> texts = new TreeSet<>();
        try {
            Method waiting = Canvas.class.getDeclaredMethod("getBuffer");
            waiting.setAccessible(true);
            Object commands = waiting.invoke(canvas);
            Field objects = commands.getClass().getDeclaredField("objs");
            objects.setAccessible(true);
            for (Object one : (Object[]) objects.get(commands)) {
                if (one instanceof String text) {
                    add(text, texts);
                }
            }
        } catch (ReflectiveOperationException changed) {
            throw new AssertionError("the inside of Canvas has changed", changed);
        }
        return texts;
    }
}
