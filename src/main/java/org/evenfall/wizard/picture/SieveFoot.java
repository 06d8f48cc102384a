package org.evenfall.wizard.picture;

import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import javafx.scene.text.TextAlignment;
import org.evenfall.finding.Arg;
import org.evenfall.finding.Sentences;
import org.evenfall.granule.PublishedBand;
import org.evenfall.granule.SieveResult;
import org.evenfall.quantity.Unit;
import org.evenfall.result.ProductLines;
import org.jspecify.annotations.Nullable;

/**
 * What is under the bars of the sieve classes: apertures, the axis, the published bands.
 *
 * @param brush draws
 * @param words words
 * @param result what was sieved
 * @param bands published ranges
 */
record SieveFoot(Brush brush, Sentences words, SieveResult result, List<PublishedBand> bands) {

    /** Height of all of it, px. */
    double high(double width) {
        double lines =
                brush.wrapped(between(), width - 0.6 * brush.em(), brush.body()).size();
        return (4.3 + 1.25 * lines + (band(PublishedBand.Quantity.MEDIAN) == null ? 0 : 2)) * brush.em();
    }

    private String between() {
        PublishedBand wide = band(PublishedBand.Quantity.SHARE_2_TO_4_MM);
        Arg share = Arg.number(result.share2To4MmPercent(), 0, Unit.PERCENT);
        Arg reading = ProductLines.from(result.readFrom().share2To4MmPercent());
        return wide == null
                ? words.text("picture.sieve.between", share, reading)
                : words.text(
                        "picture.sieve.betweenPublished",
                        share,
                        Arg.number(wide.range().low(), 0, Unit.NONE),
                        Arg.number(wide.range().high(), 0, Unit.PERCENT),
                        reading);
    }

    /** Apertures, axis name, the published bands. */
    void draw(Scale across, double floor, double width) {
        double em = brush.em();
        double free = Double.NEGATIVE_INFINITY;
        for (double aperture : result.aperturesMm()) {
            String label = words.number(aperture, aperture * 10 == Math.rint(aperture * 10) ? 1 : 2, Unit.NONE);
            double x = across.at(aperture);
            double half = brush.width(label, brush.note()) / 2;
            brush.line(x, floor, x, floor + 0.3 * em, brush.palette().ink(), 1);
            if (x - half > free) {
                brush.text(label, x, floor + 0.9 * em, brush.note(), TextAlignment.CENTER);
                free = x + half + 0.4 * em;
            }
        }
        double y = floor + 2 * em;
        brush.within(words.text("picture.sieve.axis"), width / 2, y, brush.note(), TextAlignment.CENTER, 0, width);
        y += 1.5 * em;
        if (across.to() >= 4) {
            new Marks(brush)
                    .across(across.at(2), across.at(4), y, brush.palette().straw());
        }
        y = brush.paragraphWithin(
                between(), across.clamped(3), y + 0.45 * em, brush.body(), 0.3 * em, width - 0.3 * em);
        PublishedBand median = band(PublishedBand.Quantity.MEDIAN);
        if (median != null) {
            double from = across.clamped(median.range().low());
            double to = across.clamped(median.range().high());
            brush.box(from, y + 0.3 * em, to - from, 0.35 * em, brush.palette().good());
            brush.within(
                    words.text(
                            "picture.sieve.median",
                            Arg.number(median.range().low(), 1, Unit.NONE),
                            Arg.number(median.range().high(), 1, Unit.MM)),
                    (from + to) / 2,
                    y + 1.35 * em,
                    brush.body().in(brush.palette().good()),
                    TextAlignment.CENTER,
                    0.3 * em,
                    width - 0.3 * em);
        }
    }

    private @Nullable PublishedBand band(PublishedBand.Quantity quantity) {
        return bands.stream()
                .filter(band -> band.quantity() == quantity)
                .findFirst()
                .orElse(null);
    }

    /** Sources of the bands that are drawn. */
    List<String> sources() {
        return Stream.of(PublishedBand.Quantity.SHARE_2_TO_4_MM, PublishedBand.Quantity.MEDIAN)
                .map(this::band)
                .filter(Objects::nonNull)
                .map(PublishedBand::sourceKey)
                .toList();
    }
}
