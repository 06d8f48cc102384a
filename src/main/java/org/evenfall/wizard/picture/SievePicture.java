package org.evenfall.wizard.picture;

import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import javafx.scene.paint.Color;
import javafx.scene.text.TextAlignment;
import org.evenfall.finding.Arg;
import org.evenfall.finding.Sentences;
import org.evenfall.granule.PublishedBand;
import org.evenfall.granule.SieveResult;
import org.evenfall.granule.SizeCurve;
import org.evenfall.quantity.Unit;
import org.evenfall.result.ProductLines;
import org.evenfall.result.SourceText;
import org.evenfall.setup.SieveCurve;
import org.jspecify.annotations.Nullable;

/**
 * The sieve box seen from the side: each class fills its compartment, its area is its share of the weight; over it the
 * fitted curve, the sizes that 16, 50 and 84 % are finer than, and the published bands beneath.
 */
public final class SievePicture extends Picture {

    private static final int CURVE_POINTS = 160;
    /** The curve may rise so far above the fullest class before the top cuts it. */
    private static final double CURVE_ABOVE_BARS = 1.9;

    private @Nullable SieveResult sieve;
    private List<PublishedBand> bands = List.of();

    /** Begins with nothing to show. */
    public SievePicture(Sentences words) {
        super(words, 0.85);
        show(null, List.of());
    }

    /** @param published published ranges; those of median and of 2 to 4 mm are drawn */
    public void show(@Nullable SieveResult result, List<PublishedBand> published) {
        sieve = result;
        bands = List.copyOf(published);
        redraw(
                result == null
                        ? words.text("picture.sieve.empty")
                        : words.text(
                                "picture.sieve.spoken",
                                Arg.number(result.d50Mm(), 1, Unit.MM),
                                Arg.number(result.indices().spreadIndexPercent(), 0, Unit.PERCENT)));
    }

    @Override
    void draw(Brush brush, double width, double full) {
        SieveResult result = sieve;
        if (result == null) {
            nothingYet(brush, width, full, words.text("picture.sieve.empty"));
            return;
        }
        double height = new SourceNote(SourceText.line(words, sources())).draw(brush, width, full);
        double em = brush.em();
        double coarsest = result.aperturesMm().get(result.aperturesMm().size() - 1);
        double end = Math.ceil(2 * Math.max(coarsest * 1.2, 1.2 * result.d84Mm())) / 2;
        List<SizeCurve.Point> curve = SieveCurve.of(result, end, CURVE_POINTS);
        double bars = 0;
        for (int i = 0; i < result.sharesPercent().size(); i++) {
            bars = Math.max(bars, result.sharesPercent().get(i) / (right(result, i, end) - left(result, i)));
        }
        double peak =
                curve.stream().mapToDouble(SizeCurve.Point::percentPerMm).max().orElse(0);
        double top = 1.05 * Math.max(bars, Math.min(peak, CURVE_ABOVE_BARS * bars));
        double floor = height - (5.4 + (band(PublishedBand.Quantity.MEDIAN) == null ? 0 : 1.7)) * em;
        Scale across = new Scale(0, end, 0.8 * em, width - 0.8 * em);
        Scale up = new Scale(0, Math.max(top, 1e-6), floor, 4.2 * em);
        box(brush, result, across, up, end);
        brush.clipped(0, up.end() - 2, width, floor - up.end() + 2, () -> {
            double[] x =
                    curve.stream().mapToDouble(p -> across.at(p.diameterMm())).toArray();
            double[] y =
                    curve.stream().mapToDouble(p -> up.at(p.percentPerMm())).toArray();
            brush.polyline(x, y, brush.palette().ink(), 2, result.distribution().spreadIsBound());
        });
        sizes(brush, result, across, up, width);
        shares(brush, result, across, up, end);
        beneath(brush, result, across, floor, width);
    }

    private void box(Brush brush, SieveResult result, Scale across, Scale up, double end) {
        Palette palette = brush.palette();
        Color fill = Palette.faint(palette.straw(), 0.35);
        for (int i = 0; i < result.sharesPercent().size(); i++) {
            double share = result.sharesPercent().get(i);
            double from = across.at(left(result, i));
            double to = across.at(right(result, i, end));
            double level = up.at(share / (right(result, i, end) - left(result, i)));
            brush.box(from, level, to - from, up.start() - level, fill);
            brush.line(from, level, to, level, palette.straw(), 2);
        }
        for (double aperture : result.aperturesMm()) {
            double x = across.at(aperture);
            brush.line(x, up.end(), x, up.start(), palette.line(), 1);
        }
        brush.polyline(
                new double[] {across.start(), across.start(), across.end(), across.end()},
                new double[] {up.end(), up.start(), up.start(), up.end()},
                palette.ink(),
                2,
                false);
    }

