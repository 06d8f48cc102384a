package org.evenfall.wizard.picture;

import javafx.scene.paint.Color;
import javafx.scene.text.TextAlignment;
import org.evenfall.finding.Sentences;
import org.evenfall.quantity.Unit;

/** Marks that several pictures share: arrows, measures, axes, shapes for a state. */
final class Marks {

    private static final int TURN_POINTS = 24;

    private final Brush brush;

    Marks(Brush brush) {
        this.brush = brush;
    }

    /** A line with a head at its end. */
    void arrow(double x1, double y1, double x2, double y2, Color colour, double wide) {
        double angle = Math.atan2(y2 - y1, x2 - x1);
        double head = Math.min(0.55 * brush.em() + wide, 0.6 * Math.hypot(x2 - x1, y2 - y1));
        brush.line(x1, y1, x2 - 0.8 * head * Math.cos(angle), y2 - 0.8 * head * Math.sin(angle), colour, wide);
        brush.shape(
                new double[] {x2, x2 - head * Math.cos(angle - 0.4), x2 - head * Math.cos(angle + 0.4)},
                new double[] {y2, y2 - head * Math.sin(angle - 0.4), y2 - head * Math.sin(angle + 0.4)},
                colour);
    }

    /** The turn from the end of one pass to the begin of the next; so high to the foot, minus to the top. */
    void turn(double from, double to, double y, double high, Color colour) {
        double[] xs = new double[TURN_POINTS];
        double[] ys = new double[TURN_POINTS];
        for (int i = 0; i < TURN_POINTS; i++) {
            double angle = Math.PI * i / (TURN_POINTS - 1);
            xs[i] = (from + to) / 2 - (to - from) / 2 * Math.cos(angle);
            ys[i] = y + high * Math.sin(angle);
        }
        brush.polyline(xs, ys, colour, 1.5, true);
    }

    /** A measure between two heights, with a short bar at each end. */
    void upright(double x, double y1, double y2, Color colour) {
        double bar = 0.3 * brush.em();
        brush.line(x, y1, x, y2, colour, 1.5);
        brush.line(x - bar, y1, x + bar, y1, colour, 1.5);
        brush.line(x - bar, y2, x + bar, y2, colour, 1.5);
    }

    /** A measure between two places side by side. */
    void across(double x1, double x2, double y, Color colour) {
        double bar = 0.3 * brush.em();
        brush.line(x1, y, x2, y, colour, 1.5);
        brush.line(x1, y - bar, x1, y + bar, colour, 1.5);
        brush.line(x2, y - bar, x2, y + bar, colour, 1.5);
    }

    /** Axis with ticks, round numbers and, under them, its name with the unit. Gives the y under it. */
    double axis(Scale scale, double y, String name, Sentences words) {
        double em = brush.em();
        int most = (int) Math.max(2, Math.min(8, Math.abs(scale.end() - scale.start()) / (3.2 * em)));
        brush.line(scale.start(), y, scale.end(), y, brush.palette().ink(), 1);
        for (double tick : scale.ticks(most)) {
            double x = scale.at(tick);
            brush.line(x, y, x, y + 0.3 * em, brush.palette().ink(), 1);
            brush.text(
                    words.number(tick, scale.tickDecimals(most), Unit.NONE),
                    x,
                    y + 0.85 * em,
                    brush.note(),
                    TextAlignment.CENTER);
        }
        double middle = (scale.start() + scale.end()) / 2;
        brush.within(
                name,
                middle,
                y + 1.95 * em,
                brush.note(),
                TextAlignment.CENTER,
                Math.min(scale.start(), scale.end()) - em,
                Math.max(scale.start(), scale.end()) + em);
        return y + 2.6 * em;
    }

    /** Upright axis at a place, with ticks and round numbers at its left. */
    void upAxis(Scale scale, double x, Sentences words) {
        double em = brush.em();
        int most = mostUp(scale);
        brush.line(x, scale.start(), x, scale.end(), brush.palette().ink(), 1);
        for (double tick : scale.ticks(most)) {
            double y = scale.at(tick);
            brush.line(x - 0.3 * em, y, x, y, brush.palette().ink(), 1);
            brush.text(
                    words.number(tick, scale.tickDecimals(most), Unit.NONE),
                    x - 0.5 * em,
                    y,
                    brush.note(),
                    TextAlignment.RIGHT);
        }
    }

    /** Width of the numbers of an upright axis with their ticks, px. */
    double upAxisWide(Scale scale, Sentences words) {
        int decimals = scale.tickDecimals(mostUp(scale));
        double widest = 0;
        for (double tick : scale.ticks(mostUp(scale))) {
            widest = Math.max(widest, brush.width(words.number(tick, decimals, Unit.NONE), brush.note()));
        }
        return widest + 0.7 * brush.em();
    }

    private int mostUp(Scale scale) {
        return (int) Math.max(2, Math.min(6, Math.abs(scale.end() - scale.start()) / (2.4 * brush.em())));
    }

    /** Done: a filled disc. */
    void disc(double x, double y, double radius, Color colour) {
        brush.oval(x, y, radius, radius, colour);
    }

    /** Open: a ring. */
    void ring(double x, double y, double radius, Color colour) {
        brush.oval(x, y, radius, radius, brush.palette().paper());
        brush.ring(x, y, 0.85 * radius, 0.85 * radius, colour, 2);
    }

    /** To be minded: a triangle. */
    void triangle(double x, double y, double radius, Color colour) {
        brush.shape(
                new double[] {x, x - 1.1 * radius, x + 1.1 * radius},
                new double[] {y - 1.1 * radius, y + 0.85 * radius, y + 0.85 * radius},
                colour);
    }

    /** Stopped: a square. */
    void square(double x, double y, double radius, Color colour) {
        brush.box(x - 0.9 * radius, y - 0.9 * radius, 1.8 * radius, 1.8 * radius, colour);
    }
}
