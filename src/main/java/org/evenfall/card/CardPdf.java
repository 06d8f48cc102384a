package org.evenfall.card;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.pdfwriter.compress.CompressParameters;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.evenfall.card.CardContent.Figure;
import org.evenfall.setup.entry.Paper;

/** The card as PDF/A-2b pages, not yet signed. The same content and time give the same bytes. */
public final class CardPdf {

    private static final float MM = 72 / 25.4f;

    private CardPdf() {}

    public static byte[] draw(CardContent content, Instant when) throws IOException {
        try (PDDocument document = new PDDocument()) {
            // a name from the content, not from clock and chance
            document.setDocumentId(content.hashCode() * 31L + when.getEpochSecond());
            Typefaces faces = new Typefaces(document);
            if (content.findingOnly()) {
                finding(document, faces, content);
            } else if (content.paper() == Paper.A4 || content.paper() == Paper.LETTER) {
                oneSheet(document, faces, content);
            } else {
                twoFaces(document, faces, content);
            }
            Archive.mark(document, content, when);
            ByteArrayOutputStream bytes = new ByteArrayOutputStream();
            document.save(bytes, CompressParameters.NO_COMPRESSION);
            return bytes.toByteArray();
        }
    }

    private static PDRectangle sheet(Paper paper) {
        return switch (paper) {
            case A5_LANDSCAPE -> new PDRectangle(210 * MM, 148 * MM);
            case A5_PORTRAIT -> new PDRectangle(148 * MM, 210 * MM);
            case A4 -> new PDRectangle(210 * MM, 297 * MM);
            case LETTER -> PDRectangle.LETTER;
        };
    }

    /** What opens a page, draws on it and closes it. */
    private interface Drawing {
        void on(Pen pen, PDRectangle sheet) throws IOException;
    }

    private static void page(PDDocument document, Typefaces faces, Paper paper, Drawing drawing) throws IOException {
        PDRectangle sheet = sheet(paper);
        PDPage page = new PDPage(sheet);
        document.addPage(page);
        try (PDPageContentStream stream = new PDPageContentStream(document, page)) {
            drawing.on(new Pen(stream, faces, sheet.getHeight()), sheet);
        }
    }

    private static void twoFaces(PDDocument document, Typefaces faces, CardContent content) throws IOException {
        List<Figure> left = content.figures();
        boolean first = true;
        List<FrontFace.Rest> rest = new ArrayList<>();
        while (first || !left.isEmpty()) {
            List<Figure> figures = left;
            boolean opening = first;
            rest.clear();
            page(
                    document,
                    faces,
                    content.paper(),
                    (pen, sheet) -> rest.add(FrontFace.draw(
                            pen, new Face(0, 0, sheet.getWidth(), sheet.getHeight()), content, figures, opening)));
            if (rest.get(0).figures().size() == left.size() && !left.isEmpty()) {
                throw new IOException("a figure does not fit the page");
            }
            left = rest.get(0).figures();
            first = false;
        }
        back(document, faces, content, rest.get(0).warnings());
    }

    private static void oneSheet(PDDocument document, Typefaces faces, CardContent content) throws IOException {
        List<FrontFace.Rest> left = new ArrayList<>();
        List<String> warnings = new ArrayList<>();
        page(document, faces, content.paper(), (pen, sheet) -> {
            double half = sheet.getHeight() / 2;
            left.add(FrontFace.draw(pen, new Face(0, 0, sheet.getWidth(), half), content, content.figures(), true));
            warnings.addAll(new BackFace(pen, new Face(0, half, sheet.getWidth(), half), content)
                    .draw(left.get(0).warnings()));
        });
        if (!left.get(0).figures().isEmpty()) {
            page(document, faces, content.paper(), (pen, sheet) -> {
                Face face = new Face(0, 0, sheet.getWidth(), sheet.getHeight());
                List<String> rest = FrontFace.draw(
                                pen, face, content, left.get(0).figures(), false)
                        .warnings();
                // the warnings were drawn on the first page as far as they fitted
                warnings.retainAll(rest);
            });
        }
        more(document, faces, content, warnings);
    }

    private static void finding(PDDocument document, Typefaces faces, CardContent content) throws IOException {
        back(document, faces, content, content.warnings());
    }

    private static void back(PDDocument document, Typefaces faces, CardContent content, List<String> warnings)
            throws IOException {
        List<String> left = new ArrayList<>();
        page(
                document,
                faces,
                content.paper(),
                (pen, sheet) ->
                        left.addAll(new BackFace(pen, new Face(0, 0, sheet.getWidth(), sheet.getHeight()), content)
                                .draw(warnings)));
        more(document, faces, content, left);
    }

    /** Warnings that found no room go on a page of their own, never lost. */
    private static void more(PDDocument document, Typefaces faces, CardContent content, List<String> warnings)
            throws IOException {
        List<String> left = warnings;
        while (!left.isEmpty()) {
            List<String> now = left;
            int[] drawn = new int[1];
            page(document, faces, content.paper(), (pen, sheet) -> {
                Face face = new Face(0, 0, sheet.getWidth(), sheet.getHeight());
                double y = face.top();
                for (String warning : now) {
                    double height = pen.paragraphHeight(Typefaces.Weight.BOLD, 11, face.innerWidth(), warning);
                    if (y + height > face.bottom() && drawn[0] > 0) {
                        break;
                    }
                    y = pen.paragraph(Typefaces.Weight.BOLD, 11, Pen.INK, face.left(), y, face.innerWidth(), warning)
                            + 4;
                    drawn[0]++;
                }
            });
            left = left.subList(drawn[0], left.size());
        }
    }
}
