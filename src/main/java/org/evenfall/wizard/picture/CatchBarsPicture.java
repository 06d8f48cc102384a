package org.evenfall.wizard.picture;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import javafx.scene.text.TextAlignment;
import org.evenfall.finding.Arg;
import org.evenfall.finding.Sentences;
import org.evenfall.quantity.Unit;
import org.evenfall.trays.CvLimits;
import org.jspecify.annotations.Nullable;

/**
 * The catches while they are typed: a bar at the true place of each tray, an open outline where none is typed yet, the
 * place that is being typed marked; from three catches on their mean and 10 and 15 % off it as bands.
 */
public final class CatchBarsPicture extends Picture {

    /** Fewest catches whose mean is drawn. Ours. */
    private static final int FEWEST = 3;

    /** From here on no decimal is shown. */
    private static final double WHOLE_FROM = 100;

    private static final double HEAD_EM = 2.8;
    private static final double FOOT_EM = 4.6;

    private List<Double> placesM = List.of();
    private List<@Nullable Double> catches = List.of();
    private String unit = "";
    private int current = -1;

    /** Begins with nothing to show. */
    public CatchBarsPicture(Sentences words) {
        super(words, 0.85);
        show(List.of(), List.of(), "", -1);
    }

    /**
     * Draws this.
     *
     * @param traysM places of the trays, m, negative left, from left to right
     * @param typed catch of each, as many; null while not typed
     * @param unitSymbol unit of the catches
     * @param tray which is being typed, from 0; -1: none
     */
    public void show(List<Double> traysM, List<@Nullable Double> typed, String unitSymbol, int tray) {
        if (traysM.size() != typed.size()) {
            throw new IllegalArgumentException("one catch a place: " + traysM + ", " + typed);
        }
        placesM = List.copyOf(traysM);
        catches = Collections.unmodifiableList(new ArrayList<>(typed));
        unit = unitSymbol;
        current = tray < placesM.size() ? tray : -1;
        redraw(
                placesM.isEmpty()
                        ? words.text("picture.catches.empty")
                        : words.text(
                                "picture.catches.spoken",
                                Arg.count(typedCatches().size()),
                                Arg.count(placesM.size())));
    }

    private List<Double> typedCatches() {
        return catches.stream().filter(Objects::nonNull).toList();
    }

    /** Mean of the catches typed so far; 0 while there are too few. */
    private double mean() {
        List<Double> typed = typedCatches();
        return typed.size() < FEWEST
                ? 0
                : typed.stream().mapToDouble(Double::doubleValue).average().orElse(0);
    }

    @Override
    void draw(Brush brush, double width, double height) {
        if (placesM.isEmpty()) {
            nothingYet(brush, width, height, words.text("picture.catches.empty"));
            return;
        }
        double em = brush.em();
        double mean = mean();
        double highest = Math.max(
                typedCatches().stream().mapToDouble(Double::doubleValue).max().orElse(0),
                mean * (1 + CvLimits.FIELD_PERCENT / 100));
        boolean any = highest > 0;
        Scale up = new Scale(0, any ? 1.05 * highest : 1, height - FOOT_EM * em, HEAD_EM * em);
        double left = any ? new Marks(brush).upAxisWide(up, words) : 0.5 * em;
        double right = width - (mean > 0 ? BarsAcross.levelsWide(brush, words) : 0.5 * em);
        BarsAcross bars = BarsAcross.of(brush, List.of(placesM), left, right, up);
        current(brush, bars, left, right);
        if (mean > 0) {
            bars.bands(mean, left, right);
            bars.levels(BarsAcross.levels(mean, words), right + 0.3 * em, TextAlignment.LEFT);
        }
        for (int i = 0; i < placesM.size(); i++) {
            bar(bars, i);
        }
        if (mean > 0) {
            bars.mean(mean, left, right);
        }
        bars.floor(left, right);
        numbers(bars);
        if (any) {
            new Marks(brush).upAxis(up, left, words);
        }
        foot(brush, bars, mean, width);
    }

