package org.evenfall.sheet;

import java.io.IOException;
import java.time.Instant;
import java.util.List;
import java.util.function.Consumer;
import org.apache.pdfbox.pdmodel.documentinterchange.taggedpdf.StandardStructureTypes;
import org.evenfall.page.Face;
import org.evenfall.page.Flow;
import org.evenfall.page.PageDocument;
import org.evenfall.page.Pen;
import org.evenfall.page.SheetSize;
import org.evenfall.sheet.SheetContent.Part;

/** The sheets as tagged pages. The same content and time give the same bytes. */
public final class SheetPdf {

    /** Number of pages for which room is kept at the foot. */
    private static final int MANY = 99;

    private final PageDocument document;
    private final SheetContent content;
    private final SheetSize size;
    private final int pages;
    private final Consumer<PlacedBox> boxes;
    private int page;

    private SheetPdf(
            PageDocument document, SheetContent content, SheetSize size, int pages, Consumer<PlacedBox> boxes) {
        this.document = document;
        this.content = content;
        this.size = size;
        this.pages = pages;
        this.boxes = boxes;
    }

    /**
     * Draws the pages.
     *
     * @param content what is printed
     * @param size size of the paper
     * @param when time of printing
     * @throws IOException when a single block is taller than a page
     */
    public static byte[] draw(SheetContent content, SheetSize size, Instant when) throws IOException {
        return draw(content, size, when, box -> {});
    }

    /**
     * Draws twice: how many pages there are is known when they are drawn, and each page prints it.
     *
     * @param boxes is given every box at its place
     */
    static byte[] draw(SheetContent content, SheetSize size, Instant when, Consumer<PlacedBox> boxes)
            throws IOException {
        int pages;
        try (PageDocument document = new PageDocument()) {
            SheetPdf first = new SheetPdf(document, content, size, MANY, box -> {});
            first.all();
            pages = first.page;
        }
        try (PageDocument document = new PageDocument()) {
            SheetPdf second = new SheetPdf(document, content, size, pages, boxes);
            second.all();
            long seed = content.toString().hashCode() * 31L + when.getEpochSecond();
            String title =
                    String.join(", ", content.parts().stream().map(Part::title).toList());
            return document.finish(title, content.language(), when, seed);
        }
    }

    private void all() throws IOException {
        for (Part part : content.parts()) {
            List<Flow.Piece> left = SheetPieces.of(
                    part.blocks(),
                    (box, x, top, width, height) -> boxes.accept(new PlacedBox(page, box, x, top, width, height)));
            boolean opening = true;
            while (!left.isEmpty()) {
                List<Flow.Piece> now = left;
                boolean titled = opening;
                page++;
                left = document.page(size, (pen, face) -> fill(pen, face, part, titled, now));
                if (left.size() == now.size()) {
                    throw new IOException("a block does not fit the page");
                }
                opening = false;
            }
        }
    }

    private List<Flow.Piece> fill(Pen pen, Face face, Part part, boolean opening, List<Flow.Piece> pieces)
            throws IOException {
        double width = face.width() - 2 * SheetStyle.MARGIN;
        double x = face.x() + SheetStyle.MARGIN;
        double top = face.y() + SheetStyle.MARGIN;
        if (opening) {
            top = title(pen, part, x, top, width);
        }
        String foot = part.title() + " · " + content.foot().line();
        double bottom = face.y() + face.height() - SheetStyle.MARGIN - footHeight(pen, foot, width);
        List<Flow.Piece> undrawn = Flow.fill(pen, pieces, List.of(new Flow.Column(x, top, width, bottom)))
                .undrawn();
        foot(pen, foot, x, bottom, width);
        return undrawn;
    }

    private static double title(Pen pen, Part part, double x, double top, double width) throws IOException {
        double under = pen.marked(StandardStructureTypes.H1, SheetStyle.TITLE, x, top, width, part.title());
        double line = pen.marked(StandardStructureTypes.P, SheetStyle.LABEL, x, under, width, part.legend()) + 3;
        pen.line(x, line, x + width, line, 1.6, SheetStyle.BLACK);
        return line + SheetStyle.GAP;
    }

    private double numberWidth(Pen pen) throws IOException {
        return pen.width(SheetStyle.FOOT, content.foot().page(MANY, MANY)) + SheetStyle.GAP;
    }

    private double footHeight(Pen pen, String foot, double width) throws IOException {
        return SheetStyle.GAP + pen.paragraphHeight(SheetStyle.FOOT, width - numberWidth(pen), foot);
    }

    private void foot(Pen pen, String foot, double x, double bottom, double width) throws IOException {
        double line = bottom + SheetStyle.GAP - 2;
        pen.line(x, line, x + width, line, 0.6, SheetStyle.GREY);
        double top = bottom + SheetStyle.GAP;
        pen.marked(StandardStructureTypes.P, SheetStyle.FOOT, x, top, width - numberWidth(pen), foot);
        String number = content.foot().page(page, pages);
        double numberWidth = pen.width(SheetStyle.FOOT, number) + 1;
        pen.marked(StandardStructureTypes.P, SheetStyle.FOOT, x + width - numberWidth, top, numberWidth, number);
    }
}
