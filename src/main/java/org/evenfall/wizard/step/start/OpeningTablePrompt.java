package org.evenfall.wizard.step.start;

import java.util.List;
import javafx.scene.Node;
import javafx.scene.layout.VBox;
import org.evenfall.setup.path.MachinePaths;
import org.evenfall.wizard.form.Column;
import org.evenfall.wizard.form.EntryTable;
import org.evenfall.wizard.form.Form;
import org.evenfall.wizard.form.Prompt;

/** The opening table of the handbook. */
public final class OpeningTablePrompt implements Prompt {

    private final Form form;
    private final Node picture;

    /** @param picture of the step */
    public OpeningTablePrompt(Form form, Node picture) {
        this.form = form;
        this.picture = picture;
    }

    @Override
    public String id() {
        return "0g";
    }

    @Override
    public Node entries() {
        return new VBox(
                form.row(form.choice(MachinePaths.FLOW_TABLE_BASIS), form.quantity(MachinePaths.FLOW_TABLE_DENSITY)),
                EntryTable.rows(
                                form,
                                MachinePaths.OPENINGS,
                                List.of(
                                        Column.quantity(form, MachinePaths.OPENING_OPENING),
                                        Column.quantity(form, MachinePaths.OPENING_FLOW)))
                        .node());
    }

    @Override
    public Node picture() {
        return picture;
    }

    @Override
    public boolean asked() {
        return !form.model().setup().machine().rateSetting().byFactor();
    }

    @Override
    public boolean optional() {
        return true;
    }
}
