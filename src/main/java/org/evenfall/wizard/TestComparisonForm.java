package org.evenfall.wizard;

import java.nio.file.Path;
import java.util.List;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.control.MenuButton;
import javafx.scene.control.MenuItem;
import javafx.scene.layout.VBox;
import org.evenfall.finding.Arg;
import org.evenfall.quantity.Unit;
import org.evenfall.setup.Assessment;
import org.evenfall.setup.SetupComparison;
import org.evenfall.trays.TestChange;
import org.evenfall.trays.Uniformity;
import org.evenfall.wizard.form.Form;
import org.evenfall.wizard.form.VisibleWhen;
import org.evenfall.wizard.picture.TestComparisonPicture;
import org.jspecify.annotations.Nullable;

/** Step 6: the last test and that of another setup, another machine or another year, on one axis. */
final class TestComparisonForm {

    private final Form form;
    private final WizardContext context;
    private final SetupDocument document;
    private final TestComparisonPicture picture;
    private final Label chance = new Label();
    private TestComparisonPicture.@Nullable Test other;

    TestComparisonForm(Form form, WizardContext context, SetupDocument document) {
        this.form = form;
        this.context = context;
        this.document = document;
        this.picture = new TestComparisonPicture(form.words());
        chance.setWrapText(true);
        chance.getStyleClass().add("sentence");
    }

    Node node() {
        MenuButton choose = new MenuButton(form.words().text("trays.beside.choose"));
        choose.setId("trays.beside.choose");
        choose.setOnShowing(event -> choose.getItems().setAll(items()));
        choose.getItems().setAll(items());
        VBox both = new VBox(chance, picture);
        form.follow(this::refresh);
        VBox group = form.group("trays.beside", form.sentence("trays.besideHow"), choose, both);
        return VisibleWhen.when(form, () -> own(form.model().assessment(), "") != null, group);
    }

    private List<MenuItem> items() {
        List<MenuItem> items = document.recent().stream().map(this::item).toList();
        if (!items.isEmpty()) {
            return items;
        }
        MenuItem none = new MenuItem(form.words().text("start.none"));
        none.setDisable(true);
        return List.of(none);
    }

    private MenuItem item(Path file) {
        MenuItem item = new MenuItem(document.name(file));
        item.setMnemonicParsing(false);
        item.setOnAction(event -> document.preview(file).ifPresent(setup -> {
            other = own(context.assess().apply(setup), document.name(file));
            if (other == null) {
                document.frame().showNotice(form.words().text("trays.beside.none"));
            }
            refresh();
        }));
        return item;
    }

    private void refresh() {
        TestComparisonPicture.Test mine =
                own(form.model().assessment(), form.words().text("trays.beside.own"));
        TestComparisonPicture.Test shown = other;
        boolean both = mine != null && shown != null;
        chance.setManaged(both);
        chance.setVisible(both);
        picture.setManaged(both);
        picture.setVisible(both);
        if (mine != null && shown != null) {
            TestChange change = SetupComparison.of(shown.evenness(), mine.evenness());
            chance.setText(form.words()
                    .text(
                            "trays.beside.chance",
                            Arg.number(change.tellableChancePercent(), 0, Unit.PERCENT),
                            Arg.text(shown.name())));
            picture.show(mine, shown);
        }
    }

    /** The last test that can be read; null while there is none. */
    private static TestComparisonPicture.@Nullable Test own(Assessment assessment, String name) {
        Uniformity last = SetupComparison.lastTest(assessment);
        Double width = assessment.tramlineWidthM();
        return last == null || width == null ? null : new TestComparisonPicture.Test(name, last, width);
    }
}
