package org.evenfall.page;

import org.apache.pdfbox.pdmodel.common.PDRectangle;

/**
 * Size of a sheet of paper.
 *
 * @param widthPt width, points
 * @param heightPt height, points
 */
public record SheetSize(float widthPt, float heightPt) {

    private static final float PT_PER_MM = 72 / 25.4f;

    /** Source (from memory): ANSI/ASME Y14.1, size A, 8.5 in by 11 in. */
    public static final SheetSize LETTER = new SheetSize(PDRectangle.LETTER.getWidth(), PDRectangle.LETTER.getHeight());

    /** Rejects a side that is not above 0. */
    public SheetSize {
        if (!(widthPt > 0 && heightPt > 0)) {
            throw new IllegalArgumentException("sheet sides must be above 0: " + widthPt + ", " + heightPt);
        }
    }

    /** A sheet by its sides in millimetres. */
    public static SheetSize ofMm(int widthMm, int heightMm) {
        return new SheetSize(widthMm * PT_PER_MM, heightMm * PT_PER_MM);
    }

    PDRectangle box() {
        return new PDRectangle(widthPt, heightPt);
    }
}
