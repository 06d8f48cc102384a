package org.evenfall.sheet;

import java.io.IOException;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import java.util.function.IntSupplier;
import org.evenfall.page.Flow;
import org.evenfall.page.NumberedPages;
import org.evenfall.page.SheetSize;
import org.evenfall.sheet.SheetContent.Part;

/** The sheets as tagged pages. The same content and time give the same bytes. */
public final class SheetPdf {

    private SheetPdf() {}

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

    /** @param boxes is given every box at its place, once */
    static byte[] draw(SheetContent content, SheetSize size, Instant when, Consumer<PlacedBox> boxes)
            throws IOException {
        String title =
                String.join(", ", content.parts().stream().map(Part::title).toList());
        return NumberedPages.draw(
                new NumberedPages.Layout(
                        size,
                        SheetStyle.MARGIN,
                        SheetStyle.GAP,
                        SheetStyle.FOOT,
                        SheetStyle.GREY,
                        content.foot()::page),
                new NumberedPages.Identity(
                        title, content.language(), when, content.toString().hashCode() * 31L + when.getEpochSecond()),
                page -> sections(content, page, boxes));
    }

    private static List<NumberedPages.Section> sections(
            SheetContent content, IntSupplier page, Consumer<PlacedBox> boxes) {
        return content.parts().stream()
                .map(part -> new NumberedPages.Section(
                        part.title() + " · " + content.foot().line(), (pen, width) -> pieces(part, page, boxes)))
                .toList();
    }

    private static List<Flow.Piece> pieces(Part part, IntSupplier page, Consumer<PlacedBox> boxes) {
        List<Flow.Piece> pieces = new ArrayList<>();
        pieces.add(new TitlePiece(part));
        pieces.addAll(SheetPieces.of(part.blocks(), (box, x, top, width, height) -> {
            if (page.getAsInt() > 0) {
                boxes.accept(new PlacedBox(page.getAsInt(), box, x, top, width, height));
            }
        }));
        return pieces;
    }
}
