package org.evenfall.wizard.picture;

import javafx.scene.paint.Color;
import javafx.scene.text.TextAlignment;
import org.evenfall.finding.Arg;
import org.evenfall.finding.Sentences;
import org.evenfall.quantity.Interval;
import org.evenfall.quantity.Unit;
import org.evenfall.reference.MatchResult;
import org.evenfall.reference.Reachability;
import org.jspecify.annotations.Nullable;

/** How far it lands from a 27 % N product, and the tramline width wanted against the width in reach: both by the model. */
public final class ReachPicture extends Picture {

    /** Height of one axis with what is over it, and the least of two, em. */
    private static final double PART_EM = 10.6;

    private static final double LEAST_EM = 18;

    private @Nullable MatchResult match;
    private @Nullable Double widthM;

    /** Begins with nothing to show. */
    public ReachPicture(Sentences words) {
        super(words, 0.95);
        show(null, null);
    }

    /** Draws this; null: nothing yet. */
    public void show(@Nullable MatchResult result, @Nullable Double tramlineWidthM) {
        match = result;
        widthM = tramlineWidthM;
        redraw(against() == null ? words.text("picture.reach.empty") : against() + ". " + reachable());
    }

    private @Nullable String against() {
        MatchResult result = match;
        if (result == null || result.throwAgainstDenseM() == null) {
            return null;
        }
        double metres = result.throwAgainstDenseM();
        return words.text(
                metres < 0 ? "picture.reach.short" : "picture.reach.beyond", Arg.number(Math.abs(metres), 1, Unit.M));
    }

    private String reachable() {
        MatchResult result = match;
        Reachability reach = result == null ? null : result.reachability();
        if (reach == null) {
            return "";
        }
        return words.text(
                switch (reach) {
                    case YES -> "picture.reach.yes";
                    case DOUBTFUL -> "picture.reach.doubtful";
                    case PROBABLY_NOT -> "picture.reach.probablyNot";
                });
    }

    @Override
    void draw(Brush brush, double width, double full) {
        MatchResult result = match;
        if (result == null || result.throwAgainstDenseM() == null) {
            nothingYet(brush, width, full, words.text("picture.reach.empty"));
            return;
        }
        double em = brush.em();
        double height = new Caption(words.text("picture.reach.model")).draw(brush, width, full);
        Double widestM = result.widestReachableM();
        Double wantedM = widthM;
        boolean both = widestM != null && wantedM != null;
        double second = both ? Math.min(PART_EM * em, height / 2) : 0;
        if (widestM != null && wantedM != null && height < LEAST_EM * em) {
            // no room for two axes: the throw in words
            title(brush, words.text("picture.reach.title"), 0, width);
            title(brush, String.valueOf(against()), 1.4 * em, width);
            widths(brush, widestM, wantedM, 3.2 * em, Math.min(height, 13 * em), width);
            return;
        }
        double first = Math.min(PART_EM * em, height - second);
        double top = (height - first - second) / 2;
        against(brush, result, top, top + first, width);
        if (widestM != null && wantedM != null) {
            widths(brush, widestM, wantedM, top + first, top + first + second, width);
        }
    }

    private static void title(Brush brush, String text, double top, double width) {
        double em = brush.em();
        brush.within(text, 0.8 * em, top + 0.8 * em, brush.body().heavy(), TextAlignment.LEFT, 0.8 * em, width);
    }

    private void against(Brush brush, MatchResult result, double top, double foot, double width) {
        double em = brush.em();
        Palette palette = brush.palette();
        title(brush, words.text("picture.reach.title"), top, width);
        double metres = result.throwAgainstDenseM() == null ? 0 : result.throwAgainstDenseM();
        Interval interval = result.throwAgainstDenseIntervalM();
        double low = interval == null ? metres : interval.low();
        double high = interval == null ? metres : interval.high();
        double room = Math.max(1, 0.12 * (Math.max(0, high) - Math.min(0, low)));
        Scale across = new Scale(Math.min(0, low) - room, Math.max(0, high) + room, 1.2 * em, width - 1.2 * em);
        double floor = foot - 3.2 * em;
        double y = floor - Math.min(1.4 * em, 0.2 * (foot - top));
        double zero = across.at(0);
        brush.line(zero, top + 4.4 * em, zero, floor, palette.straw(), 2);
        brush.within(
                words.text("picture.reach.dense"),
                zero,
                top + 3.6 * em,
                brush.body().in(palette.straw()),
                TextAlignment.CENTER,
                0.4 * em,
                width - 0.4 * em);
        brush.box(
                across.at(low),
                y - 0.3 * em,
                across.length(high - low),
                0.6 * em,
                Palette.faint(palette.accent(), 0.3));
        new Marks(brush).disc(across.at(metres), y, 0.45 * em, palette.accent());
        String text = against();
        brush.within(
                text == null ? "" : text,
                across.at(metres),
                top + 2.2 * em,
                brush.body().heavy().in(palette.accent()),
                TextAlignment.CENTER,
                0.4 * em,
                width - 0.4 * em);
        new Marks(brush).axis(across, floor, words.text("picture.reach.axis"), words);
    }

    private void widths(Brush brush, double reachM, double wantedM, double top, double foot, double width) {
        double em = brush.em();
        title(brush, reachable(), top, width);
        double floor = foot - 3.2 * em;
        Scale across = new Scale(0, 1.08 * Math.max(reachM, wantedM), 1.2 * em, width - 1.2 * em);
        double high = Math.min(2.2 * em, (floor - top - 2 * em) / 2);
        bar(
                brush,
                across,
                wantedM,
                floor - 2 * high,
                high,
                "picture.reach.wanted",
                brush.palette().soft());
        bar(
                brush,
                across,
                reachM,
                floor - high,
                high,
                "picture.reach.inReach",
                brush.palette().accent());
        new Marks(brush).axis(across, floor, words.text("picture.reach.widthAxis"), words);
    }

    private void bar(Brush brush, Scale across, double metres, double y, double high, String key, Color colour) {
        double em = brush.em();
        double end = across.at(metres);
        brush.box(across.start(), y + 2, end - across.start(), high - 4, Palette.faint(colour, 0.25));
        brush.line(end, y + 2, end, y + high - 2, colour, 2.5);
        String text = words.text(key, Arg.number(metres, 0, Unit.M));
        boolean inside = brush.width(text, brush.body().heavy()) < end - across.start() - em;
        double start = (inside ? across.start() : end) + 0.5 * em;
        brush.text(text, start, y + high / 2, brush.body().heavy(), TextAlignment.LEFT);
    }
}
