package org.evenfall.wizard.picture;

import java.util.ArrayList;
import java.util.List;
import javafx.geometry.Rectangle2D;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.text.Font;
import javafx.scene.text.TextAlignment;

/** Draws as any brush and keeps what was written where, and what had to be cut. */
final class RecordingBrush extends Brush {

    /** A text and the place of its letters. */
    record Written(String text, Rectangle2D place) {}

    private final List<Written> written = new ArrayList<>();
    private final List<String> cut = new ArrayList<>();

    RecordingBrush(GraphicsContext canvas, Palette palette, Font base) {
        super(canvas, palette, base, NOTE_EM);
    }

    @Override
    void text(String text, double x, double y, Lettering lettering, TextAlignment align) {
        super.text(text, x, y, lettering, align);
        double wide = width(text, lettering);
        double left = align == TextAlignment.RIGHT ? x - wide : align == TextAlignment.CENTER ? x - wide / 2 : x;
        double high = 0.8 * lettering.em() * em();
        written.add(new Written(text, new Rectangle2D(left, y - high / 2, wide, high)));
    }

    @Override
    String fitted(String text, double wide, Lettering lettering) {
        String shown = super.fitted(text, wide, lettering);
        if (!shown.equals(text)) {
            cut.add(text);
        }
        return shown;
    }

    List<Written> written() {
        return written;
    }

    /** What is wrong with the texts in a picture of this size. */
    List<String> faults(double width, double height) {
        List<String> faults = new ArrayList<>();
        cut.forEach(text -> faults.add("cut: " + text));
        for (int i = 0; i < written.size(); i++) {
            Written one = written.get(i);
            Rectangle2D place = one.place();
            if (one.text().matches("[a-z]+(\\.\\w+)+")) {
                faults.add("a raw key: " + one.text());
            }
            if (place.getMinX() < -1
                    || place.getMaxX() > width + 1
                    || place.getMinY() < -1
                    || place.getMaxY() > height + 1) {
                faults.add("outside: " + one.text());
            }
            for (Written other : written.subList(0, i)) {
                if (place.intersects(other.place())) {
                    faults.add("one over the other: " + one.text() + " / " + other.text());
                }
            }
        }
        return faults;
    }
}
