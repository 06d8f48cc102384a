package org.evenfall.wizard;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.UnaryOperator;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.control.Button;
import javafx.scene.control.ChoiceBox;
import javafx.scene.control.Labeled;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.TextField;
import javafx.scene.control.TextInputControl;
import javafx.scene.control.ToggleButton;
import javafx.stage.Stage;
import org.evenfall.quantity.EnteredQuantity;
import org.evenfall.setup.entry.Setup;
import org.evenfall.setup.path.HeightPaths;
import org.evenfall.setup.path.ProductPaths;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;

/** The content of a page is dropped when its step is left, and made again as it was; meanwhile what was typed is known. */
@ExtendWith(ApplicationExtension.class)
final class DroppedPagesInWindowTest {

    private WizardWindow window;
    private FxRobot robot;

    @Start
    void start(Stage stage) throws Exception {
        SharedWindow shared = SharedWindow.make();
        window = shared.show(stage, 1280, 860);
    }

    @BeforeEach
    void remember(FxRobot given) {
        robot = given;
    }

    @Test
    void onlyTheStepInFrontHasEntries() {
        show("1f");
        assertThat(onPage("1f")).contains("/product/containerVolume", "/product/containerFull");
        show("4a");
        assertThat(onPage("1f")).isEmpty();
        assertThat(onPage("4a")).contains("/height/cropHeights");
        show("1f");
        assertThat(onPage("1f")).contains("/product/containerVolume", "/product/containerFull");
        assertThat(onPage("4a")).isEmpty();
    }

    @Test
    void everyPageIsMadeAnewAsItWas() {
        Map<String, List<String>> first = everyPage();
        Map<String, List<String>> again = everyPage();
        assertThat(first.values()).filteredOn(List::isEmpty).isEmpty();
        first.forEach((prompt, shown) -> {
            List<String> gone = new ArrayList<>(shown);
            again.get(prompt).forEach(gone::remove);
            assertThat(gone).as("no longer on " + prompt).isEmpty();
            assertThat(again.get(prompt)).as(prompt).hasSameSizeAs(shown);
        });
    }

    /** Every page as it is in front. */
    private Map<String, List<String>> everyPage() {
        Map<String, List<String>> pages = new LinkedHashMap<>();
        for (PromptPage page : window.shell().pages()) {
            String id = page.prompt().id();
            if (id.equals("7c")) {
                // never dropped; the state of the key appears later
                continue;
            }
            show(id);
            robot.interact(() -> {
                List<String> shown = new ArrayList<>();
                collect(page, shown);
                pages.put(id, shown);
            });
        }
        return pages;
    }

    @Test
    void whatIsGoneFollowsNothing() {
        everyPage();
        show("3b");
        int before = window.model().followers();
        everyPage();
        show("3b");
        assertThat(window.model().followers()).isEqualTo(before);
    }

    @Test
    void whatCannotBeReadIsThereStill() {
        show("1f");
        type("/product/containerVolume", "ten and a bit");
        show("5b");
        show("1f");
        TextField field = (TextField) node("/product/containerVolume");
        assertThat(field.getText()).isEqualTo("ten and a bit");
        assertThat(state("1f")).isEqualTo(PromptState.STOPPED);
    }

    @Test
    void whatWasAskedForIsOpenStill() {
        show("5e");
        assertThat(isShown("/rate/hopperUsed")).isFalse();
        robot.interact(() -> ((Button) node("rate.hopperAsk")).fire());
        assertThat(isShown("/rate/hopperUsed")).isTrue();
        show("1a");
        show("5e");
        assertThat(isShown("/rate/hopperUsed")).isTrue();
    }

    private boolean isShown(String id) {
        for (Node up = node(id); up != null; up = up.getParent()) {
            if (!up.isVisible()) {
                return false;
            }
        }
        return true;
    }

    @Test
    void whileItIsLeftItsStateIsThatOfTheSetup() {
        show("1f");
        PromptState done = state("1f");
        show("4b");
        assertThat(onPage("1f")).isEmpty();
        assertThat(state("1f")).isEqualTo(done);
        // something else changes: it is not even made
        change(setup -> HeightPaths.WANTED.path().set(setup, EnteredQuantity.EMPTY));
        assertThat(state("1f")).isEqualTo(done);
        assertThat(onPage("1f")).isEmpty();
        // its own entries change
        change(setup -> ProductPaths.CONTAINER_VOLUME.path().set(setup, EnteredQuantity.EMPTY));
        change(setup -> ProductPaths.CONTAINER_EMPTY.path().set(setup, EnteredQuantity.EMPTY));
        change(setup -> ProductPaths.CONTAINER_FULL.path().set(setup, List.of()));
        assertThat(state("1f")).isNotEqualTo(done);
        robot.interact(() -> assertThat(typed("1f")).isFalse());
    }

    @Test
    void theListOfAllAnswersIsTheSameWithPagesMadeOrLeft() {
        show("7a");
        List<Frame.Review> left = review();
        robot.interact(() -> SharedWindow.whole(window));
        List<Frame.Review> made = review();
        assertThat(made).isNotEmpty();
        made.removeAll(left);
        assertThat(made).isEmpty();
    }

    private List<Frame.Review> review() {
        List<Frame.Review> rows = new ArrayList<>();
        robot.interact(() -> rows.addAll(window.shell().review()));
        return rows;
    }

    private void show(String prompt) {
        robot.interact(() -> window.shell().show(prompt));
    }

    private void change(UnaryOperator<Setup> how) {
        robot.interact(() -> window.model().change(how));
    }

    private void type(String id, String text) {
        robot.interact(() -> ((TextField) node(id)).setText(text));
    }

    private Node node(String id) {
        return Nodes.find(window.shell(), node -> id.equals(node.getId())).orElseThrow();
    }

    private PromptPage page(String prompt) {
        return window.shell().pages().stream()
                .filter(page -> page.prompt().id().equals(prompt))
                .findFirst()
                .orElseThrow();
    }

    private boolean typed(String prompt) {
        return page(prompt).typed();
    }

    /** As the list of all answers has it, which makes no page that is known. */
    private PromptState state(String prompt) {
        return review().stream()
                .filter(row -> row.prompt().equals(prompt))
                .findFirst()
                .orElseThrow()
                .state();
    }

    /** Ids of the entries that are on a page, which is not made to look at it. */
    private List<String> onPage(String prompt) {
        List<String> ids = new ArrayList<>();
        robot.interact(() -> ids(page(prompt), ids));
        return ids;
    }

    private static void ids(Node node, List<String> ids) {
        if (String.valueOf(node.getId()).startsWith("/")) {
            ids.add(node.getId());
        }
        children(node).forEach(child -> ids(child, ids));
    }

    /** All that can be read below a node, in its order. */
    private static void collect(Node node, List<String> shown) {
        if (node instanceof TextInputControl field) {
            shown.add(node.getId() + "=" + field.getText());
        } else if (node instanceof ToggleButton toggle) {
            shown.add(node.getId() + ":" + toggle.getText() + "=" + toggle.isSelected());
        } else if (node instanceof ChoiceBox<?> choice) {
            shown.add(node.getId() + "=" + choice.getValue());
        } else if (node instanceof Labeled label) {
            shown.add(label.isVisible() + " " + label.getText());
        }
        children(node).forEach(child -> collect(child, shown));
    }

    private static List<Node> children(Node node) {
        if (node instanceof ScrollPane pane) {
            return pane.getContent() == null ? List.of() : List.of(pane.getContent());
        }
        return node instanceof Parent parent ? parent.getChildrenUnmodifiable() : List.of();
    }
}
