package org.evenfall.wizard.step.start;

import java.util.List;
import javafx.scene.Node;
import org.evenfall.setup.path.MachinePaths;
import org.evenfall.wizard.form.Column;
import org.evenfall.wizard.form.EntryTable;
import org.evenfall.wizard.form.Form;
import org.evenfall.wizard.form.Prompt;

/** What changes the pattern. */
public final class LeversPrompt implements Prompt {

    private final Form form;
    private final Node picture;

    /** @param picture of the step */
    public LeversPrompt(Form form, Node picture) {
        this.form = form;
        this.picture = picture;
    }

    @Override
    public String id() {
        return "0f";
    }

    @Override
    public Node entries() {
        return EntryTable.rows(
                        form,
                        MachinePaths.LEVERS,
                        List.of(
                                Column.text(form, MachinePaths.LEVER_LABEL, 12),
                                Column.quantity(form, MachinePaths.LEVER_LOWEST),
                                Column.quantity(form, MachinePaths.LEVER_HIGHEST),
                                Column.quantity(form, MachinePaths.LEVER_STEP),
                                Column.choice(form, MachinePaths.LEVER_WIDER_WHEN)))
                .node();
    }

    @Override
    public Node picture() {
        return picture;
    }
}
