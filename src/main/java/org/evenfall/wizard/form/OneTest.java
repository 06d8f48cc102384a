package org.evenfall.wizard.form;

import java.util.List;
import java.util.Objects;
import java.util.function.BiFunction;
import java.util.function.Supplier;
import java.util.stream.IntStream;
import javafx.scene.Node;
import javafx.scene.control.ToggleButton;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import org.evenfall.finding.Arg;

/**
 * The entries of one test of a list. Where there are several, a row above names each; one of them is chosen by mouse, or the
 * one before and after by Ctrl with Page Up and Page Down.
 */
public final class OneTest extends VBox {

    private final Form form;
    private final ShownTest shown;
    private final Supplier<?> basis;
    private final BiFunction<Form, Integer, Node> part;
    private final FlowPane names = new FlowPane();
    private final Slot slot;
    private List<Object> before = List.of();

    /**
     * @param form the form of the page around it
     * @param shown which test, common to all prompts about the same list
     * @param basis when this is another, the entries are made anew
     * @param part makes the entries of a test, with a form that ends with them
     */
    public OneTest(Form form, ShownTest shown, Supplier<?> basis, BiFunction<Form, Integer, Node> part) {
        this.form = form;
        this.shown = shown;
        this.basis = basis;
        this.part = part;
        this.slot = new Slot(form);
        names.getStyleClass().add("test-names");
        getStyleClass().add("test");
        getChildren().addAll(names, slot);
        form.follow(this::update);
        shown.onShown(form, this::update);
        addEventFilter(KeyEvent.KEY_PRESSED, this::key);
    }

    private void update() {
        List<Object> now = List.of(shown.index(), Objects.requireNonNullElse(basis.get(), ""));
        if (!now.equals(before)) {
            before = now;
            int index = shown.index();
            slot.show(made -> part.apply(made, index));
        }
        boolean several = shown.count() > 1;
        names.setManaged(several);
        names.setVisible(several);
        names.getChildren()
                .setAll(IntStream.range(0, shown.count()).mapToObj(this::name).toList());
    }

    private Node name(int index) {
        ToggleButton button = new ToggleButton(form.words().text("form.test", Arg.count(index + 1L)));
        button.setId("test-" + index);
        button.setMinWidth(Region.USE_PREF_SIZE);
        button.setFocusTraversable(false);
        button.setSelected(shown.index() == index);
        button.setOnAction(event -> {
            button.setSelected(true);
            shown.show(index);
        });
        return button;
    }

    private void key(KeyEvent event) {
        int way = event.getCode() == KeyCode.PAGE_UP ? -1 : event.getCode() == KeyCode.PAGE_DOWN ? 1 : 0;
        if (event.isShortcutDown() && way != 0) {
            event.consume();
            shown.show(shown.index() + way);
        }
    }
}
