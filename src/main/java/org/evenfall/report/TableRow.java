package org.evenfall.report;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureElement;
import org.apache.pdfbox.pdmodel.documentinterchange.taggedpdf.PDTableAttributeObject;
import org.apache.pdfbox.pdmodel.documentinterchange.taggedpdf.StandardStructureTypes;
import org.evenfall.page.Colours;
import org.evenfall.page.Flow;
import org.evenfall.page.Pen;
import org.evenfall.page.TextStyle;
import org.evenfall.report.ReportContent.Table;

/**
 * One row of a table.
 *
 * @param cells its cells
 * @param widths width of each column without the space after it, points
 * @param place where in the table it is
 * @param tags element of each cell
 */
record TableRow(List<String> cells, List<Double> widths, Place place, List<PDStructureElement> tags)
        implements Flow.Piece {

    private static final double BETWEEN = 4 * ReportStyle.MM;

    /** Where in its table a row is. */
    enum Place {
        /** The headings. */
        HEAD,
        /** Above others. */
        MIDDLE,
        /** The last. */
        LAST
    }

    /** The rows of a table; where all columns are wider than the page, the widest are narrowed, and their texts wrap. */
    static List<Flow.Piece> of(Pen pen, Table table, double width) throws IOException {
        List<Double> widths = widths(pen, table, width);
        PDStructureElement tag = pen.tags().element(StandardStructureTypes.TABLE);
        List<Flow.Piece> rows = new ArrayList<>();
        for (int i = 0; i < table.rows().size(); i++) {
            PDStructureElement row = pen.tags().element(tag, StandardStructureTypes.TR);
            List<PDStructureElement> tags = new ArrayList<>();
            for (int cell = 0; cell < widths.size(); cell++) {
                tags.add(i == 0 ? head(pen, row) : pen.tags().element(row, StandardStructureTypes.TD));
            }
            Place place = i == 0 ? Place.HEAD : i == table.rows().size() - 1 ? Place.LAST : Place.MIDDLE;
            rows.add(new TableRow(table.rows().get(i), widths, place, tags));
        }
        return rows;
    }

    /** A heading says that it is that of its column (ISO 14289-1, 7.5). */
    private static PDStructureElement head(Pen pen, PDStructureElement row) {
        PDStructureElement head = pen.tags().element(row, StandardStructureTypes.TH);
        PDTableAttributeObject scope = new PDTableAttributeObject();
        scope.setScope(PDTableAttributeObject.SCOPE_COLUMN);
        head.addAttribute(scope);
        return head;
    }

    private static List<Double> widths(Pen pen, Table table, double width) throws IOException {
        List<Double> natural = new ArrayList<>();
        double all = 0;
        int columns = table.rows().get(0).size();
        for (int column = 0; column < columns; column++) {
            double most = 0;
            for (int row = 0; row < table.rows().size(); row++) {
                TextStyle style = row == 0 ? ReportStyle.HEAD : ReportStyle.TEXT;
                most = Math.max(most, pen.width(style, table.rows().get(row).get(column)) + 0.1);
            }
            natural.add(most);
            all += most;
        }
        double room = width - (columns - 1) * BETWEEN;
        return all <= room ? natural : narrowed(natural, room);
    }

    /** A column within an equal share of the room keeps its width, so that figures do not break; the others share the rest. */
    static List<Double> narrowed(List<Double> natural, double room) {
        List<Double> sorted = natural.stream().sorted().toList();
        double left = room;
        double most = room;
        for (int i = 0; i < sorted.size(); i++) {
            double share = left / (sorted.size() - i);
            most = share;
            if (sorted.get(i) > share) {
                break;
            }
            left -= sorted.get(i);
        }
        double limit = most;
        return natural.stream().map(one -> Math.min(one, limit)).toList();
    }

    private TextStyle style() {
        return place == Place.HEAD ? ReportStyle.HEAD : ReportStyle.TEXT;
    }

    @Override
    public double height(Pen pen, double width) throws IOException {
        double height = 0;
        for (int i = 0; i < cells.size(); i++) {
            height = Math.max(height, pen.paragraphHeight(style(), widths.get(i), cells.get(i)));
        }
        return height + (place == Place.HEAD ? 2 : 0);
    }

    @Override
    public double gap() {
        return place == Place.HEAD ? ReportStyle.GAP : ReportStyle.SMALL_GAP;
    }

    @Override
    public boolean withNext() {
        return place == Place.HEAD;
    }

    @Override
    public void draw(Pen pen, double x, double top, double width) throws IOException {
        double left = x;
        for (int i = 0; i < cells.size(); i++) {
            double at = left;
            int cell = i;
            pen.mark(tags.get(i), () -> pen.paragraph(style(), at, top, widths.get(cell), cells.get(cell)));
            left += widths.get(i) + BETWEEN;
        }
        if (place == Place.HEAD) {
            double under = top + height(pen, width);
            pen.line(x, under, left - BETWEEN, under, 0.6, Colours.LINE);
        }
    }
}
