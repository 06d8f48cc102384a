package org.evenfall.wizard;

import javafx.scene.Node;
import javafx.scene.layout.VBox;
import org.evenfall.finding.Step;
import org.evenfall.machine.HeightResult;
import org.evenfall.quantity.Unit;
import org.evenfall.result.HeightLines;
import org.evenfall.setup.path.HeightPaths;
import org.evenfall.wizard.form.EntryTable;
import org.evenfall.wizard.form.FigureRow;
import org.evenfall.wizard.form.Form;
import org.evenfall.wizard.form.SourceLine;
import org.evenfall.wizard.form.VisibleWhen;
import org.evenfall.wizard.picture.HeightPicture;

/** Step 4: height over the top of the crop. */
final class HeightStep implements StepView {

    private final Form form;
    private final HeightPicture picture;

    HeightStep(Form form) {
        this.form = form;
        this.picture = new HeightPicture(form.words());
        form.follow(() -> picture.show(
                form.model().assessment().height(),
                form.model().setup().height().referencePoint()));
    }

    @Override
    public Step step() {
        return Step.HEIGHT;
    }

    @Override
    public Node picture() {
        return picture;
    }

    @Override
    public String result() {
        HeightResult height = form.model().assessment().height();
        return height == null ? "" : form.words().number(100 * height.overGroundM(), 0, Unit.CM);
    }

    @Override
    public Node entries() {
        return new VBox(
                form.group(
                        "height.crop",
                        EntryTable.values(form, HeightPaths.CROP_HEIGHTS).node(),
                        form.quantity(HeightPaths.GROWTH)),
                form.group(
                        "height.machine",
                        form.sentence("height.machineHow"),
                        form.row(
                                form.quantity(HeightPaths.WANTED),
                                form.text(HeightPaths.REFERENCE_POINT),
                                form.quantity(HeightPaths.CHAIN_POINT))),
                form.group(
                        "height.now",
                        form.row(
                                form.quantity(HeightPaths.LEFT),
                                form.quantity(HeightPaths.RIGHT),
                                form.quantity(HeightPaths.FRONT),
                                form.quantity(HeightPaths.REAR)),
                        FigureRow.of(
                                form,
                                () -> HeightLines.figures(
                                        form.words(), form.model().assessment().height())),
                        VisibleWhen.sentence(form, "figure-line", this::tenCentimetres),
                        SourceLine.when(form, () -> !tenCentimetres().isEmpty(), "source.flightModel")));
    }

    private String tenCentimetres() {
        return HeightLines.tenCentimetres(
                form.words(), form.model().assessment().height());
    }
}
