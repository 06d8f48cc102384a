package org.evenfall.wizard;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Supplier;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.VBox;
import org.evenfall.finding.Arg;
import org.evenfall.quantity.EnteredQuantity;
import org.evenfall.quantity.Unit;
import org.evenfall.setup.TrayTestDraft;
import org.evenfall.setup.entry.TestConditionEntries;
import org.evenfall.setup.entry.TrayTestEntry;
import org.evenfall.setup.path.EntryPath;
import org.evenfall.setup.path.TestConditionPaths;
import org.evenfall.setup.path.TrayPaths;
import org.evenfall.trays.TrayLayout;
import org.evenfall.trays.TrayLayouts;
import org.evenfall.wizard.form.CatchLine;
import org.evenfall.wizard.form.Form;
import org.evenfall.wizard.form.RepeatedPart;
import org.evenfall.wizard.form.SettingsForm;
import org.evenfall.wizard.form.VisibleWhen;

/** Step 6, while testing: every test with the settings of the machine and the catches. */
final class TrayTestForm {

    private static final EntryPath<List<TrayTestEntry>> TESTS = TrayPaths.TESTS.path();

    private final Form form;

    TrayTestForm(Form form) {
        this.form = form;
    }

    /** All tests, oldest first, and the way to the next. */
    Node tests() {
        VBox tests = new RepeatedPart(
                form,
                () -> TESTS.get(form.model().setup()).size(),
                () -> List.of(count(), form.model().setup().trays().catchKind(), byFactor()),
                (part, index) -> new TrayTestForm(part).test(index));
        tests.setId(TESTS.pointer());
        tests.getStyleClass().add("tests");
        Button begin = form.button(
                "trays.newTest",
                () -> form.model()
                        .change(setup -> TrayTestDraft.added(setup, form.model().assessment(), form::numberText)));
        return form.group(
                "trays.tests",
                form.sentence("trays.testsHow"),
                tests,
                ConfirmConditions.button(form, "trays.assumed"),
                form.row(begin));
    }

    private boolean byFactor() {
        return form.model().setup().machine().rateSetting().byFactor();
    }

    private int count() {
        return planned().isEmpty() ? TrayLayouts.USUAL_TRAYS : planned().size();
    }

    private Node test(int index) {
        EntryPath<TrayTestEntry> place = TrayPaths.TESTS.item(index);
        Node settings = SettingsForm.of(form, TrayPaths.TEST_SETTINGS.at(place));
        Label title = new Label(form.words().text("form.test", Arg.count(index + 1L)));
        title.getStyleClass().add("test-title");
        VBox box = new VBox(
                title,
                form.row(
                        form.text(TrayPaths.TEST_DATE, place),
                        form.quantity(TrayPaths.TEST_RUNS, place),
                        form.quantity(TrayPaths.TEST_WIND, place),
                        form.quantity(TrayPaths.TEST_OPENING_LEFT, place),
                        VisibleWhen.when(form, () -> !byFactor(), form.quantity(TrayPaths.TEST_OPENING_RIGHT, place))),
                settings,
                conditions(place),
                trays(index, place),
                form.findings(place.pointer()),
                form.text(TrayPaths.TEST_REMARK, place),
                remove(index));
        box.getStyleClass().add("test");
        return box;
    }

    /** What else the test was driven under, filled in when the test is begun. */
    private Node conditions(EntryPath<TrayTestEntry> place) {
        EntryPath<TestConditionEntries> at = TrayPaths.TEST_CONDITIONS.at(place);
        return form.row(
                form.quantity(TestConditionPaths.TRAMLINE_WIDTH, at),
                form.choice(TestConditionPaths.DRIVING_PATTERN, TestConditionPaths.DRIVING_PATTERN.at(at)),
                form.quantity(TestConditionPaths.HEIGHT_OVER_RIM, at),
                form.quantity(TestConditionPaths.SPEED, at),
                form.quantity(TestConditionPaths.PRODUCT_RATE, at),
                form.text(TestConditionPaths.PRODUCT, at),
                form.text(TestConditionPaths.DELIVERY, at),
                form.quantity(TestConditionPaths.BULK_DENSITY, at),
                form.quantity(TestConditionPaths.MEDIAN_SIZE, at),
                form.text(TestConditionPaths.STRIP, at));
    }

