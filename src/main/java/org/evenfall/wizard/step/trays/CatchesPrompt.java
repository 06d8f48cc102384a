package org.evenfall.wizard.step.trays;

import java.util.List;
import java.util.Optional;
import java.util.function.IntConsumer;
import java.util.function.Supplier;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.layout.VBox;
import org.evenfall.quantity.EnteredQuantity;
import org.evenfall.quantity.Unit;
import org.evenfall.setup.TrayTestDraft;
import org.evenfall.setup.entry.TrayTestEntry;
import org.evenfall.setup.path.EntryPath;
import org.evenfall.setup.path.TrayPaths;
import org.evenfall.wizard.form.CatchLine;
import org.evenfall.wizard.form.Form;
import org.evenfall.wizard.form.FormPrompt;
import org.evenfall.wizard.form.Help;
import org.evenfall.wizard.form.Navigation;
import org.evenfall.wizard.form.OneTest;
import org.evenfall.wizard.form.VisibleWhen;

/** What each tray caught, from left to right. */
public final class CatchesPrompt extends FormPrompt {

    private final TrayTests tests;
    private final Navigation navigation;
    private final IntConsumer typing;

    /**
     * @param picture of the step
     * @param typing gets the number of the tray that is typed, from 0, and −1 when none is
     */
    public CatchesPrompt(
            Form form, Supplier<? extends Node> picture, TrayTests tests, Navigation navigation, IntConsumer typing) {
        super("6c", form, picture);
        this.tests = tests;
        this.navigation = navigation;
        this.typing = typing;
    }

    @Override
    public Node entries() {
        return new OneTest(
                form(),
                tests.shown(),
                () -> List.of(
                        tests.begun(),
                        tests.trays(tests.index()),
                        form().model().setup().trays().catchKind()),
                (part, index) -> tests.begun() ? catches(part, index) : toBefore());
    }

    /** No test was begun: it is begun where the machine's settings are. */
    private Node toBefore() {
        Button button = form().button("trays.toBefore", () -> navigation.show("6b"));
        button.getStyleClass().add("primary");
        return form().row(button);
    }

    private Node catches(Form form, int index) {
        EntryPath<TrayTestEntry> at = TrayPaths.TESTS.item(index);
        int trays = tests.trays(index);
        return new VBox(
                CatchLine.named(form, TrayPaths.TEST_CATCHES, at, trays, tray -> place(form, index, tray, trays))
                        .onFocus(typing)
                        .node(),
                moved(form, index, at, trays),
                form.row(form.text(TrayPaths.TEST_REMARK, at)));
    }

    /** The place of a tray, m; its number while the places are not known. */
    private String place(Form form, int index, int tray, int trays) {
        List<Double> places = tests.placesM(index);
        if (places.size() != trays) {
            return Integer.toString(tray + 1);
        }
        double metres = places.get(tray);
        boolean whole = Math.abs(metres - Math.rint(metres)) < 0.05;
        return form.words().number(metres, whole ? 0 : 1, Unit.NONE);
    }

    /** True positions, hidden until a tray had to be moved; filled in for a test that has none. */
    private Node moved(Form form, int index, EntryPath<TrayTestEntry> at, int trays) {
        EntryPath<List<EnteredQuantity>> list = TrayPaths.TEST_POSITIONS.at(at);
        VBox shown = new VBox(
                CatchLine.named(form, TrayPaths.TEST_POSITIONS, at, trays, tray -> Integer.toString(tray + 1))
                        .node(),
                VisibleWhen.when(
                        form,
                        () -> isOfAnotherNumber(list.get(form.model().setup())),
                        button("trays.asPlanned", index, () -> fill(list, tests.plannedM()))));
        shown.setVisible(false);
        shown.managedProperty().bind(shown.visibleProperty());
        Button ask = button("trays.moved", index, () -> {
            if (list.get(form.model().setup()).isEmpty()) {
                fill(list, tests.placesOrPlannedM(index));
            }
            shown.setVisible(true);
        });
        ask.visibleProperty().bind(shown.visibleProperty().not());
        ask.managedProperty().bind(ask.visibleProperty());
        return new VBox(ask, shown);
    }

    private boolean isOfAnotherNumber(List<EnteredQuantity> positions) {
        return !positions.isEmpty()
                && !tests.plannedM().isEmpty()
                && positions.size() != tests.plannedM().size();
    }

    private Button button(String key, int index, Runnable action) {
        Button button = form().button(key, action);
        button.setId(key + "." + index);
        button.getStyleClass().add("quiet");
        button.setFocusTraversable(false);
        return button;
    }

    private void fill(EntryPath<List<EnteredQuantity>> list, List<Double> placesM) {
        form().model().change(setup -> list.set(setup, TrayTestDraft.positions(placesM, form()::numberText)));
    }

    @Override
    public boolean holds(String pointer) {
        return tests.holds(pointer, true);
    }

    @Override
    public Optional<Boolean> answered() {
        return tests.answered();
    }

    @Override
    public boolean mayHurt() {
        return true;
    }

    @Override
    public Help help() {
        return Help.terms("run").from("source.countingNoise", "source.spoiltTray");
    }
}
