package org.evenfall.wizard.picture;

import java.util.List;
import javafx.scene.text.TextAlignment;
import org.evenfall.finding.Arg;
import org.evenfall.finding.Sentences;
import org.evenfall.granule.PublishedBand;
import org.evenfall.granule.SieveResult;
import org.evenfall.granule.SizeCurve;
import org.evenfall.quantity.Unit;
import org.evenfall.result.SourceText;
import org.evenfall.setup.SieveCurve;
import org.jspecify.annotations.Nullable;

/**
 * The sieve classes as bars on an axis of sizes, the area of each its share of the weight; over them the fitted curve, the
 * sizes that 16, 50 and 84 % are finer than, and the published bands beneath. While nothing is typed: how to sieve.
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
            new SievingPanels(words).draw(brush, width, full);
            return;
        }
        SieveFoot foot = new SieveFoot(brush, words, result, bands);
        double height = new SourceNote(SourceText.line(words, foot.sources())).draw(brush, width, full);
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
        double floor = height - foot.high(width);
        Scale across = new Scale(0, end, 0.8 * em, width - 0.8 * em);
        Scale up = new Scale(0, Math.max(top, 1e-6), floor, 4.2 * em);
        bars(brush, result, across, up, end);
        for (List<SizeCurve.Point> part : CurveParts.below(up.to(), curve)) {
            brush.polyline(
                    part.stream().mapToDouble(p -> across.at(p.diameterMm())).toArray(),
                    part.stream().mapToDouble(p -> up.at(p.percentPerMm())).toArray(),
                    brush.palette().ink(),
                    2,
                    result.distribution().spreadIsBound());
        }
        sizes(brush, result, across, up, width);
        shares(brush, result, across, up, end);
        foot.draw(across, floor, width);
    }

    /** One bar a class, its area the share of the weight. */
    private static void bars(Brush brush, SieveResult result, Scale across, Scale up, double end) {
        Palette palette = brush.palette();
        for (int i = 0; i < result.sharesPercent().size(); i++) {
            double share = result.sharesPercent().get(i);
            double from = across.at(left(result, i)) + 1;
            double wide = across.at(right(result, i, end)) - 1 - from;
            double level = up.at(share / (right(result, i, end) - left(result, i)));
            brush.box(from, level, wide, up.start() - level, Palette.faint(palette.straw(), 0.35));
            brush.line(from, level, from + wide, level, palette.straw(), 2);
        }
        brush.line(across.start(), up.start(), across.end(), up.start(), palette.ink(), 1.5);
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

    /** The three sizes over the bars, each with its line down to the axis. */
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
        Lettering note = brush.body().in(palette.accent());
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

    private static double left(SieveResult result, int i) {
        return i == 0 ? 0 : result.aperturesMm().get(i - 1);
    }

    private static double right(SieveResult result, int i, double end) {
        return i == result.aperturesMm().size() ? end : result.aperturesMm().get(i);
    }
}
