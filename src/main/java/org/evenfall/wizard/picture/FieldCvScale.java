package org.evenfall.wizard.picture;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import javafx.geometry.Rectangle2D;
import javafx.scene.paint.Color;
import javafx.scene.text.TextAlignment;
import org.evenfall.finding.Sentences;
import org.evenfall.quantity.Interval;
import org.evenfall.trays.CvLimits;
import org.jspecify.annotations.Nullable;

/**
 * The axis of the field CV: bands at 10, 15 and 20 % with their words, and on them estimates with their intervals.
 *
 * @param brush draws
 * @param words words
 * @param across field CV, %, from 0
 * @param wordRows in how many rows the words of the bands may be set, 1 or 2
 */
record FieldCvScale(Brush brush, Sentences words, Scale across, int wordRows) {

    /** Usual end of the axis, %. */
    static final double END_PERCENT = 30;

    /**
     * Words of the bands. Above 15 % the median alone decides the verdict, so that the band has its word; below, the chance
     * decides too.
     */
    private static final List<String> BANDS = List.of(
            "picture.cv.band.good",
            "picture.cv.band.field",
            "choice.EvennessVerdict.NOT_EVEN_ENOUGH",
            "choice.EvennessVerdict.DO_NOT_SPREAD");

    private double bound(int i) {
        return switch (i) {
            case 0 -> 0;
            case 1 -> CvLimits.GOOD_PERCENT;
            case 2 -> CvLimits.FIELD_PERCENT;
            case 3 -> CvLimits.STRIPES_PERCENT;
            default -> across.to();
        };
    }

    /** Height of the words of the bands, px. */
    double wordsHigh() {
        return (twoRows() ? 2.9 : 1.6) * brush.em();
    }

    /** The words go in two rows where the bands are too narrow for one. */
    private boolean twoRows() {
        if (wordRows == 1) {
            return false;
        }
        double end = 0;
        for (int i = 0; i < BANDS.size(); i++) {
            double half = brush.width(words.text(BANDS.get(i)), brush.note().heavy()) / 2;
            double middle = Math.min(middle(i), across.end() + 1.2 * brush.em() - half);
            if (middle - half < end) {
                return true;
            }
            end = middle + half + 0.5 * brush.em();
        }
        return false;
    }

    private double middle(int band) {
        return (across.at(bound(band)) + across.at(bound(band + 1))) / 2;
    }

    /** Draws the bands down to the floor, their words over them; gives the y where the first estimate may begin. */
    double bands(double top, double floor) {
        double em = brush.em();
        Palette palette = brush.palette();
        Color[] colours = {palette.good(), palette.good(), palette.warn(), palette.stop()};
        double[] strength = {0.24, 0.1, 0.13, 0.13};
        double under = top + wordsHigh();
        for (int i = 0; i < BANDS.size(); i++) {
            double from = across.at(bound(i));
            brush.box(
                    from, under, across.at(bound(i + 1)) - from, floor - under, Palette.faint(colours[i], strength[i]));
            if (i > 0) {
                brush.line(from, under, from, floor, palette.paper(), 2);
            }
        }
        words(top, colours);
        return under + 0.3 * em;
    }

    /** The words of the bands, the widest band first; one that has no room is left out. */
    private void words(double top, Color[] colours) {
        double em = brush.em();
        boolean twoRows = twoRows();
        List<Rectangle2D> taken = new ArrayList<>();
        List<Integer> widestFirst = IntStream.range(0, BANDS.size())
                .boxed()
                .sorted(Comparator.comparingDouble(i -> bound(i) - bound(i + 1)))
                .toList();
        for (int i : widestFirst) {
            String word = words.text(BANDS.get(i));
            Lettering lettering = brush.note().heavy().in(colours[i]);
            double wide = brush.width(word, lettering);
            double left = Math.max(0.2 * em, Math.min(across.end() + 1.2 * em - wide, middle(i) - wide / 2));
            double y = top + (twoRows && i % 2 == 1 ? 2.1 : 0.9) * em;
            Rectangle2D room = new Rectangle2D(left - 0.2 * em, y - 0.4 * em, wide + 0.4 * em, 0.8 * em);
            if (taken.stream().noneMatch(room::intersects)) {
                brush.text(word, left, y, lettering, TextAlignment.LEFT);
                taken.add(room);
            }
        }
    }

    /** Whether words over an estimate have room on one line. */
    boolean fits(String text) {
        return brush.width(text, brush.note()) <= across.end() - across.start() + 2 * brush.em();
    }

    /** Words over an estimate. */
    void label(String text, double percent, double y, Color colour) {
        brush.within(
                text,
                across.clamped(percent),
                y,
                brush.note().in(colour),
                TextAlignment.CENTER,
                across.start() - brush.em(),
                across.end() + brush.em());
    }

    /** One estimate: a disc, or a ring for what is only expected, and its interval; an arrow where that goes on. */
    void estimate(double percent, @Nullable Interval intervalPercent, double y, Color colour, boolean expected) {
        Marks marks = new Marks(brush);
        double thick = expected ? 1.8 : 2.5;
        if (intervalPercent != null) {
            double low = across.clamped(intervalPercent.low());
            if (intervalPercent.high() > across.to()) {
                marks.arrow(low, y, across.end() + 0.9 * brush.em(), y, colour, thick);
            } else {
                brush.line(low, y, across.at(intervalPercent.high()), y, colour, thick);
            }
        }
        if (percent > across.to()) {
            return;
        }
        if (expected) {
            marks.ring(across.clamped(percent), y, 0.45 * brush.em(), colour);
        } else {
            marks.disc(across.clamped(percent), y, 0.42 * brush.em(), colour);
        }
    }
}
