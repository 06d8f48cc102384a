package org.evenfall.wizard.picture;

import java.util.List;
import org.evenfall.finding.Arg;
import org.evenfall.finding.Sentences;
import org.evenfall.quantity.Unit;
import org.evenfall.reference.MatchResult;
import org.evenfall.reference.RankedReference;
import org.jspecify.annotations.Nullable;

/** The product beside the nearest three: how many metres nearer or further each throws the new one, with its interval. */
public final class MatchPicture extends Picture {

    private final Sentences words;
    private @Nullable MatchResult result;

    public MatchPicture(Sentences words) {
        this.words = words;
    }

    public void show(@Nullable MatchResult shown) {
        result = shown;
        changed();
    }

    @Override
    protected void draw(double width, double height) {
        if (result == null || result.ranked().isEmpty()) {
            String told = result == null || result.throwAgainstDenseM() == null
                    ? words.text("missing.productFirst")
                    : words.text("picture.againstDense", Arg.number(Math.abs(result.throwAgainstDenseM()), 1, Unit.M));
            paragraph(em(), em(), width - 2 * em(), "p-soft", told);
            return;
        }
        List<RankedReference> best =
                result.ranked().subList(0, Math.min(3, result.ranked().size()));
        double reach = 1;
        for (RankedReference reference : best) {
            reach = Math.max(reach, Math.max(Math.abs(low(reference)), Math.abs(high(reference))));
        }
        double middle = width / 2;
        double scale = (width / 2 - 3 * em()) / reach;
        text(middle, 1.2 * em(), At.MIDDLE, "p-bold", words.text("picture.throwTitle"));
        text(1.2 * em(), 2.8 * em(), At.LEFT, "p-soft", words.text("picture.shorter"));
        text(width - 1.2 * em(), 2.8 * em(), At.RIGHT, "p-soft", words.text("picture.further"));
        double y = 4.2 * em();
        double room = Math.min(7 * em(), (height - y - 2 * em()) / best.size());
        line(middle, y, middle, y + room * best.size(), "p-ink-line");
        for (RankedReference reference : best) {
            row(reference, middle, scale, y, room);
            y += room;
        }
    }

    private void row(RankedReference reference, double middle, double scale, double y, double room) {
        double value = reference.throwDifferenceM() == null ? 0 : reference.throwDifferenceM();
        double x = middle + value * scale;
        text(1.2 * em(), y + 0.9 * em(), At.LEFT, "p-bold", reference.name());
        double bar = y + 2.3 * em();
        box(Math.min(middle, x), bar - 0.55 * em(), Math.abs(x - middle), 1.1 * em(), "p-straw");
        double from = middle + low(reference) * scale;
        double to = middle + high(reference) * scale;
        line(from, bar, to, bar, "p-ink-line");
        line(from, bar - 0.4 * em(), from, bar + 0.4 * em(), "p-ink-line");
        line(to, bar - 0.4 * em(), to, bar + 0.4 * em(), "p-ink-line");
        if (room > 4.6 * em()) {
            String sign = value > 0 ? "+" : "";
            text(
                    1.2 * em(),
                    y + 3.8 * em(),
                    At.LEFT,
                    "p-soft",
                    sign + words.number(value, 1, Unit.M) + " · "
                            + words.text(
                                    "picture.closest", Arg.number(100 * reference.closestShare(), 0, Unit.PERCENT)));
        }
    }

    private static double low(RankedReference reference) {
        return reference.throwLowM() == null ? 0 : reference.throwLowM();
    }

    private static double high(RankedReference reference) {
        return reference.throwHighM() == null ? 0 : reference.throwHighM();
    }
}
