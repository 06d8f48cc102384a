package org.evenfall.wizard.step.trays;

import java.util.function.Supplier;
import javafx.scene.Node;
import javafx.scene.layout.VBox;
import org.evenfall.setup.path.TrayPaths;
import org.evenfall.wizard.form.Form;
import org.evenfall.wizard.form.FormPrompt;
import org.evenfall.wizard.form.Help;

/** Border device and switching distances. */
public final class EdgesPrompt extends FormPrompt {

    /** @param picture of the step */
    public EdgesPrompt(Form form, Supplier<? extends Node> picture) {
        super("6g", form, picture);
    }

    @Override
    public Node entries() {
        return new VBox(
                form().row(form().text(TrayPaths.BORDER_DEVICE), form().choice(TrayPaths.BORDER_SIDE)),
                form().row(form().quantity(TrayPaths.SWITCH_ON), form().quantity(TrayPaths.SWITCH_OFF)),
                form().sentence("trays.switchHow"));
    }

    @Override
    public Help help() {
        return Help.terms("border", "headland").from("source.flightModel");
    }
}
