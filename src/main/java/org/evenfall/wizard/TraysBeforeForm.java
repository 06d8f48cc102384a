package org.evenfall.wizard;

import java.util.List;
import java.util.function.BiFunction;
import java.util.function.Function;
import javafx.scene.Node;
import org.evenfall.quantity.EnteredQuantity;
import org.evenfall.quantity.Unit;
import org.evenfall.setup.CatchKindChange;
import org.evenfall.setup.Fields;
import org.evenfall.setup.entry.AmountKind;
import org.evenfall.setup.entry.TrayEntries;
import org.evenfall.setup.entry.WheelEntries;
import org.evenfall.setup.entry.WindLimitEntries;
import org.evenfall.setup.entry.YesNo;
import org.evenfall.trays.CatchPlan;
import org.evenfall.trays.Surface;
import org.evenfall.wizard.form.Choices;
import org.evenfall.wizard.form.Disclosure;
import org.evenfall.wizard.form.EntryPath;
import org.evenfall.wizard.form.FigureRow;
import org.evenfall.wizard.form.Form;
import org.evenfall.wizard.form.VisibleWhen;

/** Step 6, before driving: the trays, how they are read, the weather, the ground. */
final class TraysBeforeForm {

    private static final EntryPath<TrayEntries> TRAYS = Places.TRAYS;

    private static final EntryPath<WheelEntries> WHEELS = TRAYS.then(TrayEntries::wheels, TrayEntries::withWheels);
    private static final EntryPath<WindLimitEntries> LIMITS =
            TRAYS.then(TrayEntries::windLimits, TrayEntries::withWindLimits);

    private final Form form;

    TraysBeforeForm(Form form) {
        this.form = form;
    }

    Node trays() {
        return form.group(
                "trays.layout",
                form.sentence("trays.beforeHow"),
                form.row(
                        form.typed(
                                "trays.length",
                                Fields.TRAY_SIDE,
                                "/trays/trayLength",
                                TRAYS.then(TrayEntries::trayLength, TrayEntries::withTrayLength)),
                        form.typed(
                                "trays.width",
                                Fields.TRAY_SIDE,
                                "/trays/trayWidth",
                                TRAYS.then(TrayEntries::trayWidth, TrayEntries::withTrayWidth)),
                        form.typed(
                                "field.trayCount",
                                Fields.TRAY_COUNT,
                                "/trays/trayCount",
                                TRAYS.then(TrayEntries::trayCount, TrayEntries::withTrayCount))),
                form.choice(
                        "trays.kind",
                        "/trays/catchKind",
                        TRAYS.then(TrayEntries::catchKind, CatchKindChange::to),
                        List.of(AmountKind.MASS, AmountKind.VOLUME, AmountKind.HEIGHT)),
                form.row(
                        form.typed(
                                "field.readingStep",
                                Fields.READING_STEP,
                                "/trays/readingStep",
                                TRAYS.then(TrayEntries::readingStep, TrayEntries::withReadingStep)),
                        VisibleWhen.when(
                                form,
                                () -> form.model().setup().trays().catchKind() == AmountKind.HEIGHT,
                                form.typed(
                                        "field.tubeBore",
                                        Fields.TUBE_BORE,
                                        "/trays/tubeBore",
                                        TRAYS.then(TrayEntries::tubeBore, TrayEntries::withTubeBore)))),
                form.row(
                        form.typed(
                                "field.track",
                                Fields.TRACK,
                                "/trays/wheels/track",
                                WHEELS.then(WheelEntries::track, WheelEntries::withTrack)),
                        form.typed(
                                "field.tyre",
                                Fields.TYRE,
                                "/trays/wheels/tyre",
                                WHEELS.then(WheelEntries::tyre, WheelEntries::withTyre))),
                form.findings("/trays/wheels"),
                new FigureRow(form, this::runs));
    }

    Node ground() {
        return form.group(
                "trays.before",
                form.typed(
                        "field.wind", Fields.WIND, "/trays/wind", TRAYS.then(TrayEntries::wind, TrayEntries::withWind)),
                limits(),
                form.choice(
                        "trays.surface",
                        "/trays/surface",
                        TRAYS.then(TrayEntries::surface, TrayEntries::withSurface),
                        Choices.answers(Surface.class)),
                form.row(
                        form.choice(
                                "trays.level",
                                "/trays/traysLevel",
                                TRAYS.then(TrayEntries::traysLevel, TrayEntries::withTraysLevel),
                                Choices.answers(YesNo.class)),
                        form.choice(
                                "trays.dry",
                                "/trays/tubesDry",
                                TRAYS.then(TrayEntries::tubesDry, TrayEntries::withTubesDry),
                                Choices.answers(YesNo.class)),
                        form.choice(
                                "trays.aside",
                                "/trays/clearOfWheelmarks",
                                TRAYS.then(TrayEntries::clearOfWheelmarks, TrayEntries::withClearOfWheelmarks),
                                Choices.answers(YesNo.class))),
                form.findings("/yard"));
    }

    /** Own limits for the wind; hidden until asked for. */
    private Node limits() {
        return new Disclosure(
                form,
                "trays.windLimitsAsk",
                () -> !form.model().setup().trays().windLimits().equals(WindLimitEntries.EMPTY),
                form.row(
                        limit("trays.windNoteAbove", "note", WindLimitEntries::note, WindLimitEntries::withNote),
                        limit("trays.windWarnAbove", "warn", WindLimitEntries::warn, WindLimitEntries::withWarn),
                        limit("trays.windStopAbove", "stop", WindLimitEntries::stop, WindLimitEntries::withStop)),
                form.findings("/trays/windLimits"),
                form.sentence("trays.windLimitsWhy"));
    }

    private Node limit(
            String label,
            String name,
            Function<WindLimitEntries, EnteredQuantity> get,
            BiFunction<WindLimitEntries, EnteredQuantity, WindLimitEntries> with) {
        return form.typed(label, Fields.WIND_LIMIT, "/trays/windLimits/" + name, LIMITS.then(get, with));
    }

    private List<FigureRow.Figure> runs() {
        CatchPlan plan = form.model().assessment().trays().plan();
        if (plan == null) {
            return List.of();
        }
        return List.of(
                new FigureRow.Figure(
                        form.words().text("trays.figure.runs"), form.words().number(plan.runsNeeded(), 0, Unit.NONE)),
                new FigureRow.Figure(
                        form.words().text("trays.figure.catch"), form.words().number(plan.catchPerRunG(), 1, Unit.G)),
                new FigureRow.Figure(
                        form.words().text("trays.figure.granules"),
                        form.words().number(plan.granulesPerRun(), 0, Unit.NONE)),
                new FigureRow.Figure(
                        form.words().text("trays.figure.noise"),
                        form.words().number(plan.noiseAtRunsPercent(), 0, Unit.PERCENT)));
    }
}
