package org.evenfall.wizard.step.start;

import javafx.scene.Node;
import javafx.scene.layout.VBox;
import org.evenfall.setup.path.MachinePaths;
import org.evenfall.wizard.form.EntryTable;
import org.evenfall.wizard.form.Form;
import org.evenfall.wizard.form.Prompt;

/** Discs and shaft, as the handbook says. */
public final class DiscsPrompt implements Prompt {

    private final Form form;
    private final Node picture;

    /** @param picture of the step */
    public DiscsPrompt(Form form, Node picture) {
        this.form = form;
        this.picture = picture;
    }

    @Override
    public String id() {
        return "0d";
    }

    @Override
    public Node entries() {
        return new VBox(
                form.row(form.quantity(MachinePaths.DISC_RADIUS), form.quantity(MachinePaths.DISC_SPEED_AT540)),
                form.row(form.quantity(MachinePaths.PTO_LOWEST), form.quantity(MachinePaths.PTO_HIGHEST)),
                form.row(form.quantity(MachinePaths.OUTLETS), form.quantity(MachinePaths.WANTED_HEIGHT)),
                EntryTable.values(form, MachinePaths.WORKING_WIDTHS).node());
    }

    @Override
    public Node picture() {
        return picture;
    }

    @Override
    public boolean optional() {
        return true;
    }
}
