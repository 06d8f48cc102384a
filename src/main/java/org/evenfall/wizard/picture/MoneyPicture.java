package org.evenfall.wizard.picture;

import javafx.scene.paint.Color;
import javafx.scene.text.TextAlignment;
import org.evenfall.finding.Sentences;
import org.evenfall.quantity.Unit;
import org.evenfall.rate.RatePlan;
import org.jspecify.annotations.Nullable;

/** What one kilogram of nitrogen costs from this product and from the one before, as bars from one zero. */
public final class MoneyPicture extends Picture {

    private static final double BAR_EM = 3.4;

    private @Nullable Double cost;
    private @Nullable Double otherCost;
    private String against = "";

    /** Begins with nothing to show. */
    public MoneyPicture(Sentences words) {
        super(words, 0.7);
        show(null, "");
    }

    /**
     * Draws these.
     *
     * @param money costs, in the currency of the prices; null while nothing is known
     * @param againstOther a sentence below: how much of this product gives the same nitrogen; may be empty
     */
    public void show(RatePlan.@Nullable Money money, String againstOther) {
        against = againstOther;
        cost = money == null ? null : money.costPerKgN();
        otherCost = money == null ? null : money.otherCostPerKgN();
        redraw((spoken() + " " + against).strip());
    }

    private String spoken() {
        if (cost == null && otherCost == null) {
            return words.text("picture.money.empty");
        }
        return words.text("picture.money.axis") + ": " + named("picture.money.this", cost) + ", "
                + named("picture.money.before", otherCost);
    }

    private String named(String key, @Nullable Double value) {
        return words.text(key) + " " + (value == null ? "–" : words.number(value, 2, Unit.NONE));
    }

    @Override
    void draw(Brush brush, double width, double full) {
        double height = new Caption(against).draw(brush, width, full);
        if (cost == null && otherCost == null) {
            nothingYet(brush, width, height, words.text("picture.money.empty"));
            return;
        }
        double em = brush.em();
        double longest = Math.max(cost == null ? 0 : cost, otherCost == null ? 0 : otherCost);
        Scale across = new Scale(0, 1.25 * longest, 1.4 * em, width - 1.4 * em);
        double top = Math.max(0.5 * em, (height - 15 * em) / 2);
        bar(
                brush,
                across,
                "picture.money.this",
                cost,
                top,
                width,
                brush.palette().straw());
        bar(
                brush,
                across,
                "picture.money.before",
                otherCost,
                top + 5.8 * em,
                width,
                brush.palette().soft());
        new Marks(brush).axis(across, top + 11.9 * em, words.text("picture.money.axis"), words);
    }

    private void bar(
            Brush brush, Scale across, String key, @Nullable Double value, double top, double width, Color colour) {
        double em = brush.em();
        brush.within(
                words.text(key), across.start(), top + 0.6 * em, brush.body().heavy(), TextAlignment.LEFT, 0, width);
        if (value == null) {
            return;
        }
        double y = top + 1.4 * em;
        double wide = across.length(value);
        brush.box(across.start(), y, wide, BAR_EM * em, Palette.faint(colour, 0.35));
        brush.frame(across.start(), y, wide, BAR_EM * em, colour, 2);
        brush.within(
                words.number(value, 2, Unit.NONE),
                across.start() + wide + 0.5 * em,
                y + BAR_EM * em / 2,
                brush.lead().in(colour),
                TextAlignment.LEFT,
                0,
                width - 0.2 * em);
    }
}
