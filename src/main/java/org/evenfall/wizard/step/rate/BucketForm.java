package org.evenfall.wizard.step.rate;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.control.Button;
import javafx.scene.control.TextField;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;
import org.evenfall.setup.entry.BucketEntry;
import org.evenfall.setup.entry.BucketMethod;
import org.evenfall.setup.path.EntryPath;
import org.evenfall.setup.path.RatePaths;
import org.evenfall.wizard.form.CatchLine;
import org.evenfall.wizard.form.Form;
import org.evenfall.wizard.form.Keyboard;
import org.evenfall.wizard.form.LineList;
import org.evenfall.wizard.form.SamePlace;
import org.evenfall.wizard.form.Slot;

/** The entries of one bucket test: the setting, the time, the catches; or the known weight and its times. */
final class BucketForm {

    private static final EntryPath<List<BucketEntry>> TESTS = RatePaths.BUCKET_TESTS.path();

    private final Form form;
    private final int index;
    private final EntryPath<BucketEntry> at;
    private final Node left;
    private final Node right;

    BucketForm(Form form, int index) {
        this.form = form;
        this.index = index;
        this.at = RatePaths.BUCKET_TESTS.item(index);
        this.left = SamePlace.of(
                form,
                this::method,
                CatchLine.repeats(form, RatePaths.BUCKET_LEFT, at).node(),
                CatchLine.repeats(form, RatePaths.BUCKET_LEFT_TIMES, at).node());
        this.right = SamePlace.of(
                form,
                this::method,
                CatchLine.repeats(form, RatePaths.BUCKET_RIGHT, at).node(),
                CatchLine.repeats(form, RatePaths.BUCKET_RIGHT_TIMES, at).node());
    }

    private boolean timed() {
        return RatePaths.BUCKET_METHOD.at(at).get(form.model().setup()) == BucketMethod.KNOWN_WEIGHT;
    }

    private int method() {
        return timed() ? 1 : 0;
    }

    Node node() {
        HBox catches = new HBox(left, right);
        catches.getStyleClass().add("side-by-side");
        VBox test = new VBox(form.choice(RatePaths.BUCKET_METHOD, answered()), settings(), catches);
        test.getStyleClass().add("parts");
        return test;
    }

    /** Openings or factor, and what is timed or weighed. */
    private Node settings() {
        return Slot.rebuiltOn(
                form,
                () -> List.of(timed(), byFactor()),
                part -> LineList.sideBySide(
                        new LineList(part)
                                .quantity(RatePaths.BUCKET_OPENING_LEFT, at)
                                .quantity(byFactor() ? RatePaths.BUCKET_SHOWN : RatePaths.BUCKET_OPENING_RIGHT, at),
                        timed()
                                ? new LineList(part).quantity(RatePaths.BUCKET_KNOWN_WEIGHT, at)
                                : new LineList(part)
                                        .quantity(RatePaths.BUCKET_TIME, at)
                                        .quantity(RatePaths.BUCKET_BUCKET_EMPTY, at)));
    }

    private boolean byFactor() {
        return form.model().setup().machine().rateSetting().byFactor();
    }

    /** One that is not answered is caught for a time. */
    private EntryPath<BucketMethod> answered() {
        return at.then(
                RatePaths.BUCKET_METHOD.name(),
                test -> test.method() == BucketMethod.UNANSWERED ? BucketMethod.CAUGHT_FOR_TIME : test.method(),
                BucketEntry::withMethod);
    }

    /** Takes this test out. */
    Button remove() {
        Button button = form.button(
                "form.removeTest",
                () -> form.model().remove(setup -> {
                    List<BucketEntry> rest = new ArrayList<>(TESTS.get(setup));
                    rest.remove(index);
                    return TESTS.set(setup, rest);
                }));
        button.setFocusTraversable(false);
        button.getStyleClass().add("quiet");
        form.follow(
                () -> button.setVisible(index < TESTS.get(form.model().setup()).size()));
        return button;
    }

    /** The keyboard goes to the first catch, or the first time. */
    void focusFirstCatch() {
        fields(left).findFirst().ifPresent(Keyboard::to);
    }

    /** Whether the catches end with a field. */
    boolean endsWith(TextField field) {
        return fields(right).anyMatch(field::equals);
    }

    private static Stream<TextField> fields(Node node) {
        if (!node.isVisible()) {
            return Stream.empty();
        }
        if (node instanceof TextField field) {
            return Stream.of(field);
        }
        return node instanceof Parent parent
                ? parent.getChildrenUnmodifiable().stream().flatMap(BucketForm::fields)
                : Stream.empty();
    }
}
