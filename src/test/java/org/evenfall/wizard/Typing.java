package org.evenfall.wizard;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Set;
import java.util.stream.Collectors;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.ButtonBase;
import javafx.scene.control.Labeled;
import javafx.scene.control.TextInputControl;
import javafx.scene.input.KeyCode;
import org.testfx.api.FxRobot;
import org.testfx.util.WaitForAsyncUtils;

/** A person at the keyboard. */
final class Typing {

    private final FxRobot robot;

    Typing(FxRobot robot) {
        this.robot = robot;
    }

    /** An entry, by the pointer of its place in the file; its prompt is brought to the front. */
    Node node(String id) {
        if (!inFront(id)) {
            Shell shell = robot.lookup(".shell").queryAs(Shell.class);
            // pages of other steps may be taken apart
            robot.interact(() -> shell.pages().forEach(Typing::make));
            Nodes.find(shell, node -> id.equals(node.getId()))
                    .ifPresent(node -> robot.interact(() -> shell.show(node)));
            WaitForAsyncUtils.waitForFxEvents();
            readCautions();
        }
        return robot.lookup((Node node) -> id.equals(node.getId()) && shown(node))
                .query();
    }

    /** Goes on from a page of cautions, where one is in front. */
    void readCautions() {
        robot.lookup((Node node) -> "caution.goOn".equals(node.getId()) && shown(node))
                .tryQuery()
                .ifPresent(node -> robot.interact(() -> ((Button) node).fire()));
        WaitForAsyncUtils.waitForFxEvents();
    }

    private static void make(PromptPage page) {
        page.make();
        page.applyCss();
    }

    /** Pages of the step in front that were not needed yet. */
    private void makeStep() {
        Shell shell = robot.lookup(".shell").queryAs(Shell.class);
        robot.interact(() -> shell.pages().stream()
                .filter(page -> page.step().number() == shell.front())
                .forEach(Typing::make));
        WaitForAsyncUtils.waitForFxEvents();
    }

    /** Whether it is asked in any prompt of the step in front. */
    boolean there(String id) {
        makeStep();
        return robot.lookup((Node node) -> id.equals(node.getId()) && inStep(node))
                .tryQuery()
                .isPresent();
    }

    private boolean inFront(String id) {
        return robot.lookup((Node node) -> id.equals(node.getId()) && shown(node))
                .tryQuery()
                .isPresent();
    }

    /** Shown, or would be if its prompt were the one in front of its step. */
    private boolean inStep(Node node) {
        int front = robot.lookup(".shell").queryAs(Shell.class).front();
        for (Node up = node; up != null; up = up.getParent()) {
            boolean page = up instanceof PromptPage prompt
                    && prompt.step().number() == front
                    && prompt.prompt().asked();
            if (!page && !up.isVisible()) {
                return false;
            }
        }
        return true;
    }

    private static boolean shown(Node node) {
        for (Node up = node; up != null; up = up.getParent()) {
            if (!up.isVisible()) {
                return false;
            }
        }
        return true;
    }

    void type(String id, String text) {
        Node field = node(id);
        robot.interact(field::requestFocus);
        robot.interact(((TextInputControl) field)::selectAll);
        robot.write(text, 0);
        WaitForAsyncUtils.waitForFxEvents();
    }

    /** Types each text and Enter, from one entry on, wherever Enter leads. */
    void typeOn(String id, String... texts) {
        Node at = node(id);
        robot.interact(at::requestFocus);
        for (String text : texts) {
            robot.write(text, 0);
            robot.type(KeyCode.ENTER);
            WaitForAsyncUtils.waitForFxEvents();
        }
    }

    /** Puts the keyboard on a button and presses Space. */
    void press(String id) {
        Node at = node(id);
        robot.interact(at::requestFocus);
        assertThat(at).isInstanceOf(ButtonBase.class);
        robot.type(KeyCode.SPACE);
        WaitForAsyncUtils.waitForFxEvents();
    }

    /** All words to be read in the prompts of the step in front, with plain blanks. */
    Set<String> words() {
        makeStep();
        WaitForAsyncUtils.waitForFxEvents();
        return robot
                .lookup((Node node) -> node instanceof Labeled labeled && inStep(labeled))
                .<Labeled>queryAll()
                .stream()
                .map(labeled -> String.valueOf(labeled.getText()).replace('\u00a0', ' '))
                .collect(Collectors.toSet());
    }
}
