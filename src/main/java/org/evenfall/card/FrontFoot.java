package org.evenfall.card;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.evenfall.page.Face;
import org.evenfall.page.Flow;
import org.evenfall.page.Pen;
import org.evenfall.page.Pieces;

/** Under the figures, as far as there is room: warnings, and when to stop. */
final class FrontFoot {

    private static final double GAP = 14;

    private FrontFoot() {}

    /**
     * What found no room.
     *
     * @param warnings warnings
     * @param stops whether the stop list is still to be drawn
     * @param end lower edge of what was drawn
     */
    record Undrawn(List<String> warnings, boolean stops, double end) {}

    /** Draws whole warnings, then the stop list if all of it fits. */
    static Undrawn draw(Pen pen, Face face, CardContent content, double top, SmallText text) throws IOException {
        SmallText small = text.front();
        double y = top + 3;
        double width = face.innerWidth();
        List<String> left = new ArrayList<>(content.warnings());
        while (!left.isEmpty()) {
            double height = Pieces.bulletedHeight(pen, small.strong(), left.get(0), width);
            if (y + height > face.bottom()) {
                return new Undrawn(List.copyOf(left), true, y);
            }
            List<Flow.Piece> warning =
                    Pieces.list(pen, small.strong(), Pieces.Bullet.TRIANGLE, List.of(left.get(0)), true, width);
            y = Flow.stack(pen, warning, face.left(), y, width);
            left.remove(0);
        }
        return stops(pen, face, content.stops(), y, small);
    }

    /** The stop list in as many columns as the face has, if all of it fits. */
    private static Undrawn stops(Pen pen, Face face, CardContent.Section stops, double top, SmallText small)
            throws IOException {
        double column = (face.innerWidth() - (face.columns() - 1) * GAP) / face.columns();
        double tallest = tallest(pen, stops.lines(), face.columns(), column, small);
        double heading = pen.paragraphHeight(small.heading(), face.innerWidth(), stops.title());
        if (stops.lines().isEmpty() || top + heading + tallest > face.bottom()) {
            return new Undrawn(List.of(), true, top);
        }
        double y = Flow.stack(
                pen,
                Pieces.heading(pen, small.heading(), stops.title(), face.innerWidth()),
                face.left(),
                top,
                face.innerWidth());
        List<Flow.Piece> pieces = Pieces.list(pen, small.body(), Pieces.Bullet.SQUARE, stops.lines(), false, column);
        List<Flow.Column> columns = new ArrayList<>();
        for (int i = 0; i < face.columns(); i++) {
            // half a line more than the tallest, so that rounding moves nothing to the next column
            double bottom = y + tallest + small.body().lineHeight() / 2;
            columns.add(new Flow.Column(face.left() + i * (column + GAP), y, column, bottom));
        }
        Flow.fill(pen, pieces, columns);
        return new Undrawn(List.of(), false, y + tallest);
    }

    /** Height of the tallest of some columns that share the lines in equal numbers. */
    private static double tallest(Pen pen, List<String> lines, int columns, double width, SmallText small)
            throws IOException {
        int each = (lines.size() + columns - 1) / columns;
        double tallest = 0;
        for (int from = 0; from < lines.size(); from += each) {
            double height = 0;
            for (String line : lines.subList(from, Math.min(lines.size(), from + each))) {
                height += Pieces.bulletedHeight(pen, small.body(), line, width);
            }
            tallest = Math.max(tallest, height);
        }
        return tallest;
    }
}