    /** The place that is being typed: its column is tinted, its number is over it. */
    private void current(Brush brush, BarsAcross bars, double left, double right) {
        if (current < 0) {
            return;
        }
        double em = brush.em();
        double x = bars.across().at(placesM.get(current));
        double wide = Math.max(bars.bar(), 0.6 * em);
        Palette palette = brush.palette();
        brush.box(x - wide / 2, 1.6 * em, wide, bars.up().start() - 1.6 * em, Palette.faint(palette.accent(), 0.16));
        brush.within(
                words.text("picture.catches.now", Arg.count(current + 1L)),
                x,
                0.9 * em,
                brush.body().heavy().in(palette.accent()),
                TextAlignment.CENTER,
                Math.min(left, 0.3 * em),
                Math.max(right, bars.across().end()));
    }

    private void bar(BarsAcross bars, int tray) {
        Palette palette = bars.brush().palette();
        Double typed = catches.get(tray);
        boolean now = tray == current;
        if (typed == null) {
            bars.open(placesM.get(tray), now ? palette.accent() : palette.soft());
        } else {
            bars.bar(placesM.get(tray), typed, 0, Palette.faint(palette.straw(), 0.75), now ? palette.accent() : null);
        }
    }

    /** Numbers over the bars: first of the one being typed, then of the highest and the lowest, then where there is room. */
    private void numbers(BarsAcross bars) {
        boolean whole = typedCatches().stream().allMatch(each -> each >= WHOLE_FROM || each == Math.rint(each));
        int decimals = whole ? 0 : 1;
        List<BarTops.Top> tops = new ArrayList<>();
        for (int i = 0; i < placesM.size(); i++) {
            Double typed = catches.get(i);
            if (typed != null) {
                tops.add(new BarTops.Top(placesM.get(i), typed, words.number(typed, decimals, Unit.NONE)));
            }
        }
        Brush brush = bars.brush();
        BarTops numbers = new BarTops(bars, tops);
        double now = current < 0 ? Double.NaN : placesM.get(current);
        tops.stream().filter(top -> top.placeM() == now).forEach(top -> number(numbers, brush, top, true));
        tops.stream()
                .filter(top -> top.placeM() != now)
                .sorted(Comparator.comparingDouble(BarTops.Top::value).reversed())
                .forEach(top -> number(numbers, brush, top, false));
    }

    private static void number(BarTops numbers, Brush brush, BarTops.Top top, boolean now) {
        Palette palette = brush.palette();
        numbers.number(top, brush.note().heavy().in(now ? palette.accent() : palette.ink()));
    }

    /** Places, the axis with both units, and how many are typed with their mean. */
    private void foot(Brush brush, BarsAcross bars, double mean, double width) {
        double em = brush.em();
        double floor = bars.up().start();
        TrayPlaces places = new TrayPlaces(brush, words, placesM);
        places.draw(floor, bars.across());
        Arg symbol = Arg.text(unit);
        places.axis(
                floor,
                width,
                words.text("picture.catches.axis", symbol),
                words.text("picture.catches.axisShort", symbol));
        int typed = typedCatches().size();
        int decimals = mean < WHOLE_FROM ? 1 : 0;
        String progress = mean > 0
                ? words.text(
                        "picture.catches.mean",
                        Arg.count(typed),
                        Arg.count(placesM.size()),
                        Arg.text(words.number(mean, decimals, Unit.NONE) + "\u00a0" + unit))
                : words.text("picture.catches.typed", Arg.count(typed), Arg.count(placesM.size()));
        double edge = 0.3 * em;
        Lettering heavy = brush.body().heavy();
        brush.within(progress, width / 2, floor + 3.6 * em, heavy, TextAlignment.CENTER, edge, width - edge);
    }
}
