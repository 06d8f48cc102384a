package org.evenfall.page;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureElement;
import org.apache.pdfbox.pdmodel.documentinterchange.taggedpdf.StandardStructureTypes;

/** Text as pieces that fill columns, each with its element in the structure tree. */
public final class Pieces {

    /** A long text is split into pieces of so many lines, so that it can continue in the next column. */
    private static final int LINES = 5;

    /** Width of a bullet with its space, points. */
    private static final double BULLET_WIDTH = 11;

    /** Space above a heading, points. */
    private static final double HEADING_GAP = 5;

    /** The sign in front of a line. */
    public enum Bullet {
        /** No sign and no indent. */
        NONE,
        /** Items of a list. */
        SQUARE,
        /** Warnings. */
        TRIANGLE
    }

    private Pieces() {}

    /** Lines that belong together, with a bullet in front of the first. */
    private record Lines(
            List<String> lines, TextStyle style, Bullet bullet, boolean first, boolean withNext, PDStructureElement tag)
            implements Flow.Piece {

        @Override
        public double height(Pen pen, double width) {
            return lines.size() * style.lineHeight();
        }

        @Override
        public double gap() {
            return tag.getStructureType().startsWith("H") ? HEADING_GAP : 0;
        }

        @Override
        public void draw(Pen pen, double x, double top, double width) throws IOException {
            if (first && bullet == Bullet.SQUARE) {
                pen.fill(x + 1, top + style.size() * 0.5, 4, 4, Colours.INK);
            } else if (first && bullet == Bullet.TRIANGLE) {
                triangle(pen, x, top + style.size());
            }
            pen.mark(tag, () -> pen.lines(style, x + indent(bullet), top, lines));
        }

        private static void triangle(Pen pen, double x, double baseline) throws IOException {
            pen.line(x + 0.5, baseline, x + 4.5, baseline - 8, 1.2, Colours.INK);
            pen.line(x + 4.5, baseline - 8, x + 8.5, baseline, 1.2, Colours.INK);
            pen.line(x + 0.5, baseline, x + 8.5, baseline, 1.2, Colours.INK);
        }
    }

    private static double indent(Bullet bullet) {
        return bullet == Bullet.NONE ? 0 : BULLET_WIDTH;
    }

    /** The title of the document. */
    public static List<Flow.Piece> title(Pen pen, String text, double width) throws IOException {
        PDStructureElement tag = pen.tags().element(StandardStructureTypes.H1);
        return List.of(
                new Lines(pen.wrap(TextStyle.TITLE, width, text), TextStyle.TITLE, Bullet.NONE, true, true, tag));
    }

    /** A heading in a style, which stays with what follows. */
    public static List<Flow.Piece> heading(Pen pen, TextStyle style, String text, double width) throws IOException {
        PDStructureElement tag = pen.tags().element(StandardStructureTypes.H2);
        return split(pen, text, style, Bullet.NONE, true, tag, width);
    }

    /** A paragraph. */
    public static List<Flow.Piece> paragraph(Pen pen, TextStyle style, String text, double width) throws IOException {
        PDStructureElement tag = pen.tags().element(StandardStructureTypes.P);
        return split(pen, text, style, Bullet.NONE, false, tag, width);
    }

    /**
     * A list; empty for no texts.
     *
     * @param together whether the list stays in one column where it can
     */
    public static List<Flow.Piece> list(
            Pen pen, TextStyle style, Bullet bullet, List<String> texts, boolean together, double width)
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
            pieces.addAll(split(pen, texts.get(i), style, bullet, withNext, body, width));
        }
        return pieces;
    }

    /** Height of a text with a bullet in front of it, points. */
    public static double bulletedHeight(Pen pen, TextStyle style, String text, double width) throws IOException {
        return pen.paragraphHeight(style, width - BULLET_WIDTH, text);
    }

    private static List<Flow.Piece> split(
            Pen pen,
            String text,
            TextStyle style,
            Bullet bullet,
            boolean withNext,
            PDStructureElement tag,
            double width)
            throws IOException {
        List<String> all = pen.wrap(style, width - indent(bullet), text);
        List<Flow.Piece> pieces = new ArrayList<>();
        for (int from = 0; from < all.size(); from += LINES) {
            List<String> some = all.subList(from, Math.min(all.size(), from + LINES));
            pieces.add(new Lines(List.copyOf(some), style, bullet, from == 0, withNext, tag));
        }
        return pieces;
    }
}
