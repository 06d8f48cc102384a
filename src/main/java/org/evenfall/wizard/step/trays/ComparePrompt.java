package org.evenfall.wizard.step.trays;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.control.MenuButton;
import javafx.scene.control.MenuItem;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import org.evenfall.finding.Arg;
import org.evenfall.quantity.Unit;
import org.evenfall.setup.Assessment;
import org.evenfall.setup.SetupComparison;
import org.evenfall.trays.TestChange;
import org.evenfall.trays.Uniformity;
import org.evenfall.wizard.form.Form;
import org.evenfall.wizard.form.Help;
import org.evenfall.wizard.form.Lazy;
import org.evenfall.wizard.form.Prompt;
import org.evenfall.wizard.form.Wrapped;
import org.evenfall.wizard.picture.TestComparisonPicture;
import org.evenfall.wizard.picture.TrayBarsPicture;
import org.jspecify.annotations.Nullable;

/** The tests of this setup in a table, and the last of them with that of another setup, machine or year. */
public final class ComparePrompt implements Prompt {

    private final Form form;
    private final OtherSetups others;
    private final Lazy<TrayBarsPicture> own;
    private final Lazy<TestComparisonPicture> both;
    private final Lazy<StackPane> picture;
    private final Lazy<Label> chance;
    private @Nullable Path otherFile;
    private TestComparisonPicture.@Nullable Test other;

    /** @param others setups to compare with */
    public ComparePrompt(Form form, OtherSetups others) {
        this.form = form;
        this.others = others;
        this.own = new Lazy<>(() -> new TrayBarsPicture(form.words()));
        this.both = new Lazy<>(() -> new TestComparisonPicture(form.words()));
        this.picture = new Lazy<>(() -> new StackPane(own.get(), both.get()));
        this.chance = new Lazy<>(() -> Wrapped.label("", "sentence"));
    }

    @Override
    public String id() {
        return "6f";
    }

    @Override
    public Node picture() {
        return picture.get();
    }

    @Override
    public Node entries() {
        MenuButton choose = new MenuButton(form.words().text("trays.beside.choose"));
        choose.setId("trays.beside.choose");
        choose.setOnShowing(event -> choose.getItems().setAll(items()));
        choose.getItems().setAll(none());
        form.follow(this::refresh);
        return new VBox(TestTable.of(form), form.row(choose), chance.get());
    }

    private List<MenuItem> items() {
        List<MenuItem> items = others.files().stream().map(this::item).toList();
        return items.isEmpty() ? List.of(none()) : items;
    }

    /** Without an entry the menu would not open. */
    private MenuItem none() {
        MenuItem none = new MenuItem(form.words().text("start.none"));
        none.setDisable(true);
        return none;
    }

    private MenuItem item(Path file) {
        MenuItem item = new MenuItem(others.name(file));
        item.setMnemonicParsing(false);
        item.setOnAction(event -> others.assessed(file).ifPresent(assessment -> {
            otherFile = file;
            other = last(assessment, others.name(file));
            refresh();
            if (other == null) {
                chance.get().setText(form.words().text("trays.beside.none"));
            }
        }));
        return item;
    }

    private void refresh() {
        own.get().show(form.model().assessment().trays().comparable());
        TestComparisonPicture.Test mine =
                last(form.model().assessment(), form.words().text("trays.beside.own"));
        TestComparisonPicture.Test chosen = named();
        boolean compared = mine != null && chosen != null;
        own.get().setVisible(!compared);
        both.get().setVisible(compared);
        chance.get().setText("");
        if (mine != null && chosen != null) {
            TestChange change = SetupComparison.of(chosen.evenness(), mine.evenness());
            chance.get()
                    .setText(form.words()
                            .text(
                                    "trays.beside.chance",
                                    Arg.number(change.tellableChancePercent(), 0, Unit.PERCENT),
                                    Arg.text(chosen.name())));
            both.get().show(mine, chosen);
        }
    }

    /** The other test under its name as it is shown now. */
    private TestComparisonPicture.@Nullable Test named() {
        TestComparisonPicture.Test chosen = other;
        Path file = otherFile;
        return chosen == null || file == null
                ? null
                : new TestComparisonPicture.Test(others.name(file), chosen.evenness(), chosen.tramlineWidthM());
    }

    /** The last test that can be read; null while there is none. */
    private static TestComparisonPicture.@Nullable Test last(Assessment assessment, String name) {
        Uniformity last = SetupComparison.lastTest(assessment);
        Double width = assessment.tramlineWidthM();
        return last == null || width == null ? null : new TestComparisonPicture.Test(name, last, width);
    }

    @Override
    public Optional<Boolean> answered() {
        return Optional.of(other != null);
    }

    @Override
    public Help help() {
        return Help.terms("trayCv", "fieldCv").from("source.fieldCv");
    }
}