    /** Each class's share at its foot, over curve and lines. */
    private void shares(Brush brush, SieveResult result, Scale across, Scale up, double end) {
        double em = brush.em();
        for (int i = 0; i < result.sharesPercent().size(); i++) {
            double share = result.sharesPercent().get(i);
            double from = across.at(left(result, i));
            double to = across.at(right(result, i, end));
            double level = up.at(share / (right(result, i, end) - left(result, i)));
            Lettering lettering = brush.body().heavy();
            String label = words.number(share, share < 9.95 && share > 0 ? 1 : 0, Unit.PERCENT);
            if (brush.width(label, lettering) > to - from) {
                lettering = brush.note().in(brush.palette().ink());
                label = words.number(share, 0, Unit.NONE);
            }
            double y = up.start() - level > 1.7 * em ? up.start() - 0.85 * em : level - 0.8 * em;
            brush.onPaper(label, (from + to) / 2, y, lettering, TextAlignment.CENTER, from - em, to + em);
        }
    }

    /** The three sizes over the box, each with its line down to the axis. */
    private void sizes(Brush brush, SieveResult result, Scale across, Scale up, double width) {
        Palette palette = brush.palette();
        double em = brush.em();
        double low = across.clamped(result.d50IntervalMm().low());
        brush.box(
                low,
                up.end() - 0.5 * em,
                across.clamped(result.d50IntervalMm().high()) - low,
                up.start() - up.end() + 0.5 * em,
                Palette.faint(palette.accent(), 0.18));
        double half = across.clamped(result.d50Mm());
        brush.line(half, 1.5 * em, half, up.start(), palette.accent(), 2);
        brush.within(
                words.text("picture.sieve.half", Arg.number(result.d50Mm(), 1, Unit.MM)),
                half,
                0.8 * em,
                brush.body().heavy().in(palette.accent()),
                TextAlignment.CENTER,
                0.3 * em,
                width - 0.3 * em);
        double fine = across.clamped(result.d16Mm());
        double coarse = across.clamped(result.d84Mm());
        brush.dashed(fine, 2.9 * em, fine, up.start(), palette.accent(), 1.2);
        brush.dashed(coarse, 2.9 * em, coarse, up.start(), palette.accent(), 1.2);
        String bound = result.distribution().spreadIsBound() ? "picture.sieve.bound" : "picture.sieve.share";
        Lettering note = brush.note().in(palette.accent());
        brush.within(
                words.text(bound, Arg.number(16, 0, Unit.PERCENT), Arg.number(result.d16Mm(), 1, Unit.MM)),
                Math.min(fine + 0.3 * em, half - 0.5 * em),
                2.3 * em,
                note,
                TextAlignment.RIGHT,
                0.3 * em,
                half - 0.4 * em);
        brush.within(
                words.text(bound, Arg.number(84, 0, Unit.PERCENT), Arg.number(result.d84Mm(), 1, Unit.MM)),
                Math.max(coarse - 0.3 * em, half + 0.5 * em),
                2.3 * em,
                note,
                TextAlignment.LEFT,
                half + 0.4 * em,
                width - 0.3 * em);
    }

    /** Apertures, axis name, the published bands. */
    private void beneath(Brush brush, SieveResult result, Scale across, double floor, double width) {
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
        PublishedBand wide = band(PublishedBand.Quantity.SHARE_2_TO_4_MM);
        if (across.to() >= 4) {
            new Marks(brush)
                    .across(across.at(2), across.at(4), y, brush.palette().straw());
        }
        Arg share = Arg.number(result.share2To4MmPercent(), 0, Unit.PERCENT);
        Arg reading = ProductLines.from(result.readFrom().share2To4MmPercent());
        brush.within(
                wide == null
                        ? words.text("picture.sieve.between", share, reading)
                        : words.text(
                                "picture.sieve.betweenPublished",
                                share,
                                Arg.number(wide.range().low(), 0, Unit.NONE),
                                Arg.number(wide.range().high(), 0, Unit.PERCENT),
                                reading),
                across.clamped(3),
                y + 1.05 * em,
                brush.note().in(brush.palette().ink()),
                TextAlignment.CENTER,
                0.3 * em,
                width - 0.3 * em);
        PublishedBand median = band(PublishedBand.Quantity.MEDIAN);
        if (median != null) {
            double from = across.clamped(median.range().low());
            double to = across.clamped(median.range().high());
            brush.box(from, y + 1.9 * em, to - from, 0.35 * em, brush.palette().good());
            brush.within(
                    words.text(
                            "picture.sieve.median",
                            Arg.number(median.range().low(), 1, Unit.NONE),
                            Arg.number(median.range().high(), 1, Unit.MM)),
                    (from + to) / 2,
                    y + 2.85 * em,
                    brush.note().in(brush.palette().good()),
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
    private List<String> sources() {
        return Stream.of(PublishedBand.Quantity.SHARE_2_TO_4_MM, PublishedBand.Quantity.MEDIAN)
                .map(this::band)
                .filter(Objects::nonNull)
                .map(PublishedBand::sourceKey)
                .toList();
    }

    private static double left(SieveResult result, int i) {
        return i == 0 ? 0 : result.aperturesMm().get(i - 1);
    }

    private static double right(SieveResult result, int i, double end) {
        return i == result.aperturesMm().size() ? end : result.aperturesMm().get(i);
    }
}
