package org.evenfall.card;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureElement;
import org.apache.pdfbox.pdmodel.documentinterchange.taggedpdf.StandardStructureTypes;
import org.evenfall.card.CardContent.Figure;
import org.evenfall.card.Typefaces.Weight;

/** The face that the driver sets from: few big figures in the order in which they are set. */
final class FrontFace {

    static final double LABEL = Pieces.TEXT;
    static final double FIGURE = 24;
    private static final double GAP = 8;
    private static final double LABEL_LINE = LABEL * 1.12;
    private static final double FIGURE_LINE = FIGURE * 1.08;

    private record Placed(Figure figure, int span, List<String> label, List<String> value) {

        double height() {
            return label.size() * LABEL_LINE + value.size() * FIGURE_LINE + 4;
        }
    }

    private FrontFace() {}

    /**
     * What found no room.
     *
     * @param figures figures
     * @param end lower edge of what was drawn
     */
    record Remainder(List<Figure> figures, double end) {}

    /** Draws as many figures as fit; returns what is left. */
    static Remainder draw(Pen pen, Face face, CardContent content, List<Figure> figures, boolean first)
            throws IOException {
        double y = first ? header(pen, face, content) : face.top();
        int columns = face.wide() ? 4 : 3;
        double column = (face.innerWidth() - (columns - 1) * GAP) / columns;
        List<Figure> left = new ArrayList<>(figures);
        while (!left.isEmpty()) {
            List<Placed> row = row(pen, left, columns, column);
            double height = row.stream().mapToDouble(Placed::height).max().orElse(0);
            if (y + height > face.bottom()) {
                break;
            }
            double x = face.left();
            for (Placed placed : row) {
                cell(pen, placed, x, y);
                x += placed.span() * (column + GAP);
            }
            y += height;
            pen.line(face.left(), y, face.right(), y, 0.5, Pen.LINE);
            y += 2;
            left = left.subList(row.size(), left.size());
        }
        return new Remainder(List.copyOf(left), y);
    }

    private static double header(Pen pen, Face face, CardContent content) throws IOException {
        double room = face.innerWidth() - 1.5 * Face.HOLE;
        double[] y = {face.top()};
        pen.mark(
                pen.tags().element(StandardStructureTypes.H1),
                () -> y[0] = pen.paragraph(
                        Weight.BOLD, Pieces.TITLE, Pen.ACCENT, face.left(), face.top(), room, content.title()));
        for (String line : content.lines()) {
            pen.mark(
                    pen.tags().element(StandardStructureTypes.P),
                    () -> y[0] =
                            pen.paragraph(Weight.REGULAR, LABEL, Pen.INK, face.left(), y[0], face.innerWidth(), line));
        }
        pen.circle(face.right() - Face.HOLE / 2, face.top() + Face.HOLE / 2, Face.HOLE / 2, Pen.LINE);
        pen.line(face.left(), y[0] + 3, face.right(), y[0] + 3, 1.6, Pen.ACCENT);
        return y[0] + 6;
    }

    private static List<Placed> row(Pen pen, List<Figure> figures, int columns, double column) throws IOException {
        List<Placed> row = new ArrayList<>();
        int used = 0;
        for (Figure figure : figures) {
            int span = span(pen, figure, columns, column);
            if (used + span > columns) {
                break;
            }
            double width = span * column + (span - 1) * GAP;
            row.add(new Placed(
                    figure,
                    span,
                    pen.wrap(Weight.REGULAR, LABEL, width, figure.label()),
                    pen.wrap(Weight.BOLD, FIGURE, width, figure.value())));
            used += span;
        }
        return row;
    }

    /** As many columns as the figure needs on one line and its label on two. */
    private static int span(Pen pen, Figure figure, int columns, double column) throws IOException {
        for (int span = 1; span < columns; span++) {
            double width = span * column + (span - 1) * GAP;
            if (pen.faces().width(Weight.BOLD, FIGURE, figure.value()) <= width
                    && pen.wrap(Weight.REGULAR, LABEL, width, figure.label()).size() <= 2) {
                return span;
            }
        }
        return columns;
    }

    private static void cell(Pen pen, Placed placed, double x, double top) throws IOException {
        PDStructureElement tag = pen.tags().element(StandardStructureTypes.P);
        double under = top + placed.label().size() * LABEL_LINE;
        pen.mark(tag, () -> {
            double y = top;
            for (String line : placed.label()) {
                y += LABEL_LINE;
                pen.text(Weight.REGULAR, LABEL, Pen.INK, x, y - 2, line);
            }
        });
        pen.mark(tag, () -> {
            double y = under;
            for (String line : placed.value()) {
                y += FIGURE_LINE;
                pen.text(Weight.BOLD, FIGURE, Pen.INK, x, y - 3, line);
            }
        });
    }
}
