package org.evenfall.page;

import java.awt.Color;
import java.io.IOException;
import java.time.Instant;
import java.util.List;
import java.util.function.Function;
import java.util.function.IntSupplier;
import org.apache.pdfbox.pdmodel.documentinterchange.taggedpdf.StandardStructureTypes;

/**
 * Pages filled with pieces from the top down. At the foot of each are a line, its number and how many there are. They are
 * drawn twice, since how many there are is known when they are drawn.
 */
public final class NumberedPages {

    /** Number of pages for which room is kept at the foot. */
    private static final int MANY = 99;

    /** Gives the pieces of a section once the pen is there. */
    @FunctionalInterface
    public interface Source {
        /** The pieces from the top down, for a column of this width. */
        List<Flow.Piece> pieces(Pen pen, double width) throws IOException;
    }

    /** The number of a page in words. */
    @FunctionalInterface
    public interface PageNumber {
        /** Page and number of pages in words. */
        String words(int page, int pages);
    }

    /**
     * What begins on a page of its own.
     *
     * @param foot the line at the foot of its pages
     * @param source its pieces
     */
    public record Section(String foot, Source source) {}

    /**
     * How the pages look.
     *
     * @param size size of the paper
     * @param margin margin without print on all sides, points
     * @param gap space above the foot, points
     * @param foot letters of the foot
     * @param rule colour of the line above the foot
     * @param number number of a page in words
     */
    public record Layout(SheetSize size, double margin, double gap, TextStyle foot, Color rule, PageNumber number) {}

    /**
     * What the file says of itself.
     *
     * @param title title of the document
     * @param language ISO 639 code of its language
     * @param created time of creation
     * @param seed number from which the identifier of the file is made; the same content must give the same number
     */
    public record Identity(String title, String language, Instant created, long seed) {}

    private final PageDocument document;
    private final Layout layout;
    private final int pages;
    private int page;

    private NumberedPages(PageDocument document, Layout layout, int pages) {
        this.document = document;
        this.layout = layout;
        this.pages = pages;
    }

    /**
     * Draws the pages.
     *
     * @param sections makes the sections for one drawing; it is given the number of the page that is drawn at the time
     * @throws IOException when a single piece is taller than a page
     */
    public static byte[] draw(Layout layout, Identity identity, Function<IntSupplier, List<Section>> sections)
            throws IOException {
        int pages;
        try (PageDocument document = new PageDocument()) {
            NumberedPages first = new NumberedPages(document, layout, MANY);
            first.all(sections.apply(() -> 0));
            pages = first.page;
        }
        try (PageDocument document = new PageDocument()) {
            NumberedPages second = new NumberedPages(document, layout, pages);
            second.all(sections.apply(() -> second.page));
            return document.finish(identity.title(), identity.language(), identity.created(), identity.seed());
        }
    }

    private void all(List<Section> sections) throws IOException {
        for (Section section : sections) {
            page++;
            List<Flow.Piece> left = document.page(layout.size(), (pen, face) -> {
                List<Flow.Piece> pieces = section.source().pieces(pen, width(face));
                return fill(pen, face, section.foot(), pieces);
            });
            while (!left.isEmpty()) {
                List<Flow.Piece> now = left;
                page++;
                left = document.page(layout.size(), (pen, face) -> fill(pen, face, section.foot(), now));
                if (left.size() == now.size()) {
                    throw new IOException("a block does not fit the page");
                }
            }
        }
    }

    private double width(Face face) {
        return face.width() - 2 * layout.margin();
    }

    private List<Flow.Piece> fill(Pen pen, Face face, String foot, List<Flow.Piece> pieces) throws IOException {
        double width = width(face);
        double x = face.x() + layout.margin();
        double top = face.y() + layout.margin();
        double bottom = face.y() + face.height() - layout.margin() - footHeight(pen, foot, width);
        List<Flow.Piece> undrawn = Flow.fill(pen, pieces, List.of(new Flow.Column(x, top, width, bottom)))
                .undrawn();
        foot(pen, foot, x, bottom, width);
        return undrawn;
    }

    private double numberWidth(Pen pen) throws IOException {
        return pen.width(layout.foot(), layout.number().words(MANY, MANY)) + layout.gap();
    }

    private double footHeight(Pen pen, String foot, double width) throws IOException {
        return layout.gap() + pen.paragraphHeight(layout.foot(), width - numberWidth(pen), foot);
    }

    private void foot(Pen pen, String foot, double x, double bottom, double width) throws IOException {
        double top = bottom + layout.gap();
        pen.line(x, top - 2, x + width, top - 2, 0.6, layout.rule());
        pen.marked(StandardStructureTypes.P, layout.foot(), x, top, width - numberWidth(pen), foot);
        String number = layout.number().words(page, pages);
        double numberWidth = pen.width(layout.foot(), number) + 1;
        pen.marked(StandardStructureTypes.P, layout.foot(), x + width - numberWidth, top, numberWidth, number);
    }
}