    /** Catches and true positions, made anew when the test gets positions or other ones. */
    private Node trays(int index, EntryPath<TrayTestEntry> place) {
        return new RepeatedPart(
                form,
                () -> 1,
                () -> place.get(form.model().setup()).positions().size(),
                (part, only) -> new TrayTestForm(part).catchesAndPositions(index, place));
    }

    private Node catchesAndPositions(int index, EntryPath<TrayTestEntry> place) {
        int trays = fields(index, place);
        return new VBox(
                CatchLine.named(form, TrayPaths.TEST_CATCHES, place, trays, tray -> position(index, tray, trays))
                        .node(),
                moved(index, place, trays));
    }

    /** Where the trays of a test are, m; empty while it is not known. */
    private List<Double> places(int index) {
        List<List<Double>> all = form.model().assessment().trays().placesM();
        return index < all.size() ? all.get(index) : List.of();
    }

    private int fields(int index, EntryPath<TrayTestEntry> place) {
        int known = places(index).size();
        int caught = place.get(form.model().setup()).catches().size();
        return Math.max(known == 0 ? count() : known, caught);
    }

    /** The place of a tray; its number while the places are not known. */
    private String position(int index, int tray, int trays) {
        List<Double> places = places(index);
        if (places.size() != trays) {
            return Integer.toString(tray + 1);
        }
        double metres = places.get(tray);
        boolean whole = Math.abs(metres - Math.rint(metres)) < 0.05;
        return form.words().number(metres, whole ? 0 : 1, Unit.M);
    }

    /** True positions, to be changed where trays had to be moved; for a test without any hidden until asked for. */
    private Node moved(int index, EntryPath<TrayTestEntry> place, int trays) {
        EntryPath<List<EnteredQuantity>> list = TrayPaths.TEST_POSITIONS.at(place);
        Node line = CatchLine.named(form, TrayPaths.TEST_POSITIONS, place, trays, tray -> Integer.toString(tray + 1))
                .node();
        return new VBox(
                VisibleWhen.when(
                        form,
                        () -> list.get(form.model().setup()).isEmpty(),
                        fill("trays.moved", index, list, () -> known(index))),
                VisibleWhen.when(form, () -> !list.get(form.model().setup()).isEmpty(), line),
                VisibleWhen.when(
                        form,
                        () -> isOfAnotherNumber(list.get(form.model().setup())),
                        fill("trays.asPlanned", index, list, this::planned)));
    }

    private boolean isOfAnotherNumber(List<EnteredQuantity> positions) {
        return !positions.isEmpty()
                && !planned().isEmpty()
                && positions.size() != planned().size();
    }

    private Button fill(String key, int index, EntryPath<List<EnteredQuantity>> list, Supplier<List<Double>> placesM) {
        Button button = new Button(form.words().text(key));
        button.setId(key + "." + index);
        button.getStyleClass().add("quiet");
        button.setOnAction(event -> form.model()
                .change(setup -> list.set(setup, TrayTestDraft.positions(placesM.get(), form::numberText))));
        return button;
    }

    private List<Double> known(int index) {
        return places(index).isEmpty() ? planned() : places(index);
    }

    private List<Double> planned() {
        TrayLayout layout = form.model().assessment().trays().layout();
        return layout == null ? List.of() : layout.positionsM();
    }

    private Node remove(int index) {
        Button button = form.button(
                "form.removeTest",
                () -> form.model().remove(setup -> {
                    List<TrayTestEntry> rest = new ArrayList<>(TESTS.get(setup));
                    rest.remove(index);
                    return TESTS.set(setup, rest);
                }));
        button.setFocusTraversable(false);
        button.getStyleClass().add("quiet");
        return button;
    }
}
