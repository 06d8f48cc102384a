package org.evenfall.wizard;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.layout.VBox;
import org.evenfall.finding.Arg;
import org.evenfall.machine.RateSetting;
import org.evenfall.rate.BucketResult;
import org.evenfall.result.RateCheckLines;
import org.evenfall.setup.BucketTestDraft;
import org.evenfall.setup.entry.BucketEntry;
import org.evenfall.setup.path.EntryPath;
import org.evenfall.setup.path.RatePaths;
import org.evenfall.wizard.form.CatchLine;
import org.evenfall.wizard.form.Column;
import org.evenfall.wizard.form.ConfirmConditions;
import org.evenfall.wizard.form.EntryTable;
import org.evenfall.wizard.form.FigureRow;
import org.evenfall.wizard.form.Form;
import org.evenfall.wizard.form.Lines;
import org.evenfall.wizard.form.RepeatedPart;
import org.evenfall.wizard.form.SettingsForm;
import org.evenfall.wizard.form.VisibleWhen;
import org.jspecify.annotations.Nullable;

/** Step 5, the check: speed over a measured length, bucket tests, later the hopper. */
final class RateCheckForm {

    private static final EntryPath<List<BucketEntry>> TESTS = RatePaths.BUCKET_TESTS.path();

    private final Form form;

    RateCheckForm(Form form) {
        this.form = form;
    }

    Node speed() {
        return form.group(
                "rate.speedTitle",
                form.sentence("rate.speedHow"),
                EntryTable.rows(
                                form,
                                RatePaths.SPEED_RUNS,
                                List.of(
                                        Column.quantity(form, RatePaths.RUN_DISTANCE),
                                        Column.quantity(form, RatePaths.RUN_TIME)))
                        .node(),
                FigureRow.of(
                        form,
                        () -> RateCheckLines.speed(
                                form.words(), form.model().assessment().rate().speed())));
    }

    Node buckets() {
        // one blank test is always there
        VBox tests = new RepeatedPart(
                form,
                () -> Math.max(1, TESTS.get(form.model().setup()).size()),
                this::byFactor,
                (part, index) -> new RateCheckForm(part).test(index));
        tests.setId(TESTS.pointer());
        tests.getStyleClass().add("tests");
        Label next = VisibleWhen.sentence(
                form, "figure-line", () -> RateCheckLines.nextOpening(form.words(), last(), rateSetting()));
        next.getStyleClass().add("next");
        return form.group(
                "rate.bucketTitle",
                VisibleWhen.sentence(
                        form,
                        "sentence",
                        () -> form.words().text(byFactor() ? "rate.bucketHowFactor" : "rate.bucketHow")),
                FigureRow.of(
                        form,
                        () -> RateCheckLines.expected(
                                form.words(), form.model().assessment().rate())),
                tests,
                ConfirmConditions.button(form, "rate.assumed"),
                next,
                form.row(VisibleWhen.when(
                        form,
                        () -> last() != null,
                        form.button(
                                "rate.nextTest",
                                () -> form.model()
                                        .change(setup -> BucketTestDraft.added(
                                                setup, form.model().assessment(), form::numberText))))));
    }

    private RateSetting rateSetting() {
        return form.model().setup().machine().rateSetting();
    }

    private boolean byFactor() {
        return rateSetting().byFactor();
    }

    private @Nullable BucketResult last() {
        return form.model().assessment().rate().lastBucket();
    }

    /** One test: openings, time, bucket; then every repeat of each outlet. Enter goes to the next field. */
    private Node test(int index) {
        EntryPath<BucketEntry> place = RatePaths.BUCKET_TESTS.item(index);
        Label title = new Label(form.words().text("rate.test", Arg.count(index + 1L)));
        title.getStyleClass().add("test-title");
        VBox box = new VBox(
                title,
                form.row(
                        form.quantity(RatePaths.BUCKET_OPENING_LEFT, place),
                        VisibleWhen.when(form, () -> !byFactor(), form.quantity(RatePaths.BUCKET_OPENING_RIGHT, place)),
                        form.quantity(RatePaths.BUCKET_TIME, place),
                        form.quantity(RatePaths.BUCKET_BUCKET_EMPTY, place)),
                VisibleWhen.when(form, this::byFactor, form.row(form.quantity(RatePaths.BUCKET_SHOWN, place))),
                CatchLine.repeats(form, RatePaths.BUCKET_LEFT, place).node(),
                CatchLine.repeats(form, RatePaths.BUCKET_RIGHT, place).node(),
                form.row(
                        form.quantity(RatePaths.BUCKET_BULK_DENSITY, place),
                        form.text(RatePaths.BUCKET_DELIVERY, place),
                        form.text(RatePaths.BUCKET_DATE, place)),
                SettingsForm.of(form, RatePaths.BUCKET_SETTINGS.at(place)),
                form.findings(place.pointer()),
                form.row(VisibleWhen.when(
                        form, () -> index < TESTS.get(form.model().setup()).size(), remove(index))));
        box.getStyleClass().add("test");
        return box;
    }

    private Node remove(int index) {
        var button = form.button(
                "form.removeTest",
                () -> form.model().remove(setup -> {
                    List<BucketEntry> rest = new ArrayList<>(TESTS.get(setup));
                    rest.remove(index);
                    return TESTS.set(setup, rest);
                }));
        button.setFocusTraversable(false);
        button.getStyleClass().add("quiet");
        return button;
    }

    /** Every test that can be read in one line each, so that the attempts can be compared. */
    Node attempts() {
        VBox lines = new VBox();
        lines.getStyleClass().add("attempts");
        Lines.of(form, lines, this::attempted, attempt -> {
            Label line = new Label(attempt);
            line.setWrapText(true);
            return line;
        });
        return VisibleWhen.when(
                form,
                () -> !form.model().assessment().rate().bucketTests().isEmpty(),
                form.group("rate.attempts", lines));
    }

    private List<String> attempted() {
        List<BucketResult> tests = form.model().assessment().rate().bucketTests();
        return IntStream.range(0, tests.size())
                .mapToObj(i -> RateCheckLines.attempt(form.words(), i + 1, tests.get(i), rateSetting()))
                .toList();
    }

    Node hopper() {
        return form.group(
                "rate.hopperTitle",
                form.sentence("rate.hopperHow"),
                form.row(form.quantity(RatePaths.HOPPER_USED), form.quantity(RatePaths.AREA_DONE)),
                FigureRow.of(
                        form,
                        () -> RateCheckLines.hopper(
                                form.words(), form.model().assessment().rate().hopper())));
    }
}
