package org.evenfall.wizard.step.start;

import javafx.scene.Node;
import javafx.scene.layout.VBox;
import org.evenfall.result.KitLines;
import org.evenfall.wizard.form.Form;
import org.evenfall.wizard.form.FormPrompt;
import org.evenfall.wizard.form.Help;
import org.evenfall.wizard.form.Wrapped;

/** What to bring to yard and field: nothing to type. */
public final class KitPrompt extends FormPrompt {

    /** @param picture of the things */
    public KitPrompt(Form form, Node picture) {
        super("0h", form, picture);
    }

    @Override
    public Node entries() {
        VBox lines = new VBox();
        lines.getStyleClass().add("kit");
        form().follow(() -> lines.getChildren()
                .setAll(KitLines.of(form().words(), form().model().assessment()).stream()
                        .map(line -> Wrapped.label(line, "kit-line"))
                        .toList()));
        return lines;
    }

    @Override
    public Help help() {
        return Help.terms("trayTest", "ptoSpeed");
    }
}
