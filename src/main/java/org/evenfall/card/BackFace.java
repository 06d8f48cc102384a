package org.evenfall.card;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.pdmodel.documentinterchange.taggedpdf.StandardStructureTypes;
import org.evenfall.page.Colours;
import org.evenfall.page.Face;
import org.evenfall.page.Flow;
import org.evenfall.page.Pen;
import org.evenfall.page.Pieces;
import org.evenfall.page.TextStyle;
import org.jspecify.annotations.Nullable;

/**
 * The face with the proof, the stop list, the cautions, the day and the signature. The proof is as large as the front; the
 * rest is read before the work and may be smaller.
 */
final class BackFace {

    private static final double GAP = 14;

    /** Height of a box for the pen, points. */
    private static final double PEN_BOX = 30;

    /** Space at both ends of a label in a box, points. */
    private static final double PEN_INDENT = 4;

    /** Shares of the room that the box for the signature has. */
    private static final int SIGNATURE_SHARES = 3;

    private BackFace() {}

    /**
     * All pieces in reading order, for the columns of this face. Where it has one column, the QR code is next to the lines of
     * the proof and of who signs, so that a card keeps to two pages.
     *
     * @param fromFront what found no room on the front
     * @param small size of the text
     */
    static List<Flow.Piece> pieces(
            Pen pen, CardContent content, FrontFoot.Undrawn fromFront, Face face, SmallText small) throws IOException {
        double width = columnWidth(face);
        List<String> signature = content.signature().stream()
                .filter(line -> !LongTexts.isLong(line))
                .toList();
        boolean codeByProof = face.columns() == 1 && !content.proof().lines().isEmpty();
        List<Flow.Piece> pieces = new ArrayList<>();
        if (content.sheet().findingOnly()) {
            finding(pen, content, fromFront.warnings(), width, small, pieces);
        } else {
            proof(pen, content, codeByProof ? signature : null, width, small, pieces);
            pieces.addAll(warnings(pen, fromFront.warnings(), width, small));
        }
        if (fromFront.stops()) {
            section(pen, content.stops(), width, small, pieces);
        }
        section(pen, content.cautions(), width, small, pieces);
        section(pen, small.day(content.day()), width, small, pieces);
        for (String line : content.signature()) {
            if (LongTexts.isLong(line)) {
                pieces.addAll(Pieces.paragraph(pen, small.body(), line, width));
            }
        }
        if (!codeByProof) {
            pieces.add(codePiece(pen, lines(small.body(), signature), content.code()));
        }
        return pieces;
    }

    private static List<CodePiece.Line> lines(TextStyle style, List<String> texts) {
        return texts.stream().map(text -> new CodePiece.Line(style, text)).toList();
    }

    private static void finding(
            Pen pen, CardContent content, List<String> warnings, double width, SmallText small, List<Flow.Piece> pieces)
            throws IOException {
        pieces.addAll(Pieces.title(pen, content.heading().title(), width));
        for (String line : content.heading().lines()) {
            pieces.addAll(Pieces.paragraph(pen, small.body(), line, width));
        }
        pieces.addAll(warnings(pen, warnings, width, small));
    }

    private static List<Flow.Piece> warnings(Pen pen, List<String> warnings, double width, SmallText small)
            throws IOException {
        return Pieces.list(pen, small.strong(), Pieces.Bullet.TRIANGLE, warnings, false, width);
    }

    /** @param withCode who signs, where that and the code are next to the proof; else null */
    private static void proof(
            Pen pen,
            CardContent content,
            @Nullable List<String> withCode,
            double width,
            SmallText small,
            List<Flow.Piece> pieces)
            throws IOException {
        CardContent.Proof proof = content.proof();
        pieces.addAll(Pieces.heading(pen, small.heading(), proof.title(), width));
        if (!proof.bars().isEmpty()) {
            pieces.add(TrayBars.of(proof.bars(), pen.tags().figure(proof.barsInWords())));
        }
        if (withCode != null) {
            List<CodePiece.Line> lines = new ArrayList<>(lines(small.strong(), proof.lines()));
            lines.add(new CodePiece.Line(small.body(), String.join(" · ", withCode)));
            pieces.add(codePiece(pen, lines, content.code()));
            return;
        }
        for (String line : proof.lines()) {
            pieces.addAll(Pieces.paragraph(pen, small.strong(), line, width));
        }
    }

    private static Flow.Piece codePiece(Pen pen, List<CodePiece.Line> lines, CardContent.Code code) {
        return new CodePiece(
                lines,
                code.text(),
                pen.tags().element(StandardStructureTypes.P),
                code.text().isEmpty()
                        ? pen.tags().element(StandardStructureTypes.P)
                        : pen.tags().figure(code.inWords()));
    }

    private static void section(
            Pen pen, CardContent.Section section, double width, SmallText small, List<Flow.Piece> pieces)
            throws IOException {
        if (!section.lines().isEmpty()) {
            pieces.addAll(Pieces.heading(pen, small.heading(), section.title(), width));
            pieces.addAll(Pieces.list(pen, small.body(), Pieces.Bullet.SQUARE, section.lines(), false, width));
        }
    }

    /** One column on a tall face, two on a wide one. */
    static List<Flow.Column> columns(Face face, double top, double bottom) {
        double width = columnWidth(face);
        Flow.Column first = new Flow.Column(face.left(), top, width, bottom);
        return face.columns() == 1
                ? List.of(first)
                : List.of(first, new Flow.Column(face.left() + width + GAP, top, width, bottom));
    }

    private static double columnWidth(Face face) {
        return face.columns() == 1 ? face.innerWidth() : (face.innerWidth() - GAP) / 2;
    }

    /**
     * Draws the boxes for the pen, if any, and the last line, side by side on a wide face; gives their upper edge.
     */
    static double foot(Pen pen, Face face, CardContent content, SmallText small) throws IOException {
        CardContent.Foot foot = content.foot();
        boolean boxes = !foot.penLabels().isEmpty();
        boolean sideBySide = boxes && face.columns() == 2;
        double width = sideBySide ? columnWidth(face) : face.innerWidth();
        double lines = face.bottom() - pen.paragraphHeight(small.body(), width, foot.line());
        double top = sideBySide ? face.bottom() : lines - 2;
        if (boxes) {
            top -= PEN_BOX;
            boxes(pen, foot.penLabels(), small.body(), face.right() - width, top, width);
        }
        pen.marked(StandardStructureTypes.P, small.body(), face.left(), lines, width, foot.line());
        return Math.min(top, lines) - 4;
    }

    /** A box for each label, as wide as it and a share of the rest; the last, for the signature, has three shares. */
    private static void boxes(Pen pen, List<String> labels, TextStyle style, double left, double top, double width)
            throws IOException {
        double rest = width;
        for (String label : labels) {
            rest -= pen.width(style, label) + 2 * PEN_INDENT;
        }
        double share = Math.max(0, rest / (labels.size() - 1 + SIGNATURE_SHARES));
        double x = left;
        for (int i = 0; i < labels.size(); i++) {
            String label = labels.get(i);
            double at = x;
            double room =
                    pen.width(style, label) + 2 * PEN_INDENT + share * (i == labels.size() - 1 ? SIGNATURE_SHARES : 1);
            pen.box(x, top, room, PEN_BOX, 0.8, Colours.INK);
            pen.mark(
                    pen.tags().element(StandardStructureTypes.P),
                    () -> pen.text(style, at + PEN_INDENT, top + style.size(), label));
            x += room;
        }
    }
}
