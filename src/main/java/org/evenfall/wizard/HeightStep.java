package org.evenfall.wizard;

import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.layout.VBox;
import org.evenfall.finding.Arg;
import org.evenfall.finding.Step;
import org.evenfall.machine.HeightResult;
import org.evenfall.quantity.Unit;
import org.evenfall.setup.Fields;
import org.evenfall.setup.entry.HeightEntries;
import org.evenfall.wizard.picture.HeightPicture;

/** Step 4: height over the top of the crop. */
final class HeightStep implements StepView {

    private static final Lens<HeightEntries> HEIGHT = Places.HEIGHT;

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
        Label result = new Label();
        result.setWrapText(true);
        result.getStyleClass().add("figure-line");
        form.follow(() -> result.setText(told()));
        return new VBox(
                form.group(
                        "height.crop",
                        Rows.values(
                                        form,
                                        HEIGHT.then(HeightEntries::cropHeights, HeightEntries::withCropHeights),
                                        "/height/cropHeights",
                                        form.words().text("field.cropHeight"),
                                        Fields.CROP_HEIGHT)
                                .node(),
                        form.typed(
                                "field.growth",
                                Fields.GROWTH,
                                "/height/growth",
                                HEIGHT.then(HeightEntries::growth, HeightEntries::withGrowth))),
                form.group(
                        "height.machine",
                        form.row(
                                form.typed(
                                        "height.wanted",
                                        Fields.HEIGHT_OVER_CROP,
                                        "/height/wanted",
                                        HEIGHT.then(HeightEntries::wanted, HeightEntries::withWanted)),
                                form.text(
                                        "height.reference",
                                        "/height/referencePoint",
                                        HEIGHT.then(HeightEntries::referencePoint, HeightEntries::withReferencePoint)),
                                form.typed(
                                        "field.chainPoint",
                                        Fields.CHAIN_POINT,
                                        "/height/chainPoint",
                                        HEIGHT.then(HeightEntries::chainPoint, HeightEntries::withChainPoint)))),
                form.group(
                        "height.now",
                        form.row(
                                form.typed(
                                        "height.left",
                                        Fields.HITCH_HEIGHT,
                                        "/height/left",
                                        HEIGHT.then(HeightEntries::left, HeightEntries::withLeft)),
                                form.typed(
                                        "height.right",
                                        Fields.HITCH_HEIGHT,
                                        "/height/right",
                                        HEIGHT.then(HeightEntries::right, HeightEntries::withRight)),
                                form.typed(
                                        "height.front",
                                        Fields.HITCH_HEIGHT,
                                        "/height/front",
                                        HEIGHT.then(HeightEntries::front, HeightEntries::withFront)),
                                form.typed(
                                        "height.rear",
                                        Fields.HITCH_HEIGHT,
                                        "/height/rear",
                                        HEIGHT.then(HeightEntries::rear, HeightEntries::withRear))),
                        result));
    }

    private String told() {
        HeightResult height = form.model().assessment().height();
        if (height == null) {
            return "";
        }
        String first = form.words()
                .text(
                        "height.result",
                        Arg.number(100 * height.overGroundM(), 0, Unit.CM),
                        Arg.number(100 * height.chainM(), 0, Unit.CM));
        return height.throwPer10CmM() == null
                ? first
                : first + " "
                        + form.words().text("height.tenCm", Arg.number(Math.abs(height.throwPer10CmM()), 1, Unit.M));
    }
}
