package org.evenfall.wizard.step.start;

import javafx.scene.Node;
import javafx.scene.layout.VBox;
import org.evenfall.setup.path.MachinePaths;
import org.evenfall.wizard.form.EntryTable;
import org.evenfall.wizard.form.Form;
import org.evenfall.wizard.form.FormPrompt;

/** Discs and PTO speed, as the handbook says. */
public final class DiscsPrompt extends FormPrompt {

    /** @param picture of the step */
    public DiscsPrompt(Form form, Node picture) {
        super("0d", form, picture);
    }

    @Override
    public Node entries() {
        return new VBox(
                form().row(form().quantity(MachinePaths.DISC_RADIUS), form().quantity(MachinePaths.DISC_SPEED_AT540)),
                form().row(form().quantity(MachinePaths.PTO_LOWEST), form().quantity(MachinePaths.PTO_HIGHEST)),
                form().row(form().quantity(MachinePaths.OUTLETS), form().quantity(MachinePaths.WANTED_HEIGHT)),
                EntryTable.values(form(), MachinePaths.WORKING_WIDTHS).node());
    }
}
