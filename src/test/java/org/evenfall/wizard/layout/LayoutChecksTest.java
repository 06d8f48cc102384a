package org.evenfall.wizard.layout;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.function.Function;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.TextField;
import javafx.scene.layout.Pane;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import javafx.stage.Stage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;
import org.testfx.util.WaitForAsyncUtils;

/** Each check of the layout finds the fault that is planted here, and nothing where there is none. */
@ExtendWith(ApplicationExtension.class)
class LayoutChecksTest {

    private Stage stage;

    @Start
    void start(Stage shown) {
        stage = shown;
        stage.setWidth(400);
        stage.setHeight(300);
    }

    private List<String> found(Node page, Function<Node, List<String>> check) throws Exception {
        WaitForAsyncUtils.asyncFx(() -> {
                    stage.setScene(new Scene(new VBox(page), 400, 300));
                    stage.show();
                })
                .get();
        WaitForAsyncUtils.waitForFxEvents();
        return WaitForAsyncUtils.asyncFx(() -> check.apply(stage.getScene().getRoot()))
                .get();
    }

    private static Node sized(Region region, double width, double height) {
        region.setMinSize(width, height);
        region.setPrefSize(width, height);
        region.setMaxSize(width, height);
        return region;
    }

    @Test
    void scrollBarsAreFoundEachWay() throws Exception {
        Node wide = sized(new Pane(), 5000, 20);
        Node high = sized(new Pane(), 20, 5000);
        assertThat(found(new ScrollPane(wide), ScrollBars::horizontal)).hasSize(1);
        assertThat(found(new ScrollPane(high), ScrollBars::upright)).hasSize(1);
        assertThat(found(new ScrollPane(new Pane()), ScrollBars::horizontal)).isEmpty();
    }

    @Test
    void cutTextIsFound() throws Exception {
        assertThat(found(sized(new Label("A sentence with no room"), 40, 20), CutText::in))
                .singleElement()
                .asString()
                .contains("is drawn as");
        assertThat(found(new Label("All of it …"), CutText::in)).isEmpty();
    }

    @Test
    void textOutsideTheWindowIsFound() throws Exception {
        Label outside = new Label("outside");
        outside.setTranslateX(5000);
        assertThat(found(outside, CutText::in)).singleElement().asString().contains("sticks out of the window");
    }

    @Test
    void overlapsAreFound() throws Exception {
        Button over = new Button("over");
        over.relocate(10, 5);
        assertThat(found(new Pane(new Label("under"), over), Overlaps::in)).hasSize(1);
        assertThat(found(new VBox(new Label("above"), new Button("below")), Overlaps::in))
                .isEmpty();
    }

    @Test
    void aFieldWithoutNameIsFound() throws Exception {
        assertThat(found(new TextField(), Unlabelled::in)).hasSize(1);
        TextField named = new TextField();
        named.setAccessibleText("width");
        assertThat(found(named, Unlabelled::in)).isEmpty();
        TextField labelled = new TextField();
        Label label = new Label("width");
        label.setLabelFor(labelled);
        assertThat(found(new VBox(label, labelled), Unlabelled::in)).isEmpty();
    }

    @Test
    void aRawKeyIsFound() throws Exception {
        assertThat(found(new Label("prompt.0b.how"), RawKeys::in)).containsExactly("prompt.0b.how");
        assertThat(found(new Label("2.5 m"), RawKeys::in)).isEmpty();
    }

    @Test
    void aWrongFirstFocusIsFound() throws Exception {
        Button button = new Button("Add");
        TextField field = new TextField();
        VBox page = new VBox(button, field);
        assertThat(found(page, root -> FirstFocus.wrong(page, button))).hasSize(1);
        assertThat(found(page, root -> FirstFocus.wrong(page, null))).hasSize(1);
        assertThat(found(page, root -> FirstFocus.wrong(page, field))).isEmpty();
    }

    /** #767676 on white is the lightest grey of 4.5:1 (W3C, Understanding WCAG 2.2, 1.4.3: 4.54:1). */
    @Test
    void weakTextIsFound() throws Exception {
        assertThat(found(onWhite(coloured("#777777", 14)), Contrast::in)).hasSize(1);
        assertThat(found(onWhite(coloured("#767676", 14)), Contrast::in)).isEmpty();
        assertThat(found(onWhite(coloured("#777777", 24)), Contrast::in)).isEmpty();
        assertThat(found(onWhite(coloured("#999999", 24)), Contrast::in)).hasSize(1);
    }

    @Test
    void aWeakOrThinFocusRingIsFound() throws Exception {
        assertThat(found(onWhite(ringed("#1F4E79", 2)), FocusRings::in)).isEmpty();
        assertThat(found(onWhite(ringed("#1F4E79", 1)), FocusRings::in)).hasSize(1);
        assertThat(found(onWhite(ringed("#BBBBBB", 2)), FocusRings::in)).hasSize(1);
    }

    /** The window of these tests is about 700 px high. */
    @Test
    void textTooSmallForAHallIsFound() throws Exception {
        assertThat(found(coloured("#000000", share(0.02)), SmallText::in)).hasSize(1);
        assertThat(found(coloured("#000000", share(0.037)), SmallText::in)).isEmpty();
        Label question = (Label) coloured("#000000", share(0.037));
        question.getStyleClass().add("question");
        assertThat(found(question, SmallText::in)).hasSize(1);
    }

    /** A size of letters, as a share of the height of the window, px. */
    private int share(double ofHeight) throws Exception {
        found(new Label("any"), root -> List.of());
        return (int) Math.ceil(ofHeight * stage.getScene().getHeight());
    }

    private static Node coloured(String colour, int px) {
        Label label = new Label("text");
        label.setStyle("-fx-text-fill: " + colour + "; -fx-font-size: " + px + "px;");
        return label;
    }

    private static Node ringed(String colour, int px) {
        Button button = new Button("text");
        button.setStyle("-fx-border-color: " + colour + "; -fx-border-width: " + px + ";");
        return button;
    }

    private static Node onWhite(Node node) {
        VBox box = new VBox(node);
        box.setStyle("-fx-background-color: white;");
        return box;
    }
}
