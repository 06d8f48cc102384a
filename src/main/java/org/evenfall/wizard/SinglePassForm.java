package org.evenfall.wizard;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import javafx.scene.Node;
import javafx.scene.layout.Region;
import org.evenfall.finding.Arg;
import org.evenfall.finding.Sentences;
import org.evenfall.flight.WidthScan;
import org.evenfall.quantity.Unit;
import org.evenfall.setup.SinglePassTest;
import org.evenfall.setup.path.TrayPaths;
import org.evenfall.wizard.form.Column;
import org.evenfall.wizard.form.EntryTable;
import org.evenfall.wizard.form.FigureRow;
import org.evenfall.wizard.form.Form;
import org.evenfall.wizard.form.Slot;
import org.evenfall.wizard.form.VisibleWhen;
import org.evenfall.wizard.picture.PatternPicture;
import org.jspecify.annotations.Nullable;

/** Step 6, the other way: one pass over a long line of trays, overlapped with its neighbours at any width. */
final class SinglePassForm {

    private final Form form;

    SinglePassForm(Form form) {
        this.form = form;
    }

    private @Nullable SinglePassTest line() {
        return form.model().assessment().trays().line();
    }

    Node node() {
        // made anew when catches are read another way, for then they have other units
        Node rows = Slot.rebuiltOn(form, () -> form.model().setup().trays().catchKind(), SinglePassForm::rows);
        PatternPicture picture = new PatternPicture(form.words());
        picture.setMinHeight(Region.USE_PREF_SIZE);
        form.follow(() -> {
            SinglePassTest line = line();
            picture.show(
                    line == null
                            ? List.of()
                            : List.of(new PatternPicture.Pattern(
                                    form.words().text("trays.line.caught"), line.positionsM(), line.amountsG())),
                    form.model().assessment().tramlineWidthM());
        });
        return form.group(
                "trays.line",
                form.sentence("trays.line.how"),
                rows,
                VisibleWhen.when(form, () -> line() != null, new FigureRow(form, this::figures)),
                VisibleWhen.when(form, () -> line() != null, picture));
    }

    private static Node rows(Form form) {
        return EntryTable.rows(
                        form,
                        TrayPaths.LINE,
                        List.of(
                                Column.quantity(form, TrayPaths.LINE_POSITION),
                                Column.quantity(form, TrayPaths.LINE_AMOUNT)))
                .node();
    }

    private List<FigureRow.Figure> figures() {
        SinglePassTest line = line();
        List<FigureRow.Figure> figures = new ArrayList<>();
        if (line == null) {
            return figures;
        }
        Sentences words = form.words();
        if (line.overlap().cvPercent() != null) {
            figures.add(new FigureRow.Figure(
                    words.text("trays.line.at", Arg.number(line.overlap().width(), 0, Unit.M)),
                    words.text("trays.cvShort", Arg.number(line.overlap().cvPercent(), 0, Unit.PERCENT))));
        }
        figures.add(new FigureRow.Figure(words.text("trays.line.ten"), widths(line.atMost10())));
        figures.add(new FigureRow.Figure(words.text("trays.line.fifteen"), widths(line.atMost15())));
        if (line.overlap().halfRateWidth() != null) {
            figures.add(new FigureRow.Figure(
                    words.text("trays.line.half"), words.number(line.overlap().halfRateWidth(), 0, Unit.M)));
        }
        double lean = line.overlap().leftRightPercent();
        figures.add(new FigureRow.Figure(
                words.text("trays.figure.sides"),
                Math.abs(lean) < 0.5
                        ? words.text("trays.alike")
                        : words.text(
                                lean > 0 ? "trays.leftMore" : "trays.rightMore",
                                Arg.number(Math.abs(lean), 0, Unit.PERCENT))));
        return figures;
    }

    private String widths(List<WidthScan.Interval> intervals) {
        return intervals.isEmpty()
                ? form.words().text("trays.line.none")
                : intervals.stream()
                        .map(one -> form.words()
                                .text(
                                        "trays.line.interval",
                                        Arg.number(one.from(), 0, Unit.NONE),
                                        Arg.number(one.to(), 0, Unit.M)))
                        .collect(Collectors.joining(", "));
    }
}
