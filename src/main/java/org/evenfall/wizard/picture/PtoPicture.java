package org.evenfall.wizard.picture;

import javafx.scene.paint.Color;
import javafx.scene.text.TextAlignment;
import org.evenfall.finding.Arg;
import org.evenfall.finding.Sentences;
import org.evenfall.quantity.Unit;
import org.jspecify.annotations.Nullable;

/** The shaft behind its guard, the figure of a hand-held tachometer, and the speed wanted and allowed on an axis. */
public final class PtoPicture extends Picture {

    /** Ends of the axis where nothing is beyond them, rpm. Assumption: round numbers about the usual speed. */
    private static final double LOW_RPM = 400;

    private static final double HIGH_RPM = 650;

    /** Height of the axis with what is over it, and of the lowest drawing of the shaft, em. */
    private static final double AXIS_EM = 10.4;

    private static final double LEAST_SHAFT_EM = 7;

    private @Nullable Double measured;
    private @Nullable Double wanted;
    private @Nullable Double lowest;
    private @Nullable Double highest;

    /** Begins with nothing measured. */
    public PtoPicture(Sentences words) {
        super(words, 0.95);
        show(null, null, null, null);
    }

    /** Draws these speeds, rpm: measured, wanted, lowest and highest that the handbook allows; null where not known. */
    public void show(
            @Nullable Double measuredRpm,
            @Nullable Double wantedRpm,
            @Nullable Double lowestRpm,
            @Nullable Double highestRpm) {
        measured = measuredRpm;
        wanted = wantedRpm;
        lowest = lowestRpm;
        highest = highestRpm;
        redraw(spoken());
    }

    private String spoken() {
        String text =
                measured == null ? words.text("picture.pto.empty") : words.text("picture.pto.measured", rpm(measured));
        return wanted == null ? text : text + ". " + words.text("picture.pto.wanted", rpm(wanted));
    }

    private static Arg rpm(double speed) {
        return Arg.number(speed, 0, Unit.RPM);
    }

    @Override
    void draw(Brush brush, double width, double full) {
        double em = brush.em();
        double height = new Caption(words.text("picture.pto.empty")).draw(brush, width, full);
        double room = height - AXIS_EM * em;
        if (room < LEAST_SHAFT_EM * em && measured == null && wanted == null && lowest == null) {
            shaft(brush, Math.max(0, (height - 13 * em) / 2), Math.min(13 * em, height), width);
            return;
        }
        double part = room < LEAST_SHAFT_EM * em ? 0 : Math.min(13 * em, room);
        double top = Math.max(0, (room - part) / 2);
        if (part > 0) {
            shaft(brush, top, part, width);
        }
        axis(brush, top + part + 0.6 * em, width);
    }

    /** The guard is closed all along; the tachometer is held outside it. */
    private void shaft(Brush brush, double top, double high, double width) {
        double em = brush.em();
        Palette palette = brush.palette();
        double left = 1.2 * em;
        double y = top + 0.2 * high + em;
        double thick = Math.min(2.6 * em, 0.24 * high);
        double end = width - 1.2 * em;
        brush.line(left, y + thick / 2, end, y + thick / 2, palette.soft(), 4);
        brush.box(left + em, y, end - left - 2 * em, thick, palette.paper());
        brush.box(left + em, y, end - left - 2 * em, thick, Palette.faint(palette.straw(), 0.22));
        brush.frame(left + em, y, end - left - 2 * em, thick, palette.straw(), 2);
        brush.within(
                words.text("picture.pto.guard"),
                width / 2,
                y - 0.9 * em,
                brush.body().in(palette.straw()),
                TextAlignment.CENTER,
                0.4 * em,
                width - 0.4 * em);
        double wide = Math.min(11 * em, 0.55 * width);
        double window = Math.min(2.6 * em, 0.26 * high);
        double x = width / 2 - wide / 2;
        double box = y + thick + 0.16 * high;
        for (int dash = 0; dash < 3; dash++) {
            brush.dashed(width / 2 + (dash - 1) * 4, y + thick, width / 2, box, palette.accent(), 1);
        }
        new Parts(brush)
                .window(
                        x,
                        box,
                        wide,
                        window,
                        measured == null ? words.text("picture.pto.noFigure") : words.number(measured, 0, Unit.RPM));
        brush.within(
                words.text("picture.pto.tachometer"),
                width / 2,
                box + window + 0.9 * em,
                brush.body(),
                TextAlignment.CENTER,
                0.4 * em,
                width - 0.4 * em);
    }

    /** What is allowed, wanted and measured, each in its own row over one axis. */
    private void axis(Brush brush, double top, double width) {
        double em = brush.em();
        Palette palette = brush.palette();
        Scale across = scale(width, em);
        double floor = top + 7.2 * em;
        if (wanted != null) {
            double x = across.at(wanted);
            brush.line(x, top + 2.7 * em, x, floor, palette.accent(), 2);
            label(brush, words.text("picture.pto.wanted", rpm(wanted)), x, top + 3.5 * em, palette.accent(), width, 1);
        }
        if (lowest != null && highest != null) {
            double x = across.at(lowest);
            brush.box(x, top + 1.7 * em, across.length(highest - lowest), 0.8 * em, Palette.faint(palette.good(), 0.4));
            brush.within(
                    words.text(
                            "picture.pto.allowed", Arg.number(lowest, 0, Unit.NONE), Arg.number(highest, 0, Unit.NONE)),
                    across.at((lowest + highest) / 2),
                    top + 0.8 * em,
                    brush.body().heavy().in(palette.good()),
                    TextAlignment.CENTER,
                    0.4 * em,
                    width - 0.4 * em);
        }
        if (measured != null) {
            double x = across.at(measured);
            int side = wanted != null && measured < wanted ? -1 : 1;
            label(
                    brush,
                    words.text("picture.pto.measured", rpm(measured)),
                    x,
                    top + 5.5 * em,
                    palette.ink(),
                    width,
                    side);
            new Marks(brush).disc(x, top + 5.5 * em, 0.45 * em, palette.ink());
        }
        new Marks(brush).axis(across, floor, words.text("picture.pto.axis"), words);
    }

    /** A label next to its mark, at the side asked for or, without room there, at the other. */
    private static void label(Brush brush, String text, double x, double y, Color colour, double width, int side) {
        double em = brush.em();
        Lettering lettering = brush.body().heavy().in(colour);
        double needed = brush.width(text, lettering) + em;
        boolean right = side > 0 ? x + needed < width : x - needed < 0;
        brush.onPaper(
                text,
                x + (right ? 0.8 : -0.8) * em,
                y,
                lettering,
                right ? TextAlignment.LEFT : TextAlignment.RIGHT,
                0.2 * em,
                width - 0.2 * em);
    }

    /** Wide enough for every speed. */
    private Scale scale(double width, double em) {
        double low = LOW_RPM;
        double high = HIGH_RPM;
        for (Double speed : new Double[] {measured, wanted, lowest, highest}) {
            if (speed != null) {
                low = Math.min(low, speed - 20);
                high = Math.max(high, speed + 20);
            }
        }
        return new Scale(low, high, 1.6 * em, width - 1.6 * em);
    }
}
