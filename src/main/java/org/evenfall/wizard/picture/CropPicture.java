package org.evenfall.wizard.picture;

import java.util.List;
import javafx.scene.paint.Color;
import javafx.scene.text.TextAlignment;
import org.evenfall.finding.Arg;
import org.evenfall.finding.Sentences;
import org.evenfall.machine.HeightResult;
import org.evenfall.quantity.Unit;
import org.jspecify.annotations.Nullable;

/** Each measured place of the crop as a stem, to scale next to the tape, and the mean as a line. */
public final class CropPicture extends Picture {

    private static final int MOST_STEMS = 12;

    private List<Double> heightsM = List.of();
    private HeightResult.@Nullable Crop crop;

    /** Begins with nothing to show. */
    public CropPicture(Sentences words) {
        super(words, 0.95);
        show(List.of(), null);
    }

    /**
     * Draws these places.
     *
     * @param placesM heights as measured
     * @param result the crop as assessed; null while it is not
     */
    public void show(List<Double> placesM, HeightResult.@Nullable Crop result) {
        heightsM = List.copyOf(placesM);
        crop = result;
        redraw(
                heightsM.isEmpty()
                        ? words.text("picture.crop.empty")
                        : words.text("picture.crop.places", Arg.count(heightsM.size())) + " " + mean());
    }

    private String mean() {
        return crop == null ? "" : words.text("picture.crop.mean", Arg.number(100 * crop.meanM(), 0, Unit.CM));
    }

    private String sentence() {
        if (crop != null && crop.laterM() > crop.meanM() + 0.004) {
            return words.text("picture.crop.later", Arg.number(100 * crop.laterM(), 0, Unit.CM));
        }
        return words.text(
                heightsM.size() > MOST_STEMS ? "picture.crop.first" : "picture.crop.places",
                Arg.count(Math.min(MOST_STEMS, heightsM.size())));
    }

    @Override
    void draw(Brush brush, double width, double full) {
        if (heightsM.isEmpty()) {
            nothingYet(brush, width, full, words.text("picture.crop.empty"));
            return;
        }
        double em = brush.em();
        Palette palette = brush.palette();
        double height = new Caption(sentence()).draw(brush, width, full);
        double highest =
                heightsM.stream().mapToDouble(Double::doubleValue).max().orElse(0);
        double later = crop == null ? 0 : crop.laterM();
        double high = Math.min(height - 4.4 * em, 0.95 * width);
        double floor = (height + high) / 2 + 0.8 * em;
        Scale up = new Scale(0, 108 * Math.max(0.1, Math.max(highest, later)), floor, floor - high);
        double tape = 3.2 * em;
        brush.text(words.text("picture.crop.unit"), tape, up.end() - em, brush.body(), TextAlignment.CENTER);
        new Parts(brush).tape(tape, floor, up.end(), up.length(up.to() > 60 ? 10 : 5), palette.accent());
        for (double tick : up.ticks(6)) {
            brush.text(
                    words.number(tick, 0, Unit.NONE), tape - 0.6 * em, up.at(tick), brush.body(), TextAlignment.RIGHT);
        }
        double label = crop == null ? 0 : brush.width(mean(), brush.body().heavy());
        stems(brush, up, tape + 1.2 * em, width - 1.2 * em - label);
        brush.line(tape - 0.4 * em, floor, width - 0.4 * em, floor, palette.ink(), 2);
        mean(brush, up, tape, width);
    }

    private void stems(Brush brush, Scale up, double left, double right) {
        double em = brush.em();
        int shown = Math.min(MOST_STEMS, heightsM.size());
        double slot = Math.min(6 * em, (right - left) / shown);
        double start = (left + right - slot * shown) / 2;
        boolean roomy = slot > 2.4 * em;
        for (int i = 0; i < shown; i++) {
            double x = start + (i + 0.5) * slot;
            double tip = up.at(100 * heightsM.get(i));
            stem(brush, x, up.start(), tip, slot < em ? 0 : Math.min(0.32 * slot, 1.1 * em));
            if (roomy || shown <= 6) {
                brush.text(
                        words.number(100 * heightsM.get(i), 0, Unit.NONE),
                        x,
                        up.start() + 0.95 * em,
                        brush.body().in(brush.palette().good()),
                        TextAlignment.CENTER);
            }
        }
    }

    /** A stem with leaves, its tip at the height measured. */
    private static void stem(Brush brush, double x, double foot, double tip, double leaf) {
        Color colour = brush.palette().good();
        brush.line(x, foot, x, tip, colour, 2);
        double rise = Math.min(1.4 * leaf, 0.2 * (foot - tip));
        for (int i = 1; leaf > 0 && i <= 3; i++) {
            double y = foot + (tip - foot) * 0.24 * i;
            double side = i % 2 == 0 ? leaf : -leaf;
            brush.polyline(
                    new double[] {x, x + 0.35 * side, x + 0.7 * side, x + side},
                    new double[] {y, y - 0.7 * rise, y - rise, y - 0.7 * rise},
                    colour,
                    1.5,
                    false);
        }
    }

    private void mean(Brush brush, Scale up, double tape, double width) {
        if (crop == null) {
            return;
        }
        double em = brush.em();
        double y = up.at(100 * crop.meanM());
        Lettering lettering = brush.body().heavy().in(brush.palette().accent());
        double start = width - 0.6 * em - brush.width(mean(), lettering);
        brush.dashed(tape, y, start - 0.4 * em, y, brush.palette().accent(), 2);
        brush.text(mean(), start, y, lettering, TextAlignment.LEFT);
    }
}
