package org.evenfall.card;

import java.io.IOException;
import java.time.Instant;
import java.util.List;
import org.evenfall.card.CardContent.Figure;
import org.evenfall.page.Face;
import org.evenfall.page.Flow;
import org.evenfall.page.PageDocument;
import org.evenfall.page.Pen;
import org.evenfall.page.SheetSize;
import org.jspecify.annotations.Nullable;

/** The card as tagged PDF/A-2b pages, not yet signed. The same content and time give the same bytes. */
public final class CardPdf {

    /** Pages that fit one laminated sheet. */
    private static final int SIDES = 2;

    /** With less height than this under the front, the back gets a page of its own, points. */
    private static final double LEAST_BACK_HEIGHT = 260;

    /** Space between front and back on one page, points. */
    private static final double BACK_GAP = 10;

    private final PageDocument document;
    private final CardContent content;
    private final SmallText small;
    private int pages;

    private CardPdf(PageDocument document, CardContent content, SmallText small) {
        this.document = document;
        this.content = content;
        this.small = small;
    }

    /** A drawn document and how many pages it takes. */
    private static final class Drawn {
        private final int pages;
        private final byte[] pdf;

        Drawn(int pages, byte[] pdf) {
            this.pages = pages;
            this.pdf = pdf;
        }

        int pages() {
            return pages;
        }

        byte[] pdf() {
            return pdf;
        }
    }

    /**
     * Draws the pages.
     *
     * @param content what is printed
     * @param when time of creation
     * @throws IOException when a single value or line is taller than a page
     */
    public static byte[] draw(CardContent content, Instant when) throws IOException {
        for (SmallText small : SmallText.onePage(content.sheet())) {
            Drawn drawn = draw(content, when, small);
            if (drawn.pages() == 1) {
                return drawn.pdf();
            }
        }
        Drawn largest = draw(content, when, SmallText.SIZES.get(0));
        Drawn smallest = draw(content, when, SmallText.SIZES.get(SmallText.SIZES.size() - 1));
        if (largest.pages() <= SIDES || smallest.pages() > SIDES) {
            return largest.pdf();
        }
        for (SmallText small : SmallText.SIZES) {
            Drawn drawn = draw(content, when, small);
            if (drawn.pages() <= SIDES) {
                return drawn.pdf();
            }
        }
        return smallest.pdf();
    }

    private static Drawn draw(CardContent content, Instant when, SmallText small) throws IOException {
        try (PageDocument document = new PageDocument()) {
            CardPdf card = new CardPdf(document, content, small);
            card.pages();
            // from the text: hash codes of an enum differ from run to run
            long seed = content.toString().hashCode() * 31L + when.getEpochSecond();
            byte[] pdf =
                    document.finish(content.heading().title(), content.sheet().language(), when, seed);
            return new Drawn(card.pages, pdf);
        }
    }

    private <R> R page(PageDocument.Drawing<R> drawing) throws IOException {
        SheetSize size = switch (content.sheet().paper()) {
            case A5_LANDSCAPE -> SheetSize.ofMm(210, 148);
            case A5_PORTRAIT -> SheetSize.ofMm(148, 210);
            case A4 -> SheetSize.ofMm(210, 297);
            case LETTER -> SheetSize.LETTER;
        };
        pages++;
        return document.page(size, drawing);
    }

    /** Front and back: two sides of an A5 sheet, one under the other on a larger one; more pages where needed. */
    private void pages() throws IOException {
        if (content.sheet().findingOnly()) {
            back(new FrontFoot.Undrawn(content.warnings(), true, 0));
            return;
        }
        List<Figure> left = content.figures();
        Front front = front(left, true);
        boolean opening = true;
        while (!front.figures().isEmpty()) {
            // a long title may take the first page for itself
            if (!opening && front.figures().size() == left.size()) {
                throw new IOException("a figure does not fit the page");
            }
            left = front.figures();
            front = front(left, false);
            opening = false;
        }
        if (front.back() == null) {
            back(front.foot());
        } else {
            overflow(front.back().undrawn());
        }
    }

    /**
     * One page of the front.
     *
     * @param figures figures for which there was no room
     * @param foot what is left of the foot, which follows the last figure
     * @param back the back on the same page, null when it needs a page of its own
     */
    private record Front(List<Figure> figures, FrontFoot.Undrawn foot, Flow.@Nullable Filled back) {}

    private Front front(List<Figure> figures, boolean opening) throws IOException {
        return page((pen, face) -> {
            FrontFace.Undrawn undrawn = FrontFace.draw(pen, face, content, figures, opening, small);
            if (!undrawn.figures().isEmpty()) {
                return new Front(
                        undrawn.figures(), new FrontFoot.Undrawn(content.warnings(), true, undrawn.end()), null);
            }
            FrontFoot.Undrawn foot = FrontFoot.draw(pen, face, content, undrawn.end(), small);
            boolean both = content.sheet().isLarge() && face.bottom() - foot.end() > LEAST_BACK_HEIGHT;
            return new Front(List.of(), foot, both ? drawBack(pen, face, foot.end() + BACK_GAP, foot) : null);
        });
    }

    private void back(FrontFoot.Undrawn fromFront) throws IOException {
        overflow(page((pen, face) -> drawBack(pen, face, face.top(), fromFront)).undrawn());
    }

    private Flow.Filled drawBack(Pen pen, Face face, double top, FrontFoot.Undrawn fromFront) throws IOException {
        List<Flow.Piece> pieces = BackFace.pieces(pen, content, fromFront, face, small);
        double bottom = BackFace.foot(pen, face, content, small);
        return Flow.fill(pen, pieces, BackFace.columns(face, top, bottom));
    }

    /** Further pages for what found no room. */
    private void overflow(List<Flow.Piece> pieces) throws IOException {
        List<Flow.Piece> left = pieces;
        while (!left.isEmpty()) {
            List<Flow.Piece> now = left;
            left = page((pen, face) -> Flow.fill(pen, now, BackFace.columns(face, face.top(), face.bottom())))
                    .undrawn();
            if (left.size() == now.size()) {
                throw new IOException("a piece does not fit the page");
            }
        }
    }
}
