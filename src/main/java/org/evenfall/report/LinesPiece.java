package org.evenfall.report;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureElement;
import org.evenfall.page.Colours;
import org.evenfall.page.Flow;
import org.evenfall.page.Pen;
import org.evenfall.page.TextStyle;

/**
 * Some lines of a text, so that a long one can go on on the next page; its first piece may have a label on the left.
 *
 * @param style letters of the lines
 * @param label lines of the label in front of them; may be empty
 * @param lines wrapped lines
 * @param indent space on the left of the lines, points
 * @param spacing space above it, and what it stays with
 * @param tag element of the structure tree
 */
record LinesPiece(
        TextStyle style, List<String> label, List<String> lines, double indent, Spacing spacing, PDStructureElement tag)
        implements Flow.Piece {

    /** A long text is split into pieces of so many lines. */
    private static final int LINES = 8;

    /**
     * What is around it.
     *
     * @param gap space above it, points
     * @param bullet whether a bullet is in front of its first line
     * @param withNext whether it stays on one page with what follows
     */
    record Spacing(double gap, boolean bullet, boolean withNext) {}

    /** A text in pieces. */
    static List<Flow.Piece> of(
            Pen pen,
            TextStyle style,
            String label,
            String text,
            double indent,
            Spacing spacing,
            PDStructureElement tag,
            double width)
            throws IOException {
        // a dot between two values ends a line and never begins one
        List<String> all = pen.wrap(style, width - indent, text.replace(" · ", "\u00a0· "));
        List<String> labels =
                label.isEmpty() ? List.of() : pen.wrap(ReportStyle.LABEL, indent - ReportStyle.SMALL_GAP, label);
        List<Flow.Piece> pieces = new ArrayList<>();
        for (int from = 0; from == 0 || from < Math.max(all.size(), labels.size()); from += LINES) {
            boolean first = from == 0;
            pieces.add(new LinesPiece(
                    style,
                    part(labels, from),
                    part(all, from),
                    indent,
                    first ? spacing : new Spacing(0, false, spacing.withNext()),
                    tag));
        }
        return pieces;
    }

    private static List<String> part(List<String> lines, int from) {
        return List.copyOf(lines.subList(Math.min(from, lines.size()), Math.min(from + LINES, lines.size())));
    }

    @Override
    public double height(Pen pen, double width) {
        return Math.max(lines.size(), label.size()) * style.lineHeight();
    }

    @Override
    public double gap() {
        return spacing.gap();
    }

    @Override
    public boolean withNext() {
        return spacing.withNext();
    }

    @Override
    public void draw(Pen pen, double x, double top, double width) throws IOException {
        if (spacing.bullet()) {
            pen.fill(x + 1, top + style.size() * 0.55, 3, 3, Colours.INK);
        }
        pen.mark(tag, () -> {
            pen.lines(ReportStyle.LABEL, x, top, label);
            pen.lines(style, x + indent, top, lines);
        });
    }
}
