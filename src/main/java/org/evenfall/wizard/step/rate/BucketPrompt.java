package org.evenfall.wizard.step.rate;

import java.util.function.Supplier;
import javafx.beans.property.BooleanProperty;
import javafx.beans.property.SimpleBooleanProperty;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.VBox;
import org.evenfall.machine.RateSetting;
import org.evenfall.result.BucketLines;
import org.evenfall.result.RateSentences;
import org.evenfall.setup.BucketFacts;
import org.evenfall.setup.BucketProgress;
import org.evenfall.setup.BucketTestDraft;
import org.evenfall.setup.path.RatePaths;
import org.evenfall.wizard.form.Disclosure;
import org.evenfall.wizard.form.Form;
import org.evenfall.wizard.form.FormPrompt;
import org.evenfall.wizard.form.Help;
import org.evenfall.wizard.form.Keyboard;
import org.evenfall.wizard.form.OneTest;
import org.evenfall.wizard.form.ReservedSentence;
import org.evenfall.wizard.form.ShownTest;
import org.evenfall.wizard.form.VisibleWhen;
import org.jspecify.annotations.Nullable;

/** The bucket test: one test a page, until every outlet is within the tolerance. */
public final class BucketPrompt extends FormPrompt {

    private static final String TESTS = RatePaths.BUCKET_TESTS.pointer();

    private final ShownBucket shownBucket;
    private final ShownTest shown;
    private final BooleanProperty hopperAsked = new SimpleBooleanProperty();
    private @Nullable BucketForm entries;
    private @Nullable Button next;

    /** Shows a test in the picture. */
    @FunctionalInterface
    public interface ShownBucket {

        /** @param index of the test, from 0 */
        void show(int index);
    }

    /**
     * @param picture of the step
     * @param shownBucket called with the test on the page, now and after each change
     */
    public BucketPrompt(Form form, Supplier<? extends Node> picture, ShownBucket shownBucket) {
        super("5e", form, picture);
        this.shownBucket = shownBucket;
        this.shown = new ShownTest(form, () -> Math.max(1, typed(form)));
    }

    private static int typed(Form form) {
        return RatePaths.BUCKET_TESTS.path().get(form.model().setup()).size();
    }

    @Override
    public boolean holds(String pointer) {
        return pointer.equals(TESTS) || pointer.startsWith(TESTS + "/");
    }

    @Override
    public Node entries() {
        OneTest test = new OneTest(form(), shown, () -> setting().byFactor(), this::test);
        test.setId(TESTS);
        VBox page = new VBox(test, hopper());
        page.getStyleClass().add("parts");
        page.addEventHandler(KeyEvent.KEY_PRESSED, this::leavesTheTest);
        return page;
    }

    private Node test(Form part, int index) {
        BucketForm made = new BucketForm(part, index);
        BucketConditionsForm conditions = new BucketConditionsForm(part, index);
        entries = made;
        part.follow(() -> shownBucket.show(index));
        FlowPane actions = new FlowPane(nextTest(part), made.remove(), conditions.ask());
        actions.getStyleClass().add("test-actions");
        VBox test = new VBox(
                made.node(),
                ReservedSentence.of(
                        part,
                        "figure-line",
                        2,
                        () -> BucketLines.outcome(
                                part.words(), BucketFacts.of(part.model().assessment(), index), setting())),
                actions,
                conditions.sentence(),
                conditions.entries());
        test.getStyleClass().add("parts");
        return test;
    }

    @Override
    public boolean end() {
        entries = null;
        next = null;
        return super.end();
    }

    private RateSetting setting() {
        return form().model().setup().machine().rateSetting();
    }

    /** The way on while an outlet is not within the tolerance; else only for who wants to. */
    private Button nextTest(Form part) {
        Button button = part.button("rate.anotherTest", this::begin);
        next = button;
        button.getStyleClass().add("next-test");
        part.follow(() -> {
            BucketProgress progress = BucketProgress.of(part.model().assessment());
            button.setVisible(progress.complete());
            button.setText(
                    progress.due()
                            ? BucketLines.nextTest(
                                    part.words(),
                                    part.model().assessment().rate().lastBucket(),
                                    setting())
                            : part.words().text("rate.anotherTest"));
            button.getStyleClass().removeAll("primary", "quiet");
            button.getStyleClass().add(progress.due() ? "primary" : "quiet");
        });
        return button;
    }

    private void begin() {
        form().model()
                .change(setup -> BucketTestDraft.added(setup, form().model().assessment(), form()::numberText));
        if (entries != null) {
            entries.focusFirstCatch();
        }
    }

    /** Enter after the last catch goes to the next test while one is due, else on. */
    private void leavesTheTest(KeyEvent event) {
        if (event.getCode() == KeyCode.ENTER
                && event.getTarget() instanceof TextField field
                && entries != null
                && entries.endsWith(field)
                && next != null
                && next.getStyleClass().contains("primary")) {
            event.consume();
            Keyboard.to(next);
        }
    }

    private Node hopper() {
        return new Disclosure(
                form(),
                hopperAsked,
                "rate.hopperAsk",
                form().sentence("rate.hopperHow"),
                form().row(form().quantity(RatePaths.HOPPER_USED), form().quantity(RatePaths.AREA_DONE)),
                VisibleWhen.sentence(
                        form(),
                        "figure-line",
                        () -> RateSentences.hopper(
                                form().words(),
                                form().model().assessment().rate().hopper())));
    }

    @Override
    public boolean mayHurt() {
        return true;
    }

    @Override
    public Help help() {
        return Help.terms("outlet", "opening", "factor", "knownWeight")
                .from(
                        "source.rateTolerance",
                        "source.leftRight",
                        "source.repeats",
                        "source.timing",
                        "source.heavyBucket");
    }
}
