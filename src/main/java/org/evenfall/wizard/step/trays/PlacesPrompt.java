package org.evenfall.wizard.step.trays;

import java.util.function.Supplier;
import javafx.scene.Node;
import javafx.scene.layout.VBox;
import org.evenfall.result.TrayPlanLines;
import org.evenfall.setup.CatchKindChange;
import org.evenfall.setup.entry.AmountKind;
import org.evenfall.setup.entry.TrayEntries;
import org.evenfall.setup.path.TrayPaths;
import org.evenfall.wizard.form.FigureRow;
import org.evenfall.wizard.form.Form;
import org.evenfall.wizard.form.FormPrompt;
import org.evenfall.wizard.form.Help;
import org.evenfall.wizard.form.LineList;
import org.evenfall.wizard.form.Slot;

/** Where the trays go, how they are read, how often to drive. */
public final class PlacesPrompt extends FormPrompt {

    private final Runnable print;

    /**
     * @param picture of the step
     * @param print writes the field sheet
     */
    public PlacesPrompt(Form form, Supplier<? extends Node> picture, Runnable print) {
        super("6a", form, picture);
        this.print = print;
    }

    @Override
    public Node entries() {
        return new VBox(
                kind(),
                sizes(),
                form().choice(TrayPaths.SURFACE),
                form().row(
                                form().choice(TrayPaths.TRAYS_LEVEL),
                                form().choice(TrayPaths.TUBES_DRY),
                                form().choice(TrayPaths.CLEAR_OF_WHEELMARKS)),
                form().row(
                                FigureRow.of(
                                        form(),
                                        () -> TrayPlanLines.runs(
                                                form().words(),
                                                form().model()
                                                        .assessment()
                                                        .trays()
                                                        .plan())),
                                form().button("sheet.printField", print)));
    }

    /** Number, size and reading of the trays, the bore of a tube where heights are read; where the wheels run. */
    private Node sizes() {
        return Slot.rebuiltOn(form(), () -> form().model().setup().trays().catchKind(), PlacesPrompt::sizes);
    }

    private static Node sizes(Form form) {
        LineList trays = new LineList(form)
                .quantity(TrayPaths.TRAY_COUNT, TrayPaths.TRAYS.only())
                .quantity(TrayPaths.TRAY_LENGTH, TrayPaths.TRAYS.only())
                .quantity(TrayPaths.TRAY_WIDTH, TrayPaths.TRAYS.only());
        LineList reading = new LineList(form).quantity(TrayPaths.READING_STEP, TrayPaths.TRAYS.only());
        if (form.model().setup().trays().catchKind() == AmountKind.HEIGHT) {
            reading.quantity(TrayPaths.TUBE_BORE, TrayPaths.TRAYS.only());
        }
        reading.quantity(TrayPaths.TRACK, TrayPaths.WHEELS.only()).quantity(TrayPaths.TYRE, TrayPaths.WHEELS.only());
        return LineList.sideBySide(trays, reading);
    }

    /** How a tray is read; a unit that no longer fits changes with it. */
    private Node kind() {
        return form().choice(
                        TrayPaths.CATCH_KIND,
                        TrayPaths.TRAYS
                                .only()
                                .then(TrayPaths.CATCH_KIND.name(), TrayEntries::catchKind, CatchKindChange::to));
    }

    @Override
    public boolean holds(String pointer) {
        // how often to drive, with which trays, what that adds to the strip
        return pointer.equals(TrayPaths.TRAYS.only().pointer());
    }

    @Override
    public boolean mayHurt() {
        return true;
    }

    @Override
    public Help help() {
        return Help.terms("tramline", "midway", "run").from("source.trayPlaces", "source.countingNoise");
    }
}
