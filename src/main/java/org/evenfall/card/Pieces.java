package org.evenfall.card;

import java.awt.Color;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureElement;
import org.apache.pdfbox.pdmodel.documentinterchange.taggedpdf.StandardStructureTypes;
import org.evenfall.card.Typefaces.Weight;

/** The pieces of the card's back, each with its place in the reading order. */
final class Pieces {

    /** Smallest letters on the card, read at arm's length in a moving cab. */
    static final double TEXT = 14;

    static final double TITLE = 20;

    /** A long text is dealt out in pieces of so many lines, so that it can pass from column to column. */
    private static final int LINES = 5;

    private static final double MARK = 11;

    /** What stands before a line. */
    enum Bullet {
        NONE,
        SQUARE,
        TRIANGLE
    }

    private Pieces() {}

    /** Lines that belong together, with a bullet before the first. */
    private record Lines(
            List<String> lines,
            double size,
            Weight weight,
            Color colour,
            Bullet bullet,
            boolean first,
            boolean withNext,
            PDStructureElement tag)
            implements Flow.Piece {

        @Override
        public double height(Pen pen, double width) {
            return lines.size() * size * Pen.LEADING;
        }

        @Override
        public double gap() {
            return tag.getStructureType().startsWith("H") ? 5 : 0;
        }

        @Override
        public void draw(Pen pen, double x, double top, double width) throws IOException {
            double in = bullet == Bullet.NONE ? 0 : MARK;
            if (first && bullet == Bullet.SQUARE) {
                pen.fill(x + 1, top + size * 0.5, 4, 4, Pen.INK);
            } else if (first && bullet == Bullet.TRIANGLE) {
                triangle(pen, x, top + size);
            }
            pen.mark(tag, () -> {
                double y = top;
                for (String line : lines) {
                    y += size * Pen.LEADING;
                    pen.text(weight, size, colour, x + in, y - size * Pen.DESCENT, line);
                }
            });
        }

        private static void triangle(Pen pen, double x, double baseline) throws IOException {
            pen.line(x + 0.5, baseline, x + 4.5, baseline - 8, 1.2, Pen.INK);
            pen.line(x + 4.5, baseline - 8, x + 8.5, baseline, 1.2, Pen.INK);
            pen.line(x + 0.5, baseline, x + 8.5, baseline, 1.2, Pen.INK);
        }
    }

    /** Title of a sheet that has no front. */
    static List<Flow.Piece> title(Pen pen, String text, double width) throws IOException {
        PDStructureElement tag = pen.tags().element(StandardStructureTypes.H1);
        List<String> lines = pen.wrap(Weight.BOLD, TITLE, width, text);
        return List.of(new Lines(lines, TITLE, Weight.BOLD, Pen.ACCENT, Bullet.NONE, true, true, tag));
    }

    static List<Flow.Piece> heading(Pen pen, String text, double width) throws IOException {
        return lines(
                pen,
                text,
                Weight.BOLD,
                Pen.ACCENT,
                Bullet.NONE,
                true,
                pen.tags().element(StandardStructureTypes.H2),
                width);
    }

    static List<Flow.Piece> paragraph(Pen pen, Weight weight, String text, double width) throws IOException {
        return lines(
                pen, text, weight, Pen.INK, Bullet.NONE, false, pen.tags().element(StandardStructureTypes.P), width);
    }

    /** @param together whether the list stays in one column where it can */
    static List<Flow.Piece> list(
            Pen pen, Weight weight, Bullet bullet, List<String> texts, boolean together, double width)
            throws IOException {
        List<Flow.Piece> pieces = new ArrayList<>();
        if (texts.isEmpty()) {
            return pieces;
        }
        PDStructureElement list = pen.tags().element(StandardStructureTypes.L);
        for (int i = 0; i < texts.size(); i++) {
            PDStructureElement body = pen.tags()
                    .element(pen.tags().element(list, StandardStructureTypes.LI), StandardStructureTypes.L_BODY);
            boolean withNext = together && i < texts.size() - 1;
            pieces.addAll(lines(pen, texts.get(i), weight, Pen.INK, bullet, withNext, body, width));
        }
        return pieces;
    }

    /** Height of a text with a bullet before it. */
    static double bulletedHeight(Pen pen, Weight weight, String text, double width) throws IOException {
        return pen.paragraphHeight(weight, TEXT, width - MARK, text);
    }

    private static List<Flow.Piece> lines(
            Pen pen,
            String text,
            Weight weight,
            Color colour,
            Bullet bullet,
            boolean withNext,
            PDStructureElement tag,
            double width)
            throws IOException {
        List<String> all = pen.wrap(weight, TEXT, width - (bullet == Bullet.NONE ? 0 : MARK), text);
        List<Flow.Piece> pieces = new ArrayList<>();
        for (int from = 0; from < all.size(); from += LINES) {
            List<String> some = all.subList(from, Math.min(all.size(), from + LINES));
            pieces.add(new Lines(List.copyOf(some), TEXT, weight, colour, bullet, from == 0, withNext, tag));
        }
        return pieces;
    }
}
