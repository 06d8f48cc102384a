package org.evenfall.wizard.picture;

import java.util.List;
import java.util.stream.Collectors;
import javafx.scene.text.TextAlignment;
import org.evenfall.finding.Arg;
import org.evenfall.finding.Sentences;
import org.evenfall.quantity.Unit;
import org.evenfall.rate.NitrogenSplits;
import org.evenfall.rate.RatePlan;
import org.jspecify.annotations.Nullable;

/** The season's nitrogen as a bar of passes, this one marked; below it, to the same scale, the product that this pass takes. */
public final class SeasonPicture extends Picture {

    private static final double BAR_EM = 3;

    private RatePlan.@Nullable Amounts amounts;
    private List<Double> passes = List.of();
    private List<Integer> these = List.of();

    /** Begins with nothing to show. */
    public SeasonPicture(Sentences words) {
        super(words, 0.8);
        show(null, null);
    }

    /**
     * Draws these.
     *
     * @param now amounts of this pass; null while they are not known
     * @param season null while no pass is listed: then this pass alone
     */
    public void show(RatePlan.@Nullable Amounts now, @Nullable NitrogenSplits season) {
        amounts = now;
        passes = season != null ? season.passesKgPerHa() : now == null ? List.of() : List.of(now.nitrogenKgPerHa());
        these = season != null ? season.thisPassNumbers() : List.of(1);
        redraw(spoken(now));
    }

    private String spoken(RatePlan.@Nullable Amounts now) {
        String season =
                passes.stream().map(kg -> words.number(kg, 0, Unit.NONE)).collect(Collectors.joining(", "));
        return now == null
                ? words.text("picture.season.empty")
                : words.text(
                        "picture.season.spoken",
                        Arg.text(season),
                        Arg.number(now.nitrogenKgPerHa(), 0, Unit.KG_PER_HA),
                        Arg.number(now.productKgPerHa(), 0, Unit.KG_PER_HA));
    }

    @Override
    void draw(Brush brush, double width, double height) {
        if (passes.isEmpty()) {
            nothingYet(brush, width, height, words.text("picture.season.empty"));
            return;
        }
        double em = brush.em();
        double sum = passes.stream().mapToDouble(Double::doubleValue).sum();
        double longest = amounts == null ? sum : Math.max(sum, amounts.productKgPerHa());
        Scale across = new Scale(0, 1.06 * longest, 1.4 * em, width - 1.4 * em);
        double all = (amounts == null ? 8 : 15.5) * em;
        double top = Math.max(0.6 * em, (height - all) / 2);
        double foot = season(brush, across, top, width);
        RatePlan.Amounts now = amounts;
        if (now != null) {
            foot = product(brush, across, now, foot + 1.6 * em, width);
        }
        new Marks(brush).axis(across, foot + 0.8 * em, words.text("picture.season.axis"), words);
    }

    /** All passes, one after the other; gives the y under them. */
    private double season(Brush brush, Scale across, double top, double width) {
        double em = brush.em();
        Palette palette = brush.palette();
        brush.within(
                words.text("picture.season.passes"),
                across.start(),
                top + 0.6 * em,
                brush.body().heavy(),
                TextAlignment.LEFT,
                0,
                width);
        double y = top + 1.5 * em;
        double from = 0;
        for (int i = 0; i < passes.size(); i++) {
            double kg = passes.get(i);
            boolean now = these.contains(i + 1);
            double left = across.at(from);
            double wide = across.length(kg);
            brush.box(left, y, wide, BAR_EM * em, now ? palette.accent() : Palette.faint(palette.accent(), 0.18));
            brush.frame(left, y, wide, BAR_EM * em, palette.accent(), 1.5);
            Lettering lettering = brush.body().in(now ? palette.paper() : palette.ink());
            brush.within(
                    words.number(kg, 0, Unit.NONE),
                    left + wide / 2,
                    y + BAR_EM * em / 2,
                    now ? lettering.heavy() : lettering,
                    TextAlignment.CENTER,
                    left + 2,
                    left + wide - 2);
            from += kg;
        }
        return y + BAR_EM * em;
    }

    /** The product of this pass with the nitrogen in it; gives the y under it. */
    private double product(Brush brush, Scale across, RatePlan.Amounts now, double top, double width) {
        double em = brush.em();
        Palette palette = brush.palette();
        double y = top + 0.9 * em;
        brush.within(
                words.text("picture.season.product", Arg.number(now.productKgPerHa(), 0, Unit.KG_PER_HA)),
                across.start(),
                top,
                brush.body().heavy().in(palette.straw()),
                TextAlignment.LEFT,
                0,
                width);
        brush.box(
                across.start(),
                y,
                across.length(now.productKgPerHa()),
                BAR_EM * em,
                Palette.faint(palette.straw(), 0.25));
        brush.box(across.start(), y, across.length(now.nitrogenKgPerHa()), BAR_EM * em, palette.accent());
        brush.frame(across.start(), y, across.length(now.productKgPerHa()), BAR_EM * em, palette.straw(), 2);
        brush.within(
                words.text("picture.season.nitrogen", Arg.number(now.nitrogenKgPerHa(), 0, Unit.NONE)),
                across.start() + across.length(now.nitrogenKgPerHa()) / 2,
                y + BAR_EM * em / 2,
                brush.body().heavy().in(palette.paper()),
                TextAlignment.CENTER,
                across.start() + 2,
                across.start() + across.length(now.nitrogenKgPerHa()) - 2);
        return y + BAR_EM * em;
    }
}
