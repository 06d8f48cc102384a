package org.evenfall.wizard.picture;

import java.util.List;
import org.evenfall.finding.Arg;
import org.evenfall.finding.Sentences;
import org.evenfall.granule.SieveResult;
import org.evenfall.granule.SizeDistribution;
import org.evenfall.quantity.Unit;
import org.evenfall.setup.ProductResult;
import org.jspecify.annotations.Nullable;

/** The sieve box from the side: what lay between the sieves, and the fitted curve over it. */
public final class SievePicture extends Picture {

    private final Sentences words;
    private @Nullable ProductResult result;

    public SievePicture(Sentences words) {
        this.words = words;
    }

    public void show(ProductResult shown) {
        result = shown;
        changed();
    }

    @Override
    protected void draw(double width, double height) {
        SieveResult sieve = result == null ? null : result.sieve();
        if (sieve == null) {
            paragraph(em(), em(), width - 2 * em(), "p-soft", words.text("picture.noSieve"));
            density(height - 2 * em());
            return;
        }
        double left = 2 * em();
        double right = width - 2 * em();
        double top = 4.2 * em();
        double bottom = height - 6.5 * em();
        List<Double> apertures = sieve.aperturesMm();
        double from = 0;
        double to = apertures.get(apertures.size() - 1) * 1.45;
        double scaleX = (right - left) / (to - from);
        double tallest = tallest(sieve, to);
        double scaleY = (bottom - top) / tallest;
        for (int i = 0; i < sieve.sharesPercent().size(); i++) {
            double low = i == 0 ? from : apertures.get(i - 1);
            double high = i == apertures.size() ? to : apertures.get(i);
            double perMm = sieve.sharesPercent().get(i) / (high - low);
            double x = left + low * scaleX;
            box(x, bottom - perMm * scaleY, (high - low) * scaleX - 2, perMm * scaleY, "p-straw-soft");
            text(
                    x + (high - low) * scaleX / 2,
                    Math.max(top, bottom - perMm * scaleY) - 0.8 * em(),
                    At.MIDDLE,
                    "p-bold",
                    words.number(sieve.sharesPercent().get(i), 0, Unit.PERCENT));
        }
        curve(sieve.distribution(), left, bottom, scaleX, scaleY, to);
        line(left, bottom, right, bottom, "p-ink-line");
        for (double aperture : apertures) {
            double x = left + aperture * scaleX;
            line(x, bottom, x, bottom + 0.4 * em(), "p-ink-line");
            text(x, bottom + 1.1 * em(), At.MIDDLE, "", words.number(aperture, 2, Unit.NONE));
        }
        text(right, bottom + 1.1 * em(), At.RIGHT, "p-soft", Unit.MM.symbol());
        double median = left + sieve.d50Mm() * scaleX;
        line(median, top - 0.4 * em(), median, bottom, "p-accent-line");
        text(
                median,
                top - 1.4 * em(),
                At.MIDDLE,
                "p-bold p-accent-text",
                words.text("picture.median", number(sieve.d50Mm())));
        density(height - 4.2 * em());
    }

    private Arg number(double mm) {
        return Arg.number(mm, 1, Unit.MM);
    }

    private static double tallest(SieveResult sieve, double to) {
        double tallest = 1;
        List<Double> apertures = sieve.aperturesMm();
        for (int i = 0; i < sieve.sharesPercent().size(); i++) {
            double low = i == 0 ? 0 : apertures.get(i - 1);
            double high = i == apertures.size() ? to : apertures.get(i);
            tallest = Math.max(tallest, sieve.sharesPercent().get(i) / (high - low));
        }
        for (double d = 0.1; d < to; d += 0.1) {
            tallest = Math.max(tallest, perMm(sieve.distribution(), d));
        }
        return tallest * 1.1;
    }

    private static double perMm(SizeDistribution sizes, double d) {
        return 100 * (sizes.shareFinerThan(d + 0.05) - sizes.shareFinerThan(d - 0.05)) / 0.1;
    }

    private void curve(SizeDistribution sizes, double left, double bottom, double scaleX, double scaleY, double to) {
        int points = 120;
        double[] xy = new double[2 * points];
        for (int i = 0; i < points; i++) {
            double d = 0.1 + (to - 0.1) * i / (points - 1);
            xy[2 * i] = left + d * scaleX;
            xy[2 * i + 1] = bottom - perMm(sizes, d) * scaleY;
        }
        curve("p-straw-line", xy);
    }

    /** Density beside its published band, on a line from 0.6 to 1.1 kg/L. */
    private void density(double y) {
        if (result == null || result.density() == null) {
            return;
        }
        double left = 2 * em();
        double right = getWidth() - 2 * em();
        double scale = (right - left) / 0.5;
        result.bands().stream()
                .filter(band -> band.quantity().equals("bulkDensityKgPerL"))
                .forEach(band -> {
                    double x = left + (band.low() - 0.6) * scale;
                    box(x, y + 1.2 * em(), (band.high() - band.low()) * scale, 0.8 * em(), "p-line-fill");
                    text(
                            x + (band.high() - band.low()) * scale / 2,
                            y + 2.8 * em(),
                            At.MIDDLE,
                            "p-soft",
                            words.text("picture.published"));
                });
        line(left, y + 2 * em(), right, y + 2 * em(), "p-ink-line");
        double mean = result.density().meanKgPerL();
        double x = left + (Math.max(0.6, Math.min(1.1, mean)) - 0.6) * scale;
        polygon("p-straw", x, y + 2 * em(), x - 0.4 * em(), y + 1.1 * em(), x + 0.4 * em(), y + 1.1 * em());
        text(x, y + 0.4 * em(), At.MIDDLE, "p-bold", words.number(mean, 2, Unit.KG_PER_L));
    }
}
