package org.evenfall.report;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.pdmodel.documentinterchange.taggedpdf.StandardStructureTypes;
import org.evenfall.page.Flow;
import org.evenfall.page.Pen;
import org.evenfall.page.TextStyle;
import org.evenfall.report.LinesPiece.Spacing;
import org.evenfall.report.ReportContent.Block;
import org.evenfall.report.ReportContent.Chart;
import org.evenfall.report.ReportContent.Heading;
import org.evenfall.report.ReportContent.Item;
import org.evenfall.report.ReportContent.Notice;
import org.evenfall.report.ReportContent.Pair;
import org.evenfall.report.ReportContent.Table;
import org.evenfall.report.ReportContent.Text;

/** Blocks of a report as pieces that fill its pages; elements of the structure tree are made in the order of reading. */
final class ReportPieces {

    /** Width of a bullet or a number with its space. */
    private static final double BULLET = 16;

    private ReportPieces() {}

    static List<Flow.Piece> of(Pen pen, List<Block> blocks, double width) throws IOException {
        List<Flow.Piece> pieces = new ArrayList<>();
        boolean charted = false;
        for (int i = 0; i < blocks.size(); i++) {
            Block block = blocks.get(i);
            charted = block instanceof Chart || (charted && !(block instanceof Heading));
            boolean last = i == blocks.size() - 1 || blocks.get(i + 1) instanceof Heading;
            pieces.addAll(of(pen, block, charted && !last, width));
        }
        return pieces;
    }

    /** @param together whether it stays with what follows: what is read from a picture is on the page of the picture */
    private static List<Flow.Piece> of(Pen pen, Block block, boolean together, double width) throws IOException {
        if (block instanceof Heading heading) {
            return heading(pen, heading, width);
        }
        if (block instanceof Notice notice) {
            return List.of(new NoticePiece(notice));
        }
        if (block instanceof Table table) {
            return TableRow.of(pen, table, width);
        }
        if (block instanceof Chart chart) {
            return List.of(new ChartPiece(chart, together, pen.tags().figure(chart.inWords())));
        }
        if (block instanceof Pair pair) {
            return text(pen, pair.label(), pair.value(), ReportStyle.LABELS * width, together, width);
        }
        if (block instanceof Item item) {
            return text(pen, item.number(), item.text(), BULLET, together, width);
        }
        return text(pen, "", ((Text) block).text(), 0, together, width);
    }

    private static List<Flow.Piece> text(
            Pen pen, String label, String text, double indent, boolean together, double width) throws IOException {
        return LinesPiece.of(
                pen,
                ReportStyle.TEXT,
                label,
                text,
                indent,
                new Spacing(ReportStyle.SMALL_GAP, indent == BULLET && label.isEmpty(), together),
                pen.tags().element(StandardStructureTypes.P),
                width);
    }

    private static List<Flow.Piece> heading(Pen pen, Heading heading, double width) throws IOException {
        TextStyle style = switch (heading.level()) {
            case TITLE -> ReportStyle.TITLE;
            case SECTION -> ReportStyle.SECTION;
            case PART -> ReportStyle.PART;
        };
        String tag = switch (heading.level()) {
            case TITLE -> StandardStructureTypes.H1;
            case SECTION -> StandardStructureTypes.H2;
            case PART -> StandardStructureTypes.H3;
        };
        double gap = heading.level() == ReportContent.Level.PART ? ReportStyle.GAP : ReportStyle.WIDE_GAP;
        return LinesPiece.of(
                pen,
                style,
                "",
                heading.text(),
                0,
                new Spacing(gap, false, true),
                pen.tags().element(tag),
                width);
    }
}
