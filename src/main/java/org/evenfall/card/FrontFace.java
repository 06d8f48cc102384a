package org.evenfall.card;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureElement;
import org.apache.pdfbox.pdmodel.documentinterchange.taggedpdf.StandardStructureTypes;
import org.evenfall.card.CardContent.Figure;
import org.evenfall.page.Colours;
import org.evenfall.page.Face;
import org.evenfall.page.Pen;
import org.evenfall.page.TextStyle;
import org.evenfall.page.Typefaces.Weight;

/** The face that the driver sets from: large figures in the order in which they are set. */
final class FrontFace {

    private static final TextStyle LABEL = TextStyle.BODY;
    private static final TextStyle VALUE = new TextStyle(Weight.BOLD, 24, Colours.INK);
    /** A card in spite of an uneven field says so as large as its figures. */
    private static final TextStyle ALERT = VALUE;

    private static final double GAP = 8;
    private static final double LABEL_LINE = LABEL.size() * 1.12;
    private static final double VALUE_LINE = VALUE.size() * 1.08;

    /** Room under a value, points. */
    private static final double UNDER_VALUE = 2;

    private record Placed(Figure figure, int span, List<String> label, List<String> value) {

        double labelHeight() {
            return label.size() * LABEL_LINE;
        }

        double valueHeight() {
            return value.size() * VALUE_LINE + UNDER_VALUE;
        }
    }

    private FrontFace() {}

    /**
     * What found no room.
     *
     * @param figures figures
     * @param end lower edge of what was drawn
     */
    record Undrawn(List<Figure> figures, double end) {}

    /**
     * Draws as many figures as fit.
     *
     * @param figures figures still to be drawn
     * @param opening whether this is the first page, with the heading
     * @param small size of the heading's lines
     */
    static Undrawn draw(Pen pen, Face face, CardContent content, List<Figure> figures, boolean opening, SmallText small)
            throws IOException {
        double y = opening ? heading(pen, face, content.heading(), small.front()) : face.top();
        int columns = face.wide() ? 4 : 3;
        double column = (face.innerWidth() - (columns - 1) * GAP) / columns;
        List<Figure> left = new ArrayList<>(figures);
        while (!left.isEmpty()) {
            List<Placed> row = row(pen, left, columns, column);
            double labels = row.stream().mapToDouble(Placed::labelHeight).max().orElse(0);
            double height =
                    labels + row.stream().mapToDouble(Placed::valueHeight).max().orElse(0);
            if (y + height > face.bottom()) {
                break;
            }
            double x = face.left();
            for (Placed placed : row) {
                cell(pen, placed, x, y + labels);
                x += placed.span() * (column + GAP);
            }
            y += height;
            pen.line(face.left(), y, face.right(), y, 0.5, Colours.LINE);
            y += 2;
            left = left.subList(row.size(), left.size());
        }
        return new Undrawn(List.copyOf(left), y);
    }

    private static double heading(Pen pen, Face face, CardContent.Heading heading, SmallText small) throws IOException {
        double rightOfHole = face.innerWidth() - 1.5 * Face.HOLE;
        double y = face.top();
        TextStyle style = ALERT;
        for (String line : heading.unevenness()) {
            y = pen.marked(StandardStructureTypes.P, style, face.left(), y, rightOfHole, line);
            style = small.strong();
        }
        y = pen.marked(StandardStructureTypes.H1, TextStyle.TITLE, face.left(), y, rightOfHole, heading.title());
        for (String line : shortest(pen, heading.lines(), face.innerWidth(), small.body())) {
            y = pen.marked(StandardStructureTypes.P, small.body(), face.left(), y, face.innerWidth(), line);
        }
        pen.circle(face.right() - Face.HOLE / 2, face.top() + Face.HOLE / 2, Face.HOLE / 2, Colours.LINE);
        pen.line(face.left(), y + 3, face.right(), y + 3, 1.6, Colours.ACCENT);
        return y + 6;
    }

    /** The lines, or all in one paragraph where that is less high. */
    private static List<String> shortest(Pen pen, List<String> lines, double width, TextStyle style)
            throws IOException {
        String joined = String.join(" · ", lines);
        double apart = 0;
        for (String line : lines) {
            apart += pen.paragraphHeight(style, width, line);
        }
        return pen.paragraphHeight(style, width, joined) < apart ? List.of(joined) : lines;
    }

    private static List<Placed> row(Pen pen, List<Figure> figures, int columns, double column) throws IOException {
        List<Placed> row = new ArrayList<>();
        int used = 0;
        for (int i = 0; i < figures.size(); i++) {
            Figure figure = figures.get(i);
            int span = span(pen, figure, columns, column);
            int together = figure.withNext() && i + 1 < figures.size()
                    ? span + span(pen, figures.get(i + 1), columns, column)
                    : span;
            if (used + span > columns || (used > 0 && used + together > columns)) {
                break;
            }
            double width = span * column + (span - 1) * GAP;
            row.add(new Placed(
                    figure, span, pen.wrap(LABEL, width, figure.label()), pen.wrap(VALUE, width, figure.value())));
            used += span;
        }
        return row;
    }

    /** As many columns as the value needs on one line and its label on two. */
    private static int span(Pen pen, Figure figure, int columns, double column) throws IOException {
        for (int span = 1; span < columns; span++) {
            double width = span * column + (span - 1) * GAP;
            if (pen.width(VALUE, figure.value()) <= width
                    && pen.wrap(LABEL, width, figure.label()).size() <= 2) {
                return span;
            }
        }
        return columns;
    }

    /** The label above a line, the value under it, so that the values of a row are on one line. */
    private static void cell(Pen pen, Placed placed, double x, double under) throws IOException {
        PDStructureElement tag = pen.tags().element(StandardStructureTypes.P);
        pen.mark(tag, () -> {
            double y = under - placed.labelHeight();
            for (String line : placed.label()) {
                y += LABEL_LINE;
                pen.text(LABEL, x, y - 2, line);
            }
        });
        pen.mark(tag, () -> {
            double y = under;
            for (String line : placed.value()) {
                y += VALUE_LINE;
                pen.text(VALUE, x, y - 3, line);
            }
        });
    }
}
