package org.evenfall.wizard.picture;

import java.util.List;
import javafx.scene.text.TextAlignment;

/** Small drawings with words to each: in columns where there is room, else one under the other. */
final class Panels {

    /** Narrowest column that holds a drawing and its words, em. */
    private static final double NARROWEST_EM = 9;

    /** Lowest drawing in a grid, em. */
    private static final double LOWEST_EM = 1.2;

    /** Highest drawing in a list, em. */
    private static final double HIGHEST_EM = 8.5;

    private final Brush brush;
    private final List<Panel> panels;

    Panels(Brush brush, List<Panel> panels) {
        this.brush = brush;
        this.panels = List.copyOf(panels);
    }

    /** Draws into a box. */
    interface Drawing {
        void draw(double left, double top, double wide, double high);
    }

    /**
     * One small drawing.
     *
     * @param words what it shows
     * @param lettering how the words are set
     * @param drawing the drawing
     */
    record Panel(String words, Lettering lettering, Drawing drawing) {}

    /** All in one row, or as a list where a row is too narrow. */
    void draw(double width, double height) {
        if (width < panels.size() * NARROWEST_EM * brush.em()) {
            list(width, height);
        } else {
            grid(width, height, panels.size());
        }
    }

    /** In so many columns, the words under each drawing. */
    void grid(double width, double height, int columns) {
        double em = brush.em();
        double cell = width / columns;
        double wide = cell - 1.4 * em;
        double words = 0;
        for (Panel panel : panels) {
            words = Math.max(words, wordsHigh(panel, wide));
        }
        int rows = (panels.size() + columns - 1) / columns;
        double high = Math.max(LOWEST_EM * em, Math.min(0.9 * wide, height / rows - words - 1.8 * em));
        double row = high + words + 1.8 * em;
        double top = Math.max(0, (height - rows * row) / 2);
        for (int i = 0; i < panels.size(); i++) {
            double left = (i % columns) * cell + 0.7 * em;
            double y = top + Math.floorDiv(i, columns) * row + 0.5 * em;
            Panel panel = panels.get(i);
            panel.drawing().draw(left, y, wide, high);
            brush.paragraph(
                    panel.words(), left + wide / 2, y + high + 0.7 * em, wide, panel.lettering(), TextAlignment.CENTER);
        }
    }

    /** One under the other, the words at the right of each drawing. */
    private void list(double width, double height) {
        double em = brush.em();
        double row = Math.min(HIGHEST_EM * em + 1.2 * em, height / panels.size());
        double wide = Math.min(0.42 * width, 1.25 * row);
        double top = Math.max(0, (height - panels.size() * row) / 2);
        for (int i = 0; i < panels.size(); i++) {
            Panel panel = panels.get(i);
            double y = top + i * row;
            double left = 0.8 * em;
            panel.drawing().draw(left, y + 0.6 * em, wide, row - 1.2 * em);
            double text = left + wide + 1.1 * em;
            double room = width - text - 0.5 * em;
            brush.paragraph(
                    panel.words(),
                    text,
                    y + Math.max(0, (row - wordsHigh(panel, room)) / 2),
                    room,
                    panel.lettering(),
                    TextAlignment.LEFT);
        }
    }

    private double wordsHigh(Panel panel, double wide) {
        return brush.wrapped(panel.words(), wide, panel.lettering()).size()
                * panel.lettering().lineEm()
                * brush.em();
    }
}
