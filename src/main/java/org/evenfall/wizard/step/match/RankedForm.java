package org.evenfall.wizard.step.match;

import java.util.List;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.control.RadioButton;
import javafx.scene.control.ToggleGroup;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.VBox;
import org.evenfall.reference.MatchResult;
import org.evenfall.reference.RankedProduct;
import org.evenfall.result.MatchLines;
import org.evenfall.setup.TakeOverSettings;
import org.evenfall.setup.path.MatchPaths;
import org.evenfall.wizard.form.Form;
import org.evenfall.wizard.form.SourceLine;
import org.jspecify.annotations.Nullable;

/** The tested products, closest first, one to choose; and how often each would be the closest. */
final class RankedForm {

    private final Form form;
    private final VBox ranked = new VBox();
    private final MatchSimulationView simulation;
    private @Nullable Content content;

    RankedForm(Form form) {
        this.form = form;
        this.simulation = new MatchSimulationView(form, MatchSimulation::assess, this::refresh);
        ranked.setId(MatchPaths.CHOSEN.pointer());
        ranked.getStyleClass().add("ranked");
    }

    Node node() {
        form.follow(this::refresh);
        return form.group(
                "match.ranked",
                ranked,
                form.sentence("match.redrawnWhy"),
                simulation.node(),
                form.sentence("match.model"),
                SourceLine.of(form, "source.flightModel"),
                SourceLine.of(form, "source.landingModel"),
                SourceLine.of(form, "source.verdict"));
    }

    /** What the table shows: it is made anew only when that is another. */
    private record Content(@Nullable MatchResult match, String chosen) {}

    private void refresh() {
        Content now = new Content(
                simulation.match(), MatchPaths.CHOSEN.get(form.model().setup()));
        if (!now.equals(content)) {
            content = now;
            ranked.getChildren().setAll(table(now.match()));
            simulation
                    .node()
                    .setDisable(now.match() == null || now.match().ranked().isEmpty());
        }
    }

    private Node table(@Nullable MatchResult match) {
        if (match == null || match.ranked().isEmpty()) {
            Label none = new Label(form.words().text(match == null ? "missing.productFirst" : "missing.noReference"));
            none.setWrapText(true);
            return none;
        }
        GridPane grid = new GridPane();
        grid.getStyleClass().add("rows");
        header(grid, form.words().text("match.name"), 0);
        List<String> headers = MatchLines.shortHeaders(form.words());
        for (int c = 0; c < headers.size(); c++) {
            header(grid, headers.get(c), c + 1);
        }
        ToggleGroup group = new ToggleGroup();
        for (int r = 0; r < match.ranked().size(); r++) {
            RankedProduct reference = match.ranked().get(r);
            RadioButton choose = new RadioButton(MatchLines.name(form.words(), reference.id(), reference.name()));
            choose.setId("choose-" + reference.id());
            choose.setToggleGroup(group);
            choose.setSelected(
                    reference.id().equals(form.model().setup().match().chosen()));
            choose.setOnAction(event -> form.model().change(setup -> TakeOverSettings.choose(setup, reference.id())));
            Label verdict = new Label(form.words().choice(reference.verdict()));
            verdict.getStyleClass().add("beneath");
            grid.add(new VBox(choose, verdict), 0, r + 1);
            List<String> figures = MatchLines.shortFigures(form.words(), reference);
            for (int c = 0; c < figures.size(); c++) {
                grid.add(new Label(figures.get(c)), c + 1, r + 1);
            }
        }
        return grid;
    }

    private static void header(GridPane grid, String name, int column) {
        Label header = new Label(name);
        header.getStyleClass().add("column-header");
        grid.add(header, column, 0);
    }
}
