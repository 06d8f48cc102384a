package org.evenfall.wizard.step.trays;

import java.util.List;
import java.util.function.Supplier;
import javafx.scene.Node;
import javafx.scene.layout.VBox;
import org.evenfall.result.SinglePassLines;
import org.evenfall.setup.path.TrayPaths;
import org.evenfall.wizard.form.Column;
import org.evenfall.wizard.form.EntryTable;
import org.evenfall.wizard.form.FigureRow;
import org.evenfall.wizard.form.Form;
import org.evenfall.wizard.form.FormPrompt;
import org.evenfall.wizard.form.Help;
import org.evenfall.wizard.form.Slot;

/** One pass over a long line of trays, overlapped with its neighbours at any width. */
public final class LongPassPrompt extends FormPrompt {

    /** @param picture of the step */
    public LongPassPrompt(Form form, Supplier<? extends Node> picture) {
        super("6e", form, picture);
    }

    @Override
    public Node entries() {
        return new VBox(
                FigureRow.of(
                        form(),
                        () -> SinglePassLines.figures(
                                form().words(),
                                form().model().assessment().trays().line())),
                // made anew when catches are read another way, for then they have other units
                Slot.rebuiltOn(form(), () -> form().model().setup().trays().catchKind(), LongPassPrompt::rows));
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

    @Override
    public boolean mayHurt() {
        return true;
    }

    @Override
    public Help help() {
        return Help.terms("trayCv").from("source.overlap", "source.cvLimits");
    }
}
