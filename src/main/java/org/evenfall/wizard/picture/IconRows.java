package org.evenfall.wizard.picture;

import java.util.ArrayList;
import java.util.List;
import javafx.scene.text.TextAlignment;

/** Rows at the foot of a picture: a small drawing at the left, what it means at its right. */
final class IconRows {

    private static final double ICON_EM = 1.9;
    private static final double EDGE_EM = 0.6;
    private static final double GAP_EM = 0.5;

    private final Brush brush;
    private final double width;
    private final List<Row> rows = new ArrayList<>();

    IconRows(Brush brush, double width) {
        this.brush = brush;
        this.width = width;
    }

    /** Draws into a square box. */
    interface Icon {
        void draw(double left, double top, double side);
    }

    private record Row(Icon icon, String text, Lettering lettering, String note) {}

    /** @param note a further sentence in small letters; empty without one */
    void add(Icon icon, String text, Lettering lettering, String note) {
        rows.add(new Row(icon, text, lettering, note));
    }

    /** Draws the rows, the last one right over the foot; gives the height over the first. */
    double draw(double foot) {
        double top = foot;
        for (int i = rows.size() - 1; i >= 0; i--) {
            Row row = rows.get(i);
            top -= high(row);
            draw(row, top);
            top -= GAP_EM * brush.em();
        }
        return top;
    }

    private void draw(Row row, double top) {
        double em = brush.em();
        row.icon().draw(EDGE_EM * em, top + 0.1 * em, ICON_EM * em);
        double x = (EDGE_EM + ICON_EM + 0.7) * em;
        double slack = Math.max(0, high(row) - textHigh(row)) / 2;
        double y = brush.paragraph(row.text(), x, top + slack, room(), row.lettering(), TextAlignment.LEFT);
        if (!row.note().isEmpty()) {
            brush.paragraph(row.note(), x, y, room(), brush.note(), TextAlignment.LEFT);
        }
    }

    private double room() {
        return width - (2 * EDGE_EM + ICON_EM + 0.7) * brush.em();
    }

    private double high(Row row) {
        return Math.max((ICON_EM + 0.2) * brush.em(), textHigh(row));
    }

    private double textHigh(Row row) {
        double text = lines(row.text(), row.lettering());
        return row.note().isEmpty() ? text : text + lines(row.note(), brush.note());
    }

    private double lines(String text, Lettering lettering) {
        return brush.wrapped(text, room(), lettering).size() * lettering.lineEm() * brush.em();
    }
}
