package org.evenfall.wizard;

import java.util.List;
import javafx.scene.Node;
import javafx.scene.layout.Region;
import org.evenfall.result.SinglePassLines;
import org.evenfall.setup.SinglePassTest;
import org.evenfall.setup.path.TrayPaths;
import org.evenfall.wizard.form.Column;
import org.evenfall.wizard.form.EntryTable;
import org.evenfall.wizard.form.FigureRow;
import org.evenfall.wizard.form.Form;
import org.evenfall.wizard.form.Slot;
import org.evenfall.wizard.form.SourceLine;
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
                VisibleWhen.when(
                        form,
                        () -> line() != null,
                        FigureRow.of(form, () -> SinglePassLines.figures(form.words(), line()))),
                VisibleWhen.when(form, () -> line() != null, picture),
                SourceLine.when(form, () -> line() != null, "source.overlap"),
                SourceLine.when(form, () -> line() != null, "source.cvLimits"));
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
}
