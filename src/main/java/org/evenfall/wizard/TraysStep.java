package org.evenfall.wizard;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.VBox;
import org.evenfall.finding.Arg;
import org.evenfall.finding.Finding;
import org.evenfall.finding.Step;
import org.evenfall.machine.Side;
import org.evenfall.quantity.Typed;
import org.evenfall.quantity.Unit;
import org.evenfall.rate.BucketResult;
import org.evenfall.setup.FieldSpec;
import org.evenfall.setup.Fields;
import org.evenfall.setup.TraysResult;
import org.evenfall.setup.entry.AmountKind;
import org.evenfall.setup.entry.SettingsEntries;
import org.evenfall.setup.entry.Setup;
import org.evenfall.setup.entry.TrayEntries;
import org.evenfall.setup.entry.TrayTestEntry;
import org.evenfall.setup.entry.YesNo;
import org.evenfall.trays.Advice;
import org.evenfall.trays.Evenness;
import org.evenfall.trays.LeverMove;
import org.evenfall.trays.Surface;
import org.evenfall.wizard.picture.CvPicture;
import org.evenfall.wizard.picture.PictureStack;
import org.evenfall.wizard.picture.TrayPlanPicture;
import org.evenfall.wizard.picture.TubesPicture;
import org.jspecify.annotations.Nullable;

/** Step 6: the tray test, before, while and after. */
final class TraysStep implements StepView {

    private static final Lens<TrayEntries> TRAYS = Places.TRAYS;
    private static final Lens<List<TrayTestEntry>> TESTS = TRAYS.then(TrayEntries::tests, TrayEntries::withTests);

    private final Form form;
    private final PictureStack picture;

    TraysStep(Form form) {
        this.form = form;
        TrayPlanPicture plan = new TrayPlanPicture(form.words());
        TubesPicture tubes = new TubesPicture(form.words());
        CvPicture cv = new CvPicture(form.words());
        this.picture = new PictureStack(plan, tubes, cv);
        form.follow(() -> {
            TraysResult trays = form.model().assessment().trays();
            plan.show(trays.layout());
            tubes.show(trays.tests());
            cv.show(trays.tests(), trays.advice());
        });
    }

    @Override
    public Step step() {
        return Step.TRAYS;
    }

    @Override
    public Node picture() {
        return picture;
    }

    @Override
    public String result() {
        TraysResult trays = form.model().assessment().trays();
        if (trays.tests().isEmpty()) {
            return "";
        }
        Evenness last = trays.tests().get(trays.tests().size() - 1).evenness();
        return form.words().text("trays.cvShort", Arg.number(last.cvPercent(), 0, Unit.PERCENT));
    }

    @Override
    public Node entries() {
        VBox tests = new VBox();
        List<String> shown = new ArrayList<>();
        form.follow(() -> {
            // tests are drawn anew only when their number, trays or way of reading change
            String now = TESTS.get(form.model().setup()).size() + "/" + count() + "/"
                    + form.model().setup().trays().catchKind();
            if (!shown.contains(now)) {
                shown.clear();
                shown.add(now);
                tests.getChildren().setAll(tests());
            }
        });
        return new VBox(before(), tests, outcome(), edges());
    }

