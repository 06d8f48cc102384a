package org.evenfall.wizard.picture;

import java.util.Collections;
import java.util.List;
import javafx.scene.text.TextAlignment;
import org.evenfall.finding.Arg;
import org.evenfall.finding.Sentences;
import org.evenfall.granule.BulkDensity;
import org.evenfall.granule.PublishedBand;
import org.evenfall.quantity.Unit;
import org.evenfall.result.SourceText;
import org.jspecify.annotations.Nullable;

/** Every filling as a dot on one axis, the mean as a line through them, the published bands above. */
public final class DensityPicture extends Picture {

    private @Nullable BulkDensity density;
    private List<PublishedBand> bands = List.of();

    /** Begins with nothing to show. */
    public DensityPicture(Sentences words) {
        super(words, 0.55);
        show(null, List.of());
    }

    /** @param published published ranges; those of bulk density are drawn, of whatever kind of product */
    public void show(@Nullable BulkDensity result, List<PublishedBand> published) {
        density = result;
        bands = published.stream()
                .filter(band -> band.quantity() == PublishedBand.Quantity.BULK_DENSITY)
                .toList();
        redraw(
                result == null
                        ? words.text("picture.density.empty")
                        : words.text(
                                "picture.density.spoken",
                                Arg.number(result.meanKgPerL(), 2, Unit.KG_PER_L),
                                Arg.count(result.fillings()),
                                Arg.number(result.spreadPercent(), 1, Unit.PERCENT)));
    }

    @Override
    void draw(Brush brush, double width, double full) {
        BulkDensity result = density;
        if (result == null) {
            nothingYet(brush, width, full, words.text("picture.density.empty"));
            return;
        }
        List<String> sources = bands.stream().map(PublishedBand::sourceKey).toList();
        double height = new SourceNote(SourceText.line(words, sources)).draw(brush, width, full);
        double em = brush.em();
        Scale across = scale(result, em, width);
        double y = bands(brush, across, 0.4 * em, width);
        double floor = height - 2.8 * em;
        double top = y + 1.7 * em;
        double mean = across.at(result.meanKgPerL());
        double error = across.length(result.standardErrorKgPerL());
        brush.box(
                mean - error,
                top,
                2 * error,
                floor - top,
                Palette.faint(brush.palette().straw(), 0.22));
        brush.line(mean, top, mean, floor, brush.palette().straw(), 2.5);
        brush.within(
                words.text("picture.density.mean", Arg.number(result.meanKgPerL(), 3, Unit.KG_PER_L)),
                mean,
                y + 0.85 * em,
                brush.body().heavy().in(brush.palette().straw()),
                TextAlignment.CENTER,
                0.3 * em,
                width - 0.3 * em);
        fillings(brush, result, across, top, floor);
        new Marks(brush).axis(across, floor, words.text("picture.density.axis"), words);
    }

    /** Wide enough for fillings and bands. */
    private Scale scale(BulkDensity result, double em, double width) {
        double low = Collections.min(result.fillingsKgPerL());
        double high = Collections.max(result.fillingsKgPerL());
        for (PublishedBand band : bands) {
            low = Math.min(low, band.range().low());
            high = Math.max(high, band.range().high());
        }
        double room = Math.max(0.02, 0.08 * (high - low));
        return new Scale(low - room, high + room, 1.2 * em, width - 1.2 * em);
    }

    private double bands(Brush brush, Scale across, double top, double width) {
        double em = brush.em();
        double y = top;
        for (PublishedBand band : bands) {
            double from = across.at(band.range().low());
            double to = across.at(band.range().high());
            y = brush.paragraphWithin(
                    words.text(
                            "picture.density.band",
                            Arg.text(words.choice(band.form())),
                            Arg.number(band.range().low(), 2, Unit.NONE),
                            Arg.number(band.range().high(), 2, Unit.NONE)),
                    (from + to) / 2,
                    y,
                    brush.note().in(brush.palette().good()),
                    0.3 * em,
                    width - 0.3 * em);
            brush.box(from, y + 0.1 * em, to - from, 0.4 * em, brush.palette().good());
            y += 0.75 * em;
        }
        return y;
    }

    private void fillings(Brush brush, BulkDensity result, Scale across, double top, double floor) {
        double em = brush.em();
        Marks marks = new Marks(brush);
        int rows = result.fillingsKgPerL().size() + (result.anotherFillingAdvised() ? 1 : 0);
        double row = Math.min(1.9 * em, (floor - top - 0.4 * em) / rows);
        for (int i = 0; i < result.fillingsKgPerL().size(); i++) {
            double y = top + (i + 0.6) * row;
            double filling = result.fillingsKgPerL().get(i);
            double x = across.at(filling);
            marks.disc(x, y, Math.min(0.42 * em, 0.4 * row), brush.palette().ink());
            if (row > 1.1 * em) {
                boolean left = x > (across.start() + across.end()) / 2;
                brush.onPaper(
                        words.text("picture.density.filling", Arg.count(i + 1), Arg.number(filling, 3, Unit.NONE)),
                        x + (left ? -0.8 : 0.8) * em,
                        y,
                        brush.note(),
                        left ? TextAlignment.RIGHT : TextAlignment.LEFT,
                        across.start() - em,
                        across.end() + em);
            }
        }
        if (result.anotherFillingAdvised() && row > 0.9 * em) {
            double y = top + (rows - 0.4) * row;
            double x = across.at(result.meanKgPerL());
            marks.ring(x, y, 0.45 * em, brush.palette().warn());
            brush.onPaper(
                    words.text("picture.density.another"),
                    x + 0.9 * em,
                    y,
                    brush.note().in(brush.palette().warn()),
                    TextAlignment.LEFT,
                    across.start() - em,
                    across.end() + em);
        }
    }
}
