package org.evenfall.wizard;

import javafx.scene.Node;
import org.evenfall.result.TrayPlanLines;
import org.evenfall.setup.CatchKindChange;
import org.evenfall.setup.entry.AmountKind;
import org.evenfall.setup.entry.TrayEntries;
import org.evenfall.setup.entry.WindLimitEntries;
import org.evenfall.setup.path.MachineCheckPaths;
import org.evenfall.setup.path.TrayPaths;
import org.evenfall.wizard.form.Disclosure;
import org.evenfall.wizard.form.FigureRow;
import org.evenfall.wizard.form.Form;
import org.evenfall.wizard.form.SourceLine;
import org.evenfall.wizard.form.VisibleWhen;

/** Step 6, before driving: the trays, how they are read, the weather, the ground. */
final class TraysBeforeForm {

    private final Form form;

    TraysBeforeForm(Form form) {
        this.form = form;
    }

    Node trays() {
        return form.group(
                "trays.layout",
                form.sentence("trays.beforeHow"),
                form.row(
                        form.quantity(TrayPaths.TRAY_LENGTH),
                        form.quantity(TrayPaths.TRAY_WIDTH),
                        form.quantity(TrayPaths.TRAY_COUNT)),
                form.choice(
                        TrayPaths.CATCH_KIND,
                        // a unit that no longer fits changes with it
                        TrayPaths.TRAYS
                                .only()
                                .then(TrayPaths.CATCH_KIND.name(), TrayEntries::catchKind, CatchKindChange::to)),
                form.row(
                        form.quantity(TrayPaths.READING_STEP),
                        VisibleWhen.when(
                                form,
                                () -> form.model().setup().trays().catchKind() == AmountKind.HEIGHT,
                                form.quantity(TrayPaths.TUBE_BORE))),
                form.row(form.quantity(TrayPaths.TRACK), form.quantity(TrayPaths.TYRE)),
                form.findings(TrayPaths.WHEELS.only().pointer()),
                form.findings(TrayPaths.TRAYS.only().pointer()),
                FigureRow.of(
                        form,
                        () -> TrayPlanLines.runs(
                                form.words(), form.model().assessment().trays().plan())),
                SourceLine.when(form, () -> form.model().assessment().trays().plan() != null, "source.countingNoise"));
    }

    Node ground() {
        return form.group(
                "trays.before",
                form.quantity(TrayPaths.WIND),
                limits(),
                form.choice(TrayPaths.SURFACE),
                form.row(
                        form.choice(TrayPaths.TRAYS_LEVEL),
                        form.choice(TrayPaths.TUBES_DRY),
                        form.choice(TrayPaths.CLEAR_OF_WHEELMARKS)),
                form.findings(MachineCheckPaths.MACHINE_CHECK.only().pointer()));
    }

    /** Own limits for the wind; hidden until asked for. */
    private Node limits() {
        return new Disclosure(
                form,
                "trays.windLimitsAsk",
                () -> !form.model().setup().trays().windLimits().equals(WindLimitEntries.EMPTY),
                form.row(
                        form.quantity(TrayPaths.WIND_NOTE),
                        form.quantity(TrayPaths.WIND_WARN),
                        form.quantity(TrayPaths.WIND_STOP)),
                form.findings(TrayPaths.WIND_LIMITS.only().pointer()),
                form.sentence("trays.windLimitsWhy"),
                SourceLine.of(form, "source.wind"));
    }
}
