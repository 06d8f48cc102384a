package org.evenfall.wizard.picture;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import javafx.scene.paint.Color;
import javafx.scene.text.TextAlignment;
import org.evenfall.finding.Arg;
import org.evenfall.finding.Sentences;
import org.evenfall.quantity.Interval;
import org.evenfall.quantity.Unit;
import org.evenfall.reference.MatchResult;
import org.evenfall.reference.RankedProduct;
import org.evenfall.result.MatchLines;
import org.evenfall.setup.ProductResult;
import org.jspecify.annotations.Nullable;

/**
 * The product and the best three tested ones side by side: density, median size, spread index, each named on its own bar;
 * below, how far the product lands short of each or beyond it, with its 90 % interval.
 */
public final class MatchPicture extends Picture {

    private static final int SHOWN = 3;

    private @Nullable MatchResult match;
    private @Nullable ProductResult product;
    private String name = "";

    /** Begins with nothing to show. */
    public MatchPicture(Sentences words) {
        super(words, 1.15);
        show(null, null, "");
    }

    /** @param productName what the person calls the product */
    public void show(@Nullable MatchResult result, @Nullable ProductResult measured, String productName) {
        match = result;
        product = measured;
        name = productName.isBlank() ? words.text("picture.match.product") : productName;
        RankedProduct best = best(result);
        redraw(
                best == null
                        ? alone()
                        : words.text("picture.match.spoken", Arg.text(named(best)), Arg.text(difference(best))));
    }

    private static @Nullable RankedProduct best(@Nullable MatchResult result) {
        return result == null || result.ranked().isEmpty()
                ? null
                : result.ranked().get(0);
    }

    /** What is known without any tested product. */
    private String alone() {
        Double against = match == null ? null : match.throwAgainstDenseM();
        if (against == null) {
            return words.text("picture.match.empty");
        }
        return words.text(
                against < 0 ? "picture.match.denseShort" : "picture.match.denseBeyond",
                Arg.number(Math.abs(against), 1, Unit.M));
    }

    /** One quantity of all products. */
    private record Panel(String title, Unit unit, int decimals, List<@Nullable Double> values) {}

    @Override
    void draw(Brush brush, double width, double height) {
        MatchResult result = match;
        if (result == null || result.ranked().isEmpty()) {
            nothingYet(brush, width, height, alone());
            return;
        }
        List<RankedProduct> best =
                result.ranked().subList(0, Math.min(SHOWN, result.ranked().size()));
        List<Panel> panels = panels(best);
        double em = brush.em();
        double throwHigh = (1.7 + 2.5 * best.size() + 2.6) * em;
        double least = (1.5 + 1.15 * (best.size() + 1)) * em;
        while (panels.size() > 1 && throwHigh + panels.size() * least > height) {
            panels.remove(panels.size() - 1);
        }
        double panelHigh =
                Math.min((1.9 + 1.75 * (best.size() + 1)) * em, Math.max(least, (height - throwHigh) / panels.size()));
        double y = 0;
        for (Panel panel : panels) {
            panel(brush, panel, best, y, panelHigh, width);
            y += panelHigh;
        }
        throwing(brush, best, y, height, width);
    }

    private List<Panel> panels(List<RankedProduct> best) {
        ProductResult own = product;
        List<Panel> panels = new ArrayList<>();
        panels.add(panel(
                "picture.match.density",
                Unit.KG_PER_L,
                2,
                own == null || own.density() == null
                        ? null
                        : Double.valueOf(own.density().meanKgPerL()),
                best,
                reference -> reference.own().bulkDensityKgPerL()));
        panels.add(panel(
                "picture.match.median",
                Unit.MM,
                1,
                own == null || own.sieve() == null
                        ? null
                        : Double.valueOf(own.sieve().distribution().d50Mm()),
                best,
                reference -> reference.own().d50Mm()));
        panels.add(panel(
                "picture.match.spread",
                Unit.NONE,
                0,
                own == null || own.sieve() == null
                        ? null
                        : Double.valueOf(own.sieve().distribution().spreadIndexPercent()),
                best,
                reference -> reference.own().spreadIndexPercent()));
        return panels;
    }

    private Panel panel(
            String key,
            Unit unit,
            int decimals,
            @Nullable Double own,
            List<RankedProduct> best,
            Function<RankedProduct, @Nullable Double> value) {
        List<@Nullable Double> values = new ArrayList<>();
        values.add(own);
        for (RankedProduct reference : best) {
            values.add(value.apply(reference));
        }
        return new Panel(words.text(key), unit, decimals, values);
    }

