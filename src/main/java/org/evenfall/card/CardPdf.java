package org.evenfall.card;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.time.Instant;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdfwriter.compress.CompressParameters;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.evenfall.card.CardContent.Figure;
import org.evenfall.setup.entry.Paper;

/** The card as tagged PDF/A-2b pages, not yet signed. The same content and time give the same bytes. */
public final class CardPdf {

    private static final DateTimeFormatter TIME =
            DateTimeFormatter.ofPattern("uuuu-MM-dd HH:mm 'UTC'", Locale.ROOT).withZone(ZoneOffset.UTC);

    private static final float MM = 72 / 25.4f;

    /** Less room than this under the front takes no back, points. */
    private static final double LEAST_BACK = 260;

    private final PDDocument document;
    private final CardContent content;
    private final Typefaces faces;
    private final Tags tags;
    private final Instant when;

    private CardPdf(PDDocument document, CardContent content, Instant when) {
        this.when = when;
        this.document = document;
        this.content = content;
        this.faces = new Typefaces(document);
        this.tags = new Tags(document);
    }

    public static byte[] draw(CardContent content, Instant when) throws IOException {
        try (PDDocument document = new PDDocument()) {
            // a name from the content, not from clock and chance
            document.setDocumentId(content.hashCode() * 31L + when.getEpochSecond());
            CardPdf card = new CardPdf(document, content, when);
            card.pages();
            card.tags.close();
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

    /** Draws on one page. */
    private interface Drawing {
        void on(Pen pen, Face face) throws IOException;
    }

    private void page(Drawing drawing) throws IOException {
        PDRectangle sheet = sheet(content.paper());
        PDPage page = new PDPage(sheet);
        page.getCOSObject().setItem(COSName.getPDFName("Tabs"), COSName.S);
        document.addPage(page);
        try (PDPageContentStream stream = new PDPageContentStream(document, page)) {
            drawing.on(new Pen(stream, faces, tags, page), new Face(0, 0, sheet.getWidth(), sheet.getHeight()));
        }
    }

    /** Front and back: two faces of an A5 sheet, one under the other on a larger one; more pages where it takes them. */
    private void pages() throws IOException {
        boolean oneSheet = content.paper() == Paper.A4 || content.paper() == Paper.LETTER;
        if (content.findingOnly()) {
            back(new FrontFoot.Remainder(content.warnings(), true, 0));
            return;
        }
        List<Figure> left = content.figures();
        boolean first = true;
        Flow.Remainder[] more = new Flow.Remainder[1];
        FrontFoot.Remainder[] foot = new FrontFoot.Remainder[1];
        while (first || !left.isEmpty()) {
            List<Figure> figures = left;
            boolean opening = first;
            FrontFace.Remainder[] rest = new FrontFace.Remainder[1];
            page((pen, face) -> {
                rest[0] = FrontFace.draw(pen, face, content, figures, opening);
                if (rest[0].figures().isEmpty()) {
                    foot[0] = FrontFoot.draw(pen, face, content, rest[0].end());
                    boolean room = face.bottom() - foot[0].end() > LEAST_BACK;
                    more[0] = oneSheet && room ? backOn(pen, face, foot[0].end() + 10, foot[0]) : null;
                }
            });
            // a long title may take the first page for itself
            if (!opening && rest[0].figures().size() == left.size()) {
                throw new IOException("a figure does not fit the page");
            }
            left = rest[0].figures();
            first = false;
        }
        if (more[0] == null) {
            back(foot[0]);
        } else {
            overflow(more[0].pieces());
        }
    }

    private void back(FrontFoot.Remainder undrawn) throws IOException {
        Flow.Remainder[] more = new Flow.Remainder[1];
        page((pen, face) -> more[0] = backOn(pen, face, face.top(), undrawn));
        overflow(more[0].pieces());
    }

    private Flow.Remainder backOn(Pen pen, Face face, double top, FrontFoot.Remainder undrawn) throws IOException {
        List<Flow.Piece> pieces = BackFace.pieces(
                pen, content, signature(), undrawn.warnings(), undrawn.stops(), BackFace.columnWidth(face));
        double bottom = BackFace.foot(pen, face, content);
        return Flow.fill(pen, pieces, BackFace.columns(face, top, bottom));
    }

    /** Who signs, and the time that stands in the signature too. */
    private List<String> signature() {
        List<String> lines = new ArrayList<>(content.signature());
        lines.add(content.timeLabel() + " " + TIME.format(when));
        return lines;
    }

    /** What found no room goes on pages of its own, never lost. */
    private void overflow(List<Flow.Piece> pieces) throws IOException {
        List<Flow.Piece> left = pieces;
        while (!left.isEmpty()) {
            List<Flow.Piece> now = left;
            Flow.Remainder[] rest = new Flow.Remainder[1];
            page((pen, face) -> rest[0] = Flow.fill(pen, now, BackFace.columns(face, face.top(), face.bottom())));
            if (rest[0].pieces().size() == left.size()) {
                throw new IOException("a piece does not fit the page");
            }
            left = rest[0].pieces();
        }
    }
}
