package org.evenfall.wizard.picture;

import java.util.Locale;
import javafx.scene.text.TextAlignment;
import org.evenfall.finding.Arg;
import org.evenfall.finding.Sentences;
import org.evenfall.quantity.Unit;
import org.jspecify.annotations.Nullable;

/** Seconds as large as there is room, and one line of words with a shape: ready, open, close now, stopped. */
final class CountdownFace extends Picture {

    /** Height of the line of words, em. */
    private static final double WORDS_EM = 2.2;

    /** Height from which there is room for the note, em. */
    private static final double NOTE_FROM_EM = 9;

    private Stopwatch.State state = Stopwatch.State.READY;
    private boolean over;
    private boolean down;
    private String digits = "";
    private String line = "";
    private String note = "";

    CountdownFace(Sentences words) {
        super(words, 0.36);
        show(Stopwatch.State.READY, 0, null, "");
    }

    /**
     * Shows this.
     *
     * @param seconds to count down from; null counts up
     * @param small a small sentence below; may be empty
     */
    void show(Stopwatch.State now, double elapsedS, @Nullable Double seconds, String small) {
        note = small;
        state = now;
        down = seconds != null;
        over = seconds != null && now == Stopwatch.State.RUNNING && elapsedS >= seconds;
        boolean tenths = now == Stopwatch.State.STOPPED || (seconds == null && now == Stopwatch.State.RUNNING);
        double shown = now == Stopwatch.State.STOPPED || seconds == null
                ? elapsedS
                : Math.max(0, Math.ceil(seconds - elapsedS - 1e-9));
        digits = words.number(shown, tenths ? 1 : 0, Unit.NONE);
        line = words.text("picture.countdown." + key(), Arg.number(elapsedS, 1, Unit.S));
        redraw((digits + " " + line + ". " + note).strip());
    }

    private String key() {
        if (over) {
            return "close";
        }
        return state.name().toLowerCase(Locale.ROOT) + (down ? "" : "Up");
    }

    @Override
    void draw(Brush brush, double width, double full) {
        double height =
                full < NOTE_FROM_EM * brush.em() ? full : new Caption(note).draw(brush, width, full, brush.note());
        double em = brush.em();
        Palette palette = brush.palette();
        double room = height - WORDS_EM * em;
        Lettering one = new Lettering(1, true, over ? palette.stop() : palette.ink());
        // three digits have room, so that the size stays while it counts
        double size = Math.min(0.8 * room / em, 0.9 * width / brush.width("000.0", one));
        if (size >= 1) {
            brush.text(digits, width / 2, room / 2, new Lettering(size, true, one.colour()), TextAlignment.CENTER);
        }
        Lettering lettering = brush.lead().in(over ? palette.stop() : palette.ink());
        String fitting = brush.fitted(line, width - 4 * em, lettering);
        double half = brush.width(fitting, lettering) / 2;
        double y = height - WORDS_EM * em / 2;
        brush.text(fitting, width / 2 + 0.7 * em, y, lettering, TextAlignment.CENTER);
        mark(brush, width / 2 - half - 0.5 * em, y);
    }

    private void mark(Brush brush, double x, double y) {
        Marks marks = new Marks(brush);
        double radius = 0.5 * brush.em();
        if (over) {
            marks.square(x, y, radius, brush.palette().stop());
        } else if (state == Stopwatch.State.RUNNING) {
            marks.disc(x, y, radius, brush.palette().good());
        } else {
            marks.ring(x, y, radius, brush.palette().soft());
        }
    }
}
