package org.evenfall.wizard.step.trays;

import java.util.List;
import java.util.stream.Collectors;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.layout.ColumnConstraints;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import org.evenfall.finding.Arg;
import org.evenfall.finding.Sentences;
import org.evenfall.quantity.Unit;
import org.evenfall.setup.TrayTestResult;
import org.evenfall.setup.entry.Setup;
import org.evenfall.setup.path.TrayPaths;
import org.evenfall.trays.Uniformity;
import org.evenfall.wizard.form.Form;
import org.evenfall.wizard.form.VisibleWhen;
import org.evenfall.wizard.form.Wrapped;

/** All tests of the setup that can be read, one a row. */
final class TestTable {

    private static final int COLUMNS = 5;

    private TestTable() {}

    /** The table, once there is a test. */
    static Node of(Form form) {
        GridPane grid = new GridPane();
        grid.getStyleClass().addAll("rows", "compared");
        form.follow(() -> fill(grid, form));
        for (int column = 0; column < COLUMNS; column++) {
            boolean last = column == COLUMNS - 1;
            ColumnConstraints width = new ColumnConstraints();
            width.setMinWidth(last ? 0 : Region.USE_PREF_SIZE);
            width.setHgrow(last ? Priority.ALWAYS : Priority.NEVER);
            grid.getColumnConstraints().add(width);
        }
        return VisibleWhen.when(
                form, () -> !form.model().assessment().trays().tests().isEmpty(), grid);
    }

    private static void fill(GridPane grid, Form form) {
        Sentences words = form.words();
        grid.getChildren().clear();
        add(
                grid,
                0,
                List.of(
                        words.text("trays.column.test"),
                        words.text("trays.column.trayCv"),
                        words.text("trays.column.fieldCv"),
                        words.text("trays.column.verdict"),
                        words.text("trays.column.settings")));
        List<TrayTestResult> tests = form.model().assessment().trays().tests();
        for (int row = 0; row < tests.size(); row++) {
            TrayTestResult test = tests.get(row);
            add(grid, row + 1, cells(words, test, settings(form.model().setup(), test)));
        }
    }

    private static void add(GridPane grid, int row, List<String> cells) {
        for (int column = 0; column < cells.size(); column++) {
            Label cell = Wrapped.label(cells.get(column), row == 0 ? "column-header" : "cell");
            grid.add(cell, column, row);
        }
    }

    /** Levers of a test as they were typed. */
    private static String settings(Setup setup, TrayTestResult test) {
        return TrayPaths.TESTS.item(test.index()).get(setup).settings().levers().entrySet().stream()
                .filter(lever -> !lever.getValue().isBlank())
                .map(lever -> lever.getKey() + " " + lever.getValue())
                .collect(Collectors.joining(" · "));
    }

    private static List<String> cells(Sentences words, TrayTestResult test, String settings) {
        Uniformity evenness = test.evenness();
        return List.of(
                Integer.toString(test.index() + 1),
                words.number(evenness.cvPercent(), 0, Unit.PERCENT),
                words.text(
                        "trays.range",
                        Arg.number(evenness.field().medianPercent(), 0, Unit.PERCENT),
                        Arg.number(evenness.field().lowPercent(), 0, Unit.NONE),
                        Arg.number(evenness.field().highPercent(), 0, Unit.PERCENT)),
                words.choice(evenness.verdict()),
                settings);
    }
}
