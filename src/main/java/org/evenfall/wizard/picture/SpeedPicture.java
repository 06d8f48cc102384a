package org.evenfall.wizard.picture;

import javafx.scene.paint.Color;
import javafx.scene.text.TextAlignment;
import org.evenfall.finding.Arg;
import org.evenfall.finding.Sentences;
import org.evenfall.quantity.Unit;
import org.evenfall.rate.SpeedCheck;
import org.jspecify.annotations.Nullable;

/** The measured length between two pegs with the run-up before it, and the speed driven against the planned one. */
public final class SpeedPicture extends Picture {

    /** Run-up drawn before the first peg, in measured lengths. */
    private static final double RUN_UP = 0.35;

    private static final double AXIS_EM = 8.5;
    private static final double LOWEST_TRACK_EM = 8;
    private static final double HIGHEST_TRACK_EM = 13;

    private @Nullable Double lengthM;
    private @Nullable SpeedCheck check;
    private @Nullable Double plannedKmPerH;

    /** Begins with nothing measured. */
    public SpeedPicture(Sentences words) {
        super(words, 0.8);
        show(null, null, null);
    }

    /** Draws the measured length, m, the speed driven and the speed planned, km/h; null while they are not known. */
    public void show(@Nullable Double measuredM, @Nullable SpeedCheck driven, @Nullable Double planned) {
        lengthM = measuredM;
        check = driven;
        plannedKmPerH = planned;
        redraw(
                driven == null
                        ? words.text("picture.speed.empty")
                        : words.text("picture.speed.driven", Arg.number(driven.meanKmPerH(), 1, Unit.KM_PER_H)));
    }

    @Override
    void draw(Brush brush, double width, double full) {
        double em = brush.em();
        double height = new Caption(words.text("picture.speed.empty")).draw(brush, width, full);
        boolean axis = check != null || plannedKmPerH != null;
        double below = axis ? AXIS_EM * em : 0;
        double track = Math.max(LOWEST_TRACK_EM * em, Math.min(HIGHEST_TRACK_EM * em, height - below));
        double top = Math.max(0, (height - below - track) / 2);
        track(brush, width, top, track);
        if (axis && track + below <= height) {
            speeds(brush, width, top + track);
        }
    }

    private void track(Brush brush, double width, double top, double height) {
        double em = brush.em();
        Palette palette = brush.palette();
        double y = top + Math.max(4.6 * em, height / 2 + em);
        Scale along = new Scale(-RUN_UP, 1.06, 1 * em, width - 1 * em);
        brush.line(along.at(-RUN_UP), y, along.at(1.06), y, palette.line(), 6);
        new Marks(brush).arrow(along.at(-RUN_UP), y - 1.6 * em, along.at(-0.03), y - 1.6 * em, palette.accent(), 2.5);
        new Marks(brush).arrow(along.at(0.06), y - 1.6 * em, along.at(0.94), y - 1.6 * em, palette.accent(), 2.5);
        peg(brush, along.at(0), y, "picture.speed.start", width);
        peg(brush, along.at(1), y, "picture.speed.finish", width);
        brush.paragraphWithin(
                words.text("picture.speed.runUp"),
                (along.at(-RUN_UP) + along.at(0)) / 2,
                y + 0.7 * em,
                brush.note().in(palette.ink()),
                0.2 * em,
                along.at(0) - 0.3 * em);
        new Marks(brush).across(along.at(0), along.at(1), y + 1.6 * em, palette.ink());
        brush.within(
                lengthM == null ? words.text("picture.speed.length") : words.number(lengthM, 0, Unit.M),
                along.at(0.5),
                y + 2.7 * em,
                brush.lead(),
                TextAlignment.CENTER,
                along.at(0),
                width);
    }

    private void peg(Brush brush, double x, double y, String key, double width) {
        double em = brush.em();
        brush.line(x, y + 0.4 * em, x, y - 2.6 * em, brush.palette().ink(), 3);
        brush.within(
                words.text(key),
                x,
                y - 3.3 * em,
                brush.body().heavy(),
                TextAlignment.CENTER,
                0.2 * em,
                width - 0.2 * em);
    }

    /** Planned and driven on one axis. */
    private void speeds(Brush brush, double width, double top) {
        double em = brush.em();
        double low = Double.POSITIVE_INFINITY;
        double high = 0;
        for (Double speed :
                new @Nullable Double[] {plannedKmPerH, check == null ? null : Double.valueOf(check.meanKmPerH())}) {
            low = speed == null ? low : Math.min(low, speed);
            high = speed == null ? high : Math.max(high, speed);
        }
        Scale across = new Scale(0.8 * low, 1.2 * high, 1.6 * em, width - 1.6 * em);
        double floor = top + 5.4 * em;
        if (plannedKmPerH != null) {
            mark(
                    brush,
                    across,
                    plannedKmPerH,
                    "picture.speed.planned",
                    top + 1.4 * em,
                    floor,
                    brush.palette().accent());
        }
        if (check != null) {
            mark(
                    brush,
                    across,
                    check.meanKmPerH(),
                    "picture.speed.driven",
                    top + 3.6 * em,
                    floor,
                    brush.palette().ink());
        }
        new Marks(brush).axis(across, floor, words.text("picture.speed.axis"), words);
    }

    private void mark(Brush brush, Scale across, double speed, String key, double y, double floor, Color colour) {
        double em = brush.em();
        double x = across.at(speed);
        brush.line(x, y, x, floor, colour, 2);
        brush.onPaper(
                words.text(key, Arg.number(speed, 1, Unit.KM_PER_H)),
                x,
                y - 0.7 * em,
                brush.body().heavy().in(colour),
                TextAlignment.CENTER,
                0.2 * em,
                across.end() + 1.4 * em);
    }
}
