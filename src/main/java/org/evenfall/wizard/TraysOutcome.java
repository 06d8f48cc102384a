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
import org.evenfall.setup.AdviceFindings;
import org.evenfall.setup.TrayTestResult;
import org.evenfall.setup.TraysResult;
import org.evenfall.setup.path.TrayPaths;
import org.evenfall.trays.Advice;
import org.evenfall.trays.AdviceKind;
import org.evenfall.trays.CropLoss;
import org.evenfall.trays.EvennessVerdict;
import org.evenfall.trays.LeverMove;
import org.evenfall.trays.Uniformity;
import org.evenfall.wizard.form.FigureRow;
import org.evenfall.wizard.form.FindingView;
import org.evenfall.wizard.form.Form;
import org.evenfall.wizard.form.Lines;
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
                    return last == null ? "" : cv(words, last);
                }),
                new FigureRow(form, () -> {
                    Uniformity last = last();
                    return last == null ? List.of() : figures(words, last);
                }),
                VisibleWhen.sentence(form, "sentence", () -> last() == null ? "" : words.text("trays.twoCvs")),
                comparison(),
                VisibleWhen.sentence(
                        form,
                        "sentence",
                        () -> loss(words, form.model().assessment().trays())),
                VisibleWhen.sentence(form, "sentence", () -> {
                    Uniformity last = last();
                    return last == null || last.catches().meanRateKgPerHa() == null
                            ? ""
                            : words.text(
                                    "trays.meanRate", Arg.number(last.catches().meanRateKgPerHa(), 0, Unit.KG_PER_HA));
                }));
    }

    /** What unevenness costs, for scale; nothing where the field is even. */
    private static String loss(Sentences words, TraysResult trays) {
        CropLoss loss = trays.loss();
        return loss == null
                        || trays.tests()
                                        .get(trays.tests().size() - 1)
                                        .evenness()
                                        .verdict()
                                == EvennessVerdict.EVEN
                ? ""
                : words.text(
                        "trays.loss",
                        Arg.number(loss.lowKgPerHa(), 0, Unit.KG_PER_HA),
                        Arg.number(loss.highKgPerHa(), 0, Unit.KG_PER_HA));
    }

    static String cv(Sentences words, Uniformity last) {
        return words.text(
                "trays.cvResult",
                Arg.number(last.field().medianPercent(), 0, Unit.PERCENT),
                Arg.number(last.field().lowPercent(), 0, Unit.NONE),
                Arg.number(last.field().highPercent(), 0, Unit.PERCENT),
                Arg.word("choice.EvennessVerdict." + last.verdict()));
    }

    static List<FigureRow.Figure> figures(Sentences words, Uniformity last) {
        List<FigureRow.Figure> figures = new ArrayList<>();
        figures.add(new FigureRow.Figure(
                words.text("trays.figure.trayCv"), words.number(last.cvPercent(), 0, Unit.PERCENT)));
        figures.add(new FigureRow.Figure(
                words.text("trays.figure.machine"),
                last.cv().machinePercent() == null
                        ? words.text("trays.figure.machineNot")
                        : words.text("word.about", Arg.number(last.cv().machinePercent(), 0, Unit.PERCENT))));
        figures.add(new FigureRow.Figure(
                words.text("trays.figure.noiseHere"), words.number(last.cv().noisePercent(), 0, Unit.PERCENT)));
        figures.add(new FigureRow.Figure(
                words.text("trays.figure.sides"),
                more(words, last.contrasts().leftRightPercent(), "trays.leftMore", "trays.rightMore")));
        figures.add(new FigureRow.Figure(
                words.text("trays.figure.centre"),
                more(words, last.contrasts().centreOverlapPercent(), "trays.centreMore", "trays.overlapMore")));
        figures.add(new FigureRow.Figure(
                words.text("trays.figure.chance"),
                words.text("word.about", Arg.number(last.field().statedChancePercent(), 0, Unit.PERCENT))));
        return figures;
    }

    private static String more(Sentences words, double percent, String first, String second) {
        return Math.abs(percent) < 0.5
                ? words.text("trays.alike")
                : words.text(percent > 0 ? first : second, Arg.number(Math.abs(percent), 0, Unit.PERCENT));
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
                form, () -> form.model().assessment().trays().tests().size() > 1, grid);
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
                words.text("trays.column.range"),
                words.text("trays.column.verdict"),
                words.text("trays.column.settings"));
    }

    static List<String> cells(Sentences words, TrayTestResult test, String settings) {
        Uniformity evenness = test.evenness();
        return List.of(
                Integer.toString(test.index() + 1),
                words.number(evenness.cvPercent(), 0, Unit.PERCENT),
                words.number(evenness.field().medianPercent(), 0, Unit.PERCENT),
                words.text(
                        "trays.range",
                        Arg.number(evenness.field().lowPercent(), 0, Unit.NONE),
                        Arg.number(evenness.field().highPercent(), 0, Unit.PERCENT)),
                words.choice(evenness.verdict()),
                settings);
    }

    Node advice() {
        VBox reasons = new VBox();
        reasons.getStyleClass().add("attempts");
        Lines.of(form, reasons, this::reasons, reason -> FindingView.line(form.words(), reason));
        Label next = VisibleWhen.sentence(form, "figure-line", () -> headline(form.words(), advised()));
        next.getStyleClass().add("next");
        return form.group(
                "trays.next",
                next,
                reasons,
                VisibleWhen.sentence(form, "figure-line", () -> expected(form.words(), advised())),
                VisibleWhen.when(
                        form,
                        () -> form.model().assessment().machine().levers().size() > 1,
                        form.choice(TrayPaths.TWO_LEVERS)));
    }

    private List<Finding> reasons() {
        Advice advice = advised();
        return advice == null ? List.of() : AdviceFindings.of(advice);
    }

    private @Nullable Advice advised() {
        TraysResult trays = form.model().assessment().trays();
        return trays.advice();
    }

    /** What to do, and for a lever which, from where to where. */
    static String headline(Sentences words, @Nullable Advice advice) {
        if (advice == null) {
            return words.choice(AdviceKind.DO_A_TEST);
        }
        if (advice.moves().isEmpty()) {
            return words.choice(advice.kind());
        }
        return String.join(
                " ", advice.moves().stream().map(move -> move(words, move)).toList());
    }

    private static String move(Sentences words, LeverMove move) {
        return words.text(
                move.wider() ? "trays.moveWider" : "trays.moveNarrower",
                Arg.text(move.lever()),
                Arg.number(move.from(), decimals(move.from()), Unit.NONE),
                Arg.number(move.to(), decimals(move.to()), Unit.NONE),
                Arg.text(move.unit()));
    }

    private static int decimals(double value) {
        return value == Math.rint(value) ? 0 : 1;
    }

    static String expected(Sentences words, @Nullable Advice advice) {
        if (advice == null || advice.moves().isEmpty() || advice.expected() == null) {
            return "";
        }
        return words.text(
                "trays.expected",
                Arg.number(advice.expected().percent(), 0, Unit.PERCENT),
                Arg.number(advice.expected().intervalPercent().low(), 0, Unit.NONE),
                Arg.number(advice.expected().intervalPercent().high(), 0, Unit.PERCENT));
    }
}