    private void panel(Brush brush, Panel panel, List<RankedProduct> best, double top, double high, double width) {
        double em = brush.em();
        Palette palette = brush.palette();
        brush.within(
                panel.title(), 0.3 * em, top + 0.8 * em, brush.body().heavy(), TextAlignment.LEFT, 0.3 * em, width);
        double most = 1e-9;
        for (Double value : panel.values()) {
            most = value == null ? most : Math.max(most, value);
        }
        double figures = 5.2 * em;
        Scale across = new Scale(0, most, 0.3 * em, width - figures);
        double row = (high - 1.5 * em) / panel.values().size();
        for (int i = 0; i < panel.values().size(); i++) {
            double y = top + 1.5 * em + i * row;
            Double value = panel.values().get(i);
            Color colour = i == 0 ? palette.straw() : palette.accent();
            double end = across.at(value == null ? 0 : value);
            brush.box(
                    across.start(),
                    y + 1,
                    Math.max(2, end - across.start()),
                    row - 3,
                    Palette.faint(colour, i == 0 ? 0.42 : 0.2));
            Lettering label = (i == 0 ? brush.note().heavy() : brush.note()).in(palette.ink());
            String whose = i == 0 ? name : named(best.get(i - 1));
            double start = across.start() + 0.4 * em;
            brush.within(whose, start, y + row / 2, label, TextAlignment.LEFT, start, width - figures);
            double named = Math.min(width - figures, start + brush.width(whose, label));
            brush.text(
                    value == null
                            ? words.text("picture.match.unknown")
                            : words.number(value, panel.decimals(), panel.unit()),
                    Math.max(end, named) + 0.4 * em,
                    y + row / 2,
                    label,
                    TextAlignment.LEFT);
        }
    }

    private void throwing(Brush brush, List<RankedProduct> best, double top, double height, double width) {
        double em = brush.em();
        brush.within(
                words.text("picture.match.throw"),
                0.3 * em,
                top + 0.8 * em,
                brush.body().heavy(),
                TextAlignment.LEFT,
                0.3 * em,
                width);
        double most = 1;
        for (RankedProduct reference : best) {
            Interval interval = reference.throwDifference().intervalM();
            most = Math.max(most, Math.max(Math.abs(interval.low()), Math.abs(interval.high())));
        }
        double floor = height - 2.7 * em;
        Scale across = new Scale(-1.1 * most, 1.1 * most, 1.2 * em, width - 1.2 * em);
        double zero = across.at(0);
        brush.line(zero, top + 1.6 * em, zero, floor, brush.palette().straw(), 2);
        double row = (floor - top - 1.6 * em) / best.size();
        for (int i = 0; i < best.size(); i++) {
            RankedProduct reference = best.get(i);
            double y = top + 1.6 * em + (i + 0.5) * row;
            Lettering lettering = brush.note().in(brush.palette().ink());
            String against = words.text("picture.match.row", Arg.text(""), Arg.text(difference(reference)));
            String whose =
                    brush.fitted(named(reference), width - 1.2 * em - brush.width(against, lettering), lettering);
            brush.onPaper(
                    words.text("picture.match.row", Arg.text(whose), Arg.text(difference(reference))),
                    across.at(0),
                    y - 0.35 * row + 0.2 * em,
                    lettering,
                    TextAlignment.CENTER,
                    0.3 * em,
                    width - 0.3 * em);
            brush.line(
                    across.clamped(reference.throwDifference().intervalM().low()),
                    y + 0.25 * row,
                    across.clamped(reference.throwDifference().intervalM().high()),
                    y + 0.25 * row,
                    brush.palette().accent(),
                    2.5);
            new Marks(brush)
                    .disc(
                            across.clamped(reference.throwDifference().metres()),
                            y + 0.25 * row,
                            0.42 * em,
                            brush.palette().accent());
        }
        new Marks(brush).axis(across, floor, words.text("picture.match.axis"), words);
    }

    private String named(RankedProduct reference) {
        return MatchLines.name(words, reference.id(), reference.name());
    }

    private String difference(RankedProduct reference) {
        double metres = reference.throwDifference().metres();
        return words.text(
                metres < -0.05 ? "picture.match.short" : metres > 0.05 ? "picture.match.beyond" : "picture.match.same",
                Arg.number(Math.abs(metres), 1, Unit.M));
    }
}
