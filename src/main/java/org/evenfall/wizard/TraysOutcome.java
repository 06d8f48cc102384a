package org.evenfall.wizard;

import java.util.ArrayList;
import java.util.List;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import org.evenfall.finding.Arg;
import org.evenfall.finding.Finding;
import org.evenfall.finding.Sentences;
import org.evenfall.quantity.Unit;
import org.evenfall.result.AdviceLines;
import org.evenfall.result.ResultLine;
import org.evenfall.result.TrayTestLines;
import org.evenfall.setup.AdviceFindings;
import org.evenfall.setup.TrayTestResult;
import org.evenfall.setup.TraysResult;
import org.evenfall.setup.path.TrayPaths;
import org.evenfall.trays.Advice;
import org.evenfall.trays.Uniformity;
import org.evenfall.wizard.form.Disclosure;
import org.evenfall.wizard.form.FigureRow;
import org.evenfall.wizard.form.FindingView;
import org.evenfall.wizard.form.Form;
import org.evenfall.wizard.form.HorizontalScrollPane;
import org.evenfall.wizard.form.Lines;
import org.evenfall.wizard.form.SourceLine;
import org.evenfall.wizard.form.VisibleWhen;
import org.jspecify.annotations.Nullable;

/** Step 6, after: how even it is, how the tests compare, and what to turn next. */
final class TraysOutcome {

    private final Form form;

    TraysOutcome(Form form) {
        this.form = form;
    }

    private @Nullable Uniformity last() {
        return form.model().assessment().trays().lastEvenness();
    }

    Node result() {
        Sentences words = form.words();
        return form.group(
                "trays.result",
                VisibleWhen.sentence(form, "result-figure", () -> {
                    Uniformity last = last();
                    return last == null ? "" : TrayTestLines.fieldCv(words, last);
                }),
                FigureRow.of(form, () -> figures(words)),
                VisibleWhen.sentence(form, "sentence", () -> {
                    Uniformity last = last();
                    return last == null ? "" : TrayTestLines.noDifference(words, last.contrasts());
                }),
                VisibleWhen.sentence(form, "sentence", () -> last() == null ? "" : words.text("trays.twoCvs")),
                SourceLine.when(form, () -> last() != null, "source.cvLimits"),
                SourceLine.when(form, () -> last() != null, "source.fieldCv"),
                comparison(),
                VisibleWhen.sentence(
                        form,
                        "sentence",
                        () -> TrayTestLines.loss(
                                words, form.model().assessment().trays())),
                SourceLine.when(
                        form,
                        () -> !TrayTestLines.loss(
                                        words, form.model().assessment().trays())
                                .isEmpty(),
                        "source.cropLoss"),
                VisibleWhen.sentence(form, "sentence", () -> {
                    Uniformity last = last();
                    return last == null ? "" : TrayTestLines.meanRate(words, last);
                }));
    }

    private List<ResultLine> figures(Sentences words) {
        Uniformity last = last();
        List<ResultLine> lines = new ArrayList<>();
        if (last != null) {
            lines.addAll(TrayTestLines.figures(words, last));
            lines.addAll(TrayTestLines.differences(words, last.contrasts()));
        }
        return lines;
    }

    /** All tests in one table, once there are two. */
    private Node comparison() {
        GridPane grid = new GridPane();
        grid.getStyleClass().addAll("rows", "compared");
        form.follow(() -> {
            List<TrayTestResult> tests = form.model().assessment().trays().tests();
            grid.getChildren().clear();
            for (int row = 0; row <= tests.size(); row++) {
                List<String> cells = row == 0
                        ? headers(form.words())
                        : cells(form.words(), tests.get(row - 1), settings(tests.get(row - 1)));
                for (int column = 0; column < cells.size(); column++) {
                    Label cell = new Label(cells.get(column));
                    cell.setMinWidth(Region.USE_PREF_SIZE);
                    if (row == 0) {
                        cell.getStyleClass().add("column-header");
                    }
                    grid.add(cell, column, row);
                }
            }
        });
        return VisibleWhen.when(
                form, () -> form.model().assessment().trays().tests().size() > 1, new HorizontalScrollPane(grid));
    }

    /** Levers of a test as they were typed. */
    private String settings(TrayTestResult test) {
        var entries = form.model().setup().trays().tests();
        if (test.index() >= entries.size()) {
            return "";
        }
        return String.join(
                " · ",
                entries.get(test.index()).settings().levers().entrySet().stream()
                        .filter(lever -> !lever.getValue().isBlank())
                        .map(lever -> lever.getKey() + " " + lever.getValue())
                        .toList());
    }

    private static List<String> headers(Sentences words) {
        return List.of(
                words.text("trays.column.test"),
                words.text("trays.column.trayCv"),
                words.text("trays.column.fieldCv"),
                words.text("trays.column.verdict"),
                words.text("trays.column.settings"));
    }

    static List<String> cells(Sentences words, TrayTestResult test, String settings) {
        Uniformity evenness = test.evenness();
        return List.of(
                Integer.toString(test.index() + 1),
                words.number(evenness.cvPercent(), 0, Unit.PERCENT),
                words.text(
                        "trays.range",
                        Arg.number(evenness.field().medianPercent(), 0, Unit.PERCENT),
                        Arg.number(evenness.field().lowPercent(), 0, Unit.NONE),
                        Arg.number(evenness.field().highPercent(), 0, Unit.PERCENT)),
                words.choice(evenness.verdict()),
                settings);
    }

    Node advice() {
        VBox decisive = new VBox();
        Lines.of(form, decisive, this::decisive, reason -> FindingView.line(form.words(), reason));
        VBox others = new VBox();
        others.getStyleClass().add("attempts");
        Lines.of(form, others, this::others, reason -> FindingView.line(form.words(), reason));
        Disclosure why = new Disclosure(form, "trays.why", others);
        Label next = VisibleWhen.sentence(form, "figure-line", () -> AdviceLines.headline(form.words(), advised()));
        next.getStyleClass().add("next");
        return form.group(
                "trays.next",
                next,
                decisive,
                VisibleWhen.sentence(form, "figure-line", () -> AdviceLines.expected(form.words(), advised())),
                VisibleWhen.when(form, () -> !others().isEmpty(), why),
                VisibleWhen.when(
                        form,
                        () -> form.model().assessment().machine().levers().size() > 1,
                        form.choice(TrayPaths.TWO_LEVERS)));
    }

    private List<Finding> decisive() {
        Advice advice = advised();
        return advice == null ? List.of() : List.of(AdviceFindings.decisive(advice));
    }

    private List<Finding> others() {
        Advice advice = advised();
        return advice == null ? List.of() : AdviceFindings.others(advice);
    }

    private @Nullable Advice advised() {
        TraysResult trays = form.model().assessment().trays();
        return trays.advice();
    }
}
