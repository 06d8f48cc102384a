package org.evenfall.wizard;

import java.util.ArrayList;
import java.util.List;
import javafx.scene.Node;
import javafx.scene.layout.VBox;
import org.evenfall.finding.Arg;
import org.evenfall.finding.Step;
import org.evenfall.machine.HeightResult;
import org.evenfall.quantity.Unit;
import org.evenfall.setup.path.HeightPaths;
import org.evenfall.wizard.form.EntryTable;
import org.evenfall.wizard.form.FigureRow;
import org.evenfall.wizard.form.Form;
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
                        new FigureRow(form, this::figures),
                        VisibleWhen.sentence(form, "figure-line", this::tenCentimetres)));
    }

    private List<FigureRow.Figure> figures() {
        HeightResult height = form.model().assessment().height();
        if (height == null) {
            return List.of();
        }
        List<FigureRow.Figure> figures = new ArrayList<>();
        figures.add(figure("height.figure.ground", cm(height.overGroundM(), 0)));
        figures.add(figure("height.figure.chain", cm(height.chainM(), 0)));
        if (height.now().overCropM() != null) {
            figures.add(figure("height.figure.now", cm(height.now().overCropM(), 0)));
        }
        if (height.now().correctionM() != null) {
            figures.add(figure("height.figure.move", correction(height.now().correctionM())));
        }
        if (height.now().leftRightM() != null) {
            figures.add(figure(
                    "height.figure.side",
                    higher(height.now().leftRightM(), "picture.height.leftHigher", "picture.height.rightHigher")));
        }
        if (height.now().foreAftM() != null) {
            figures.add(figure(
                    "height.figure.along",
                    higher(height.now().foreAftM(), "picture.height.frontHigher", "picture.height.rearHigher")));
        }
        return figures;
    }

    private FigureRow.Figure figure(String key, String value) {
        return new FigureRow.Figure(form.words().text(key), value);
    }

    private String cm(double metres, int decimals) {
        return form.words().number(100 * metres, decimals, Unit.CM);
    }

    /** Less than half a centimetre is no correction that can be set. */
    private String correction(double metres) {
        if (Math.abs(metres) < 0.005) {
            return form.words().text("height.figure.stay");
        }
        return form.words()
                .text(
                        metres > 0 ? "height.figure.raise" : "height.figure.lower",
                        Arg.number(100 * Math.abs(metres), 0, Unit.CM));
    }

    private String higher(double metres, String first, String second) {
        return Math.abs(metres) < 0.0005
                ? form.words().text("height.figure.even")
                : form.words().text(metres > 0 ? first : second, Arg.number(100 * Math.abs(metres), 1, Unit.CM));
    }

    private String tenCentimetres() {
        HeightResult height = form.model().assessment().height();
        return height == null || height.throwPer10CmM() == null
                ? ""
                : form.words().text("height.tenCm", Arg.number(Math.abs(height.throwPer10CmM()), 1, Unit.M));
    }
}
