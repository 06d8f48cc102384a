package org.evenfall.wizard;

import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.control.RadioButton;
import javafx.scene.control.ToggleGroup;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.VBox;
import org.evenfall.finding.Arg;
import org.evenfall.quantity.Unit;
import org.evenfall.reference.MatchResult;
import org.evenfall.reference.RankedProduct;
import org.evenfall.setup.TakeOverSettings;
import org.evenfall.setup.path.MatchPaths;
import org.evenfall.wizard.form.Form;
import org.evenfall.wizard.form.HorizontalScrollPane;
import org.jspecify.annotations.Nullable;

/** The tested products, nearest first, one to choose; and how often each would be the nearest. */
final class RankedForm {

    private static final String[] HEADERS = {
        "match.name",
        "match.width",
        "match.density",
        "match.size",
        "match.throw",
        "match.flow",
        "match.kept",
        "match.share"
    };

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
                form.sentence("match.model"));
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
        for (int c = 0; c < HEADERS.length; c++) {
            Label header = new Label(form.words().text(HEADERS[c]));
            header.getStyleClass().add("column-header");
            grid.add(header, c, 0);
        }
        ToggleGroup group = new ToggleGroup();
        for (int r = 0; r < match.ranked().size(); r++) {
            RankedProduct reference = match.ranked().get(r);
            RadioButton choose = new RadioButton(reference.name());
            choose.setId("choose-" + reference.id());
            choose.setToggleGroup(group);
            choose.setSelected(
                    reference.id().equals(form.model().setup().match().chosen()));
            choose.setOnAction(event -> form.model().change(setup -> TakeOverSettings.from(setup, reference.id())));
            Label verdict = new Label(form.words().choice(reference.verdict()));
            verdict.getStyleClass().add("beneath");
            grid.addRow(
                    r + 1,
                    new VBox(choose, verdict),
                    new Label(form.words().number(reference.widthM(), 0, Unit.M)),
                    signed(reference.difference().densityPercent(), 0, Unit.PERCENT),
                    signed(reference.difference().d50Percent(), 0, Unit.PERCENT),
                    signed(reference.throwDifference().metres(), 1, Unit.M),
                    signed(reference.difference().flowPercent(), 0, Unit.PERCENT),
                    kept(reference),
                    new Label(form.words().number(100 * reference.closestShare(), 0, Unit.PERCENT)));
        }
        return new HorizontalScrollPane(grid);
    }

    private Label kept(RankedProduct reference) {
        return new Label(
                reference.pattern() == null
                        ? "–"
                        : form.words()
                                .text(
                                        "match.keptCell",
                                        Arg.number(reference.pattern().referenceCvPercent(), 0, Unit.NONE),
                                        Arg.number(reference.pattern().keptCvPercent(), 0, Unit.PERCENT)));
    }

    private Label signed(@Nullable Double value, int decimals, Unit unit) {
        if (value == null) {
            return new Label("–");
        }
        String digits = form.words().number(value, decimals, unit);
        boolean nothing = digits.chars().noneMatch(sign -> sign >= '1' && sign <= '9');
        return new Label(value > 0 && !nothing ? "+" + digits : digits);
    }
}
