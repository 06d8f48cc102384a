package org.evenfall.wizard.step.start;

import java.util.function.Supplier;
import javafx.scene.Node;
import javafx.scene.layout.VBox;
import org.evenfall.result.KitLines;
import org.evenfall.wizard.form.Form;
import org.evenfall.wizard.form.FormPrompt;
import org.evenfall.wizard.form.Help;
import org.evenfall.wizard.form.Wrapped;

/** What to bring to yard and field: nothing to type. */
public final class KitPrompt extends FormPrompt {

    private final Runnable yardSheet;

    /**
     * @param picture of the things
     * @param yardSheet writes the yard sheet
     */
    public KitPrompt(Form form, Supplier<? extends Node> picture, Runnable yardSheet) {
        super("0h", form, picture);
        this.yardSheet = yardSheet;
    }

    @Override
    public Node entries() {
        VBox lines = new VBox();
        lines.getStyleClass().add("kit");
        form().follow(() -> lines.getChildren()
                .setAll(KitLines.of(form().words(), form().model().assessment()).stream()
                        .map(line -> Wrapped.label(line, "kit-line"))
                        .toList()));
        return new VBox(lines, form().row(form().button("sheet.printYard", yardSheet)));
    }

    @Override
    public Help help() {
        return Help.terms("trayTest", "ptoSpeed");
    }
}