    private Node before() {
        Label runs = new Label();
        runs.setWrapText(true);
        runs.getStyleClass().add("figure-line");
        form.follow(() -> {
            var plan = form.model().assessment().trays().plan();
            runs.setText(
                    plan == null
                            ? ""
                            : form.words()
                                    .text(
                                            "trays.planResult",
                                            Arg.number(plan.catchPerRunG(), 1, Unit.G),
                                            Arg.number(plan.granulesPerRun(), 0, Unit.NONE),
                                            Arg.count(plan.runsNeeded()),
                                            Arg.number(plan.noiseAtRunsPercent(), 0, Unit.PERCENT)));
        });
        return form.group(
                "trays.before",
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
                                TRAYS.then(TrayEntries::trayCount, TrayEntries::withTrayCount)),
                        form.typed(
                                "field.wind",
                                Fields.WIND,
                                "/trays/wind",
                                TRAYS.then(TrayEntries::wind, TrayEntries::withWind))),
                form.choice(
                        "trays.kind",
                        "/trays/catchKind",
                        TRAYS.then(TrayEntries::catchKind, TrayEntries::withCatchKind),
                        List.of(AmountKind.MASS, AmountKind.VOLUME, AmountKind.HEIGHT)),
                form.row(
                        form.typed(
                                "field.readingStep",
                                Fields.READING_STEP,
                                "/trays/readingStep",
                                TRAYS.then(TrayEntries::readingStep, TrayEntries::withReadingStep)),
                        form.typed(
                                "field.tubeBore",
                                Fields.TUBE_BORE,
                                "/trays/tubeBore",
                                TRAYS.then(TrayEntries::tubeBore, TrayEntries::withTubeBore))),
                form.choice(
                        "trays.surface",
                        "/trays/surface",
                        TRAYS.then(TrayEntries::surface, TrayEntries::withSurface),
                        Form.answers(Surface.class)),
                form.row(
                        form.choice(
                                "trays.level",
                                "/trays/traysLevel",
                                TRAYS.then(TrayEntries::traysLevel, TrayEntries::withTraysLevel),
                                Form.answers(YesNo.class)),
                        form.choice(
                                "trays.dry",
                                "/trays/tubesDry",
                                TRAYS.then(TrayEntries::tubesDry, TrayEntries::withTubesDry),
                                Form.answers(YesNo.class)),
                        form.choice(
                                "trays.aside",
                                "/trays/clearOfWheelmarks",
                                TRAYS.then(TrayEntries::clearOfWheelmarks, TrayEntries::withClearOfWheelmarks),
                                Form.answers(YesNo.class))),
                runs);
    }

    private int count() {
        var layout = form.model().assessment().trays().layout();
        return layout == null ? 7 : layout.positionsM().size();
    }

    private List<Node> tests() {
        List<Node> nodes = new ArrayList<>();
        int tests = TESTS.get(form.model().setup()).size();
        for (int i = 0; i < tests; i++) {
            nodes.add(test(i));
        }
        nodes.add(form.row(form.button("trays.newTest", () -> form.model().change(this::withNewTest))));
        return nodes;
    }

    private Node test(int index) {
        String at = "/trays/tests/" + index;
        Lens<TrayTestEntry> place = Lens.item(TESTS, index, TrayTestEntry.EMPTY);
        VBox settings = new VBox();
        SettingsForm.follow(
                form, settings, at + "/settings", place.then(TrayTestEntry::settings, TrayTestEntry::withSettings));
        VBox box = form.group(
                "trays.test",
                form.row(
                        form.text("trays.date", at + "/date", place.then(TrayTestEntry::date, TrayTestEntry::withDate)),
                        form.typed(
                                "field.runs",
                                Fields.RUNS,
                                at + "/runs",
                                place.then(TrayTestEntry::runs, TrayTestEntry::withRuns)),
                        form.typed(
                                "field.wind",
                                Fields.WIND,
                                at + "/wind",
                                place.then(TrayTestEntry::wind, TrayTestEntry::withWind))),
                settings,
                catches(place, at),
                form.told(at + "/catches"),
                form.text(
                        "trays.remark", at + "/remark", place.then(TrayTestEntry::remark, TrayTestEntry::withRemark)));
        ((Label) box.getChildren().get(0)).setText(form.words().text("trays.test", Arg.count(index + 1L)));
        return box;
    }

    /** One field a tray, side by side as they stand; Enter goes to the next. */
    private Node catches(Lens<TrayTestEntry> place, String at) {
        AmountKind kind = form.model().setup().trays().catchKind();
        FieldSpec spec = kind == AmountKind.VOLUME
                ? Fields.CATCH_VOLUME
                : kind == AmountKind.HEIGHT ? Fields.CATCH_HEIGHT : Fields.CATCH_MASS;
        Lens<List<Typed>> list = place.then(TrayTestEntry::catches, TrayTestEntry::withCatches);
        GridPane grid = new GridPane();
        grid.getStyleClass().add("rows");
        List<TextField> fields = new ArrayList<>();
        int trays = Math.max(count(), list.get(form.model().setup()).size());
        var layout = form.model().assessment().trays().layout();
        for (int i = 0; i < trays; i++) {
            String position = layout == null || i >= layout.positionsM().size()
                    ? Integer.toString(i + 1)
                    : form.words().number(layout.positionsM().get(i), 1, Unit.M);
            Label header = new Label(position);
            header.getStyleClass().add("column-header");
            TextField field = new TextField();
            field.setId(at + "/catches/" + i);
            field.setPrefColumnCount(4);
            field.setAccessibleText(form.words().text("trays.catchAt", Arg.text(position)));
            form.bind(field, Lens.item(list, i, Typed.EMPTY), spec);
            int next = i + 1;
            field.setOnAction(event -> {
                if (next < fields.size()) {
                    fields.get(next).requestFocus();
                }
            });
            fields.add(field);
            grid.add(header, i % 11, 2 * (i / 11));
            grid.add(field, i % 11, 2 * (i / 11) + 1);
        }
        Label label = new Label(
                form.words().text("trays.catches", Arg.text(spec.base().symbol())));
        label.getStyleClass().add("entry-label");
        return new VBox(label, grid);
    }

    /** A new test begins with what was advised, else with what the last one had, else with the settings to start from. */
    private Setup withNewTest(Setup setup) {
        List<TrayTestEntry> tests = new ArrayList<>(setup.trays().tests());
        SettingsEntries settings = tests.isEmpty()
                ? setup.match().settings()
                : tests.get(tests.size() - 1).settings();
        Advice advice = form.model().assessment().trays().advice();
        if (advice != null && !tests.isEmpty()) {
            Map<String, Typed> levers = new LinkedHashMap<>(settings.levers());
            for (LeverMove move : advice.moves()) {
                levers.put(move.lever(), new Typed(form.plain(move.to()), Unit.NONE));
            }
            settings = settings.withLevers(levers);
        }
        var plan = form.model().assessment().trays().plan();
        List<BucketResult> buckets = form.model().assessment().rate().bucketTests();
        BucketResult bucket = buckets.isEmpty() ? null : buckets.get(buckets.size() - 1);
        tests.add(TrayTestEntry.EMPTY
                .withSettings(settings)
                .withDate(setup.card().date())
                .withWind(setup.trays().wind())
                .withRuns(plan == null ? Typed.EMPTY : new Typed(Integer.toString(plan.runsNeeded()), Unit.NONE))
                .withOpeningLeft(bucket == null ? Typed.EMPTY : new Typed(form.plain(bucket.openingLeft()), Unit.NONE))
                .withOpeningRight(
                        bucket == null ? Typed.EMPTY : new Typed(form.plain(bucket.openingRight()), Unit.NONE)));
        return setup.withTrays(setup.trays().withTests(tests));
    }

    private Node outcome() {
        Label figure = new Label();
        figure.getStyleClass().add("result-figure");
        Label next = new Label();
        next.setWrapText(true);
        next.getStyleClass().addAll("figure-line", "next");
        VBox reasons = new VBox();
        form.follow(() -> {
            TraysResult trays = form.model().assessment().trays();
            figure.setText(trays.tests().isEmpty() ? "" : cv(trays));
            next.setText(advice(trays.advice()));
            reasons.getChildren().clear();
            if (trays.advice() != null) {
                for (Finding reason : trays.advice().reasons()) {
                    reasons.getChildren().add(Told.line(form.words(), reason));
                }
            }
        });
        return form.group("trays.result", figure, next, reasons);
    }

    private String cv(TraysResult trays) {
        Evenness last = trays.tests().get(trays.tests().size() - 1).evenness();
        return form.words()
                .text(
                        "trays.cvResult",
                        Arg.number(last.cvPercent(), 0, Unit.PERCENT),
                        Arg.number(last.cvLowPercent(), 0, Unit.PERCENT),
                        Arg.number(last.cvHighPercent(), 0, Unit.PERCENT),
                        Arg.word("choice.EvennessVerdict." + last.verdict()));
    }

    private String advice(@Nullable Advice advice) {
        if (advice == null) {
            return "";
        }
        if (advice.moves().isEmpty()
                || advice.expectedCvPercent() == null
                || advice.expectedCvLowPercent() == null
                || advice.expectedCvHighPercent() == null) {
            return form.words().choice(advice.kind()) + ".";
        }
        LeverMove move = advice.moves().get(0);
        return form.words()
                .text(
                        "trays.move",
                        Arg.text(move.lever()),
                        Arg.text(form.plain(move.from())),
                        Arg.text(form.plain(move.to())),
                        Arg.number(advice.expectedCvPercent(), 0, Unit.PERCENT),
                        Arg.number(advice.expectedCvLowPercent(), 0, Unit.PERCENT),
                        Arg.number(advice.expectedCvHighPercent(), 0, Unit.PERCENT));
    }

    private Node edges() {
        return form.group(
                "trays.edges",
                form.sentence("trays.edgesHow"),
                form.row(
                        form.text(
                                "trays.borderDevice",
                                "/trays/borderDevice",
                                TRAYS.then(TrayEntries::borderDevice, TrayEntries::withBorderDevice)),
                        form.choice(
                                "trays.borderSide",
                                "/trays/borderSide",
                                TRAYS.then(TrayEntries::borderSide, TrayEntries::withBorderSide),
                                Form.answers(Side.class)),
                        form.typed(
                                "trays.switchOn",
                                Fields.SWITCH_DISTANCE,
                                "/trays/switchOn",
                                TRAYS.then(TrayEntries::switchOn, TrayEntries::withSwitchOn)),
                        form.typed(
                                "trays.switchOff",
                                Fields.SWITCH_DISTANCE,
                                "/trays/switchOff",
                                TRAYS.then(TrayEntries::switchOff, TrayEntries::withSwitchOff))));
    }
}
