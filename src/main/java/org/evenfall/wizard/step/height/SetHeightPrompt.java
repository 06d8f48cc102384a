package org.evenfall.wizard.step.height;

import java.util.function.Supplier;
import javafx.scene.Node;
import javafx.scene.layout.VBox;
import org.evenfall.result.HeightLines;
import org.evenfall.setup.path.HeightPaths;
import org.evenfall.wizard.form.FigureRow;
import org.evenfall.wizard.form.Form;
import org.evenfall.wizard.form.FormPrompt;
import org.evenfall.wizard.form.Help;
import org.evenfall.wizard.form.VisibleWhen;

/** The height over the crop. */
public final class SetHeightPrompt extends FormPrompt {

    /** @param picture of the step */
    public SetHeightPrompt(Form form, Supplier<? extends Node> picture) {
        super("4b", form, picture);
    }

    @Override
    public Node entries() {
        return new VBox(
                form().row(form().quantity(HeightPaths.WANTED), form().text(HeightPaths.REFERENCE_POINT)),
                form().row(
                                form().quantity(HeightPaths.LEFT),
                                form().quantity(HeightPaths.RIGHT),
                                form().quantity(HeightPaths.FRONT),
                                form().quantity(HeightPaths.REAR)),
                FigureRow.of(
                        form(),
                        () -> HeightLines.figures(
                                form().words(), form().model().assessment().height())),
                VisibleWhen.sentence(form(), "figure-line", this::tenCentimetres));
    }

    @Override
    public boolean mayHurt() {
        return true;
    }

    @Override
    public Help help() {
        return Help.terms("referencePoint", "tilt").from("source.height", "source.flightModel");
    }

    private String tenCentimetres() {
        return HeightLines.tenCentimetres(
                form().words(), form().model().assessment().height());
    }
}
