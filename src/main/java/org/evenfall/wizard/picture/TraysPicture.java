package org.evenfall.wizard.picture;

import java.util.List;
import org.evenfall.finding.Arg;
import org.evenfall.finding.Sentences;
import org.evenfall.quantity.Unit;
import org.evenfall.setup.TraysResult;
import org.evenfall.trays.Evenness;
import org.evenfall.trays.TrayLayout;
import org.jspecify.annotations.Nullable;

/** The trays and the three passes to scale from above, and beneath them the tubes of the last test with its bands. */
public final class TraysPicture extends Picture {

    private final Sentences words;
    private @Nullable TraysResult result;

    public TraysPicture(Sentences words) {
        this.words = words;
    }

    public void show(TraysResult shown) {
        result = shown;
        changed();
    }

    @Override
    protected void draw(double width, double height) {
        TrayLayout layout = result == null ? null : result.layout();
        if (layout == null) {
            paragraph(em(), em(), width - 2 * em(), "p-soft", words.text("missing.widthFirst"));
            return;
        }
        double planHeight = Math.min(15 * em(), height * 0.42);
        plan(layout, width, planHeight);
        if (result != null && !result.tests().isEmpty()) {
            List<Evenness> tests =
                    result.tests().stream().map(test -> test.evenness()).toList();
            tubes(tests, width, planHeight + 2 * em(), height - em());
        }
    }

    private void plan(TrayLayout layout, double width, double bottom) {
        double reach = layout.tramlineWidthM() * 1.18;
        double scale = (width / 2 - em()) / reach;
        double middle = width / 2;
        double road = bottom - 4.4 * em();
        for (int i = 0; i < layout.passesM().size(); i++) {
            double x = middle + layout.passesM().get(i) * scale;
            boolean forward = layout.passForward().get(i);
            line(x - 0.35 * em(), 2.4 * em(), x - 0.35 * em(), road + 1.6 * em(), "p-track");
            line(x + 0.35 * em(), 2.4 * em(), x + 0.35 * em(), road + 1.6 * em(), "p-track");
            arrow(x, forward ? road : 3 * em(), x, forward ? 3 * em() : road, "p-accent-line");
            text(x, 1.2 * em(), At.MIDDLE, "", words.text("picture.pass", Arg.count(i + 1L)));
        }
        double y = (2.4 * em() + road) / 2 + em();
        double side = Math.max(0.8 * em(), Math.sqrt(layout.trayAreaM2()) * scale);
        for (double position : layout.positionsM()) {
            double x = middle + position * scale;
            // aside from the wheel marks
            double shift = Math.abs(position) < 0.01 ? 0.9 * em() : 0;
            box(x - side / 2 + shift, y - side / 2, side, side, "p-straw p-outline");
        }
        double measure = bottom - 1.6 * em();
        for (int i = 0; i < layout.positionsM().size(); i++) {
            double position = layout.positionsM().get(i);
            if (layout.positionsM().size() <= 9 || i % 4 == 0) {
                text(
                        middle + position * scale,
                        measure,
                        At.MIDDLE,
                        "p-soft p-small",
                        words.number(position, Math.abs(position - Math.rint(position)) < 0.05 ? 0 : 1, Unit.NONE));
            }
        }
        text(
                middle,
                measure + 1.4 * em(),
                At.MIDDLE,
                "p-soft p-small",
                words.text("picture.metresFromMiddle", Arg.number(layout.tramlineWidthM(), 0, Unit.M)));
    }

    private void tubes(List<Evenness> tests, double width, double top, double bottom) {
        Evenness last = tests.get(tests.size() - 1);
        double left = em();
        double right = width - 4.2 * em();
        double base = bottom - 1.6 * em();
        double tallest = 130;
        for (double percent : last.relativePercent()) {
            tallest = Math.max(tallest, percent + 8);
        }
        double scale = (base - top) / tallest;
        double[][] bands = {{85, 115}, {90, 110}};
        for (double[] band : bands) {
            box(left, base - band[1] * scale, right - left, (band[1] - band[0]) * scale, "p-line-fill");
        }
        int n = last.relativePercent().size();
        double step = (right - left) / n;
        double tube = Math.min(2.6 * em(), 0.6 * step);
        for (int i = 0; i < n; i++) {
            double percent = last.relativePercent().get(i);
            double x = left + (i + 0.5) * step;
            box(x - tube / 2, base - percent * scale, tube, percent * scale, "p-straw");
            boolean marked = i == last.lowestTray() || i == last.highestTray();
            if (n <= 11 || marked) {
                text(
                        x,
                        base - percent * scale - 0.8 * em(),
                        At.MIDDLE,
                        marked ? "p-bold" : "",
                        words.number(percent, 0, Unit.NONE));
            }
        }
        line(left, base - 100 * scale, right, base - 100 * scale, "p-ink-line");
        line(left, base, right, base, "p-ink-line");
        text(right + 0.4 * em(), base - 100 * scale, At.LEFT, "p-small", words.text("picture.mean"));
        text(right + 0.4 * em(), base - 115 * scale, At.LEFT, "p-soft p-small", "+15 %");
        text(right + 0.4 * em(), base - 85 * scale, At.LEFT, "p-soft p-small", "−15 %");
        if (tests.size() > 1) {
            before(tests.get(tests.size() - 2), left, right, base, scale);
        }
        text(left, base + 1.1 * em(), At.LEFT, "p-soft p-small", words.text("picture.tubes"));
    }

    /** The test before as a line over the tubes. */
    private void before(Evenness earlier, double left, double right, double base, double scale) {
        int n = earlier.relativePercent().size();
        double[] xy = new double[2 * n];
        for (int i = 0; i < n; i++) {
            xy[2 * i] = left + (i + 0.5) * (right - left) / n;
            xy[2 * i + 1] = base - earlier.relativePercent().get(i) * scale;
        }
        curve("p-dash", xy);
    }
}
