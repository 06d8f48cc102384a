package org.evenfall.card;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.evenfall.card.Typefaces.Weight;

/** Under the figures, as far as there is room: what to mind, and when to stop. */
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
    record Remainder(List<String> warnings, boolean stops, double end) {}

    /** Draws whole warnings, then the stop list if all of it fits. */
    static Remainder draw(Pen pen, Face face, CardContent content, double top) throws IOException {
        double y = top + 3;
        double width = face.innerWidth();
        List<String> left = new ArrayList<>(content.warnings());
        while (!left.isEmpty()) {
            double height = Pieces.bulletedHeight(pen, Weight.BOLD, left.get(0), width);
            if (y + height > face.bottom()) {
                return new Remainder(List.copyOf(left), true, y);
            }
            for (Flow.Piece piece :
                    Pieces.list(pen, Weight.BOLD, Pieces.Bullet.TRIANGLE, List.of(left.get(0)), true, width)) {
                piece.draw(pen, face.left(), y, width);
                y += piece.height(pen, width);
            }
            left.remove(0);
        }
        return strip(pen, face, content, y);
    }

    private static Remainder strip(Pen pen, Face face, CardContent content, double top) throws IOException {
        double column = (face.innerWidth() - (face.columns() - 1) * GAP) / face.columns();
        int each = (content.stops().size() + face.columns() - 1) / face.columns();
        double line = Pieces.TEXT * Pen.LEADING;
        double tallest = 0;
        for (int from = 0; from < content.stops().size(); from += each) {
            double height = 0;
            for (String stop :
                    content.stops().subList(from, Math.min(content.stops().size(), from + each))) {
                height += Pieces.bulletedHeight(pen, Weight.REGULAR, stop, column);
            }
            tallest = Math.max(tallest, height);
        }
        double heading = pen.paragraphHeight(Weight.BOLD, Pieces.TEXT, face.innerWidth(), content.stopTitle());
        if (content.stops().isEmpty() || top + heading + tallest > face.bottom()) {
            return new Remainder(List.of(), true, top);
        }
        double y = top;
        for (Flow.Piece piece : Pieces.heading(pen, content.stopTitle(), face.innerWidth())) {
            piece.draw(pen, face.left(), y, face.innerWidth());
            y += piece.height(pen, face.innerWidth());
        }
        List<Flow.Piece> pieces =
                Pieces.list(pen, Weight.REGULAR, Pieces.Bullet.SQUARE, content.stops(), false, column);
        List<Flow.Column> columns = new ArrayList<>();
        for (int i = 0; i < face.columns(); i++) {
            // half a line more than the tallest, so that rounding moves nothing to the next column
            columns.add(new Flow.Column(face.left() + i * (column + GAP), y, column, y + tallest + line / 2));
        }
        Flow.fill(pen, pieces, columns);
        return new Remainder(List.of(), false, y + tallest);
    }
}
