package org.evenfall.card;

import java.awt.Color;
import java.io.IOException;
import java.util.List;
import org.evenfall.card.Typefaces.Weight;

/** The face with the proof, the stop list, the cautions and the signature. */
final class BackFace {

    private static final double HEAD = 14;
    private static final double BODY = 10.5;
    private static final double BARS = 66;
    private static final double QR = 92;
    private static final double PEN_BOX = 22;

    private final Pen pen;
    private final Face face;
    private final CardContent content;

    BackFace(Pen pen, Face face, CardContent content) {
        this.pen = pen;
        this.face = face;
        this.content = content;
    }

    /** Draws everything and the warnings that found no room before; returns those that did not fit here either. */
    List<String> draw(List<String> warnings) throws IOException {
        double foot = foot();
        boolean wide = face.width() > face.height();
        double gap = 14;
        double column = wide ? (face.innerWidth() - gap) / 2 : face.innerWidth();
        double y = proof(face.left(), face.top(), column);
        y = signature(face.left(), y + 4, column);
        double right = wide ? face.left() + column + gap : face.left();
        double top = wide ? face.top() : y + 6;
        double below = list(content.stopTitle(), content.stops(), right, top, column);
        below = list(content.cautionTitle(), content.cautions(), right, below + 4, column);
        return wide
                ? warnings(
                        warnings, face.left(), Math.max(y, below) + 4, face.innerWidth(), foot, y, below, column, right)
                : warnings(warnings, face.left(), below + 4, column, foot);
    }

    /** On a wide face each column takes warnings as far as it has room, the left one first. */
    private List<String> warnings(
            List<String> warnings,
            double left,
            double under,
            double width,
            double foot,
            double leftBottom,
            double rightBottom,
            double column,
            double right)
            throws IOException {
        List<String> rest = warnings(warnings, left, leftBottom + 4, column, foot);
        if (!rest.isEmpty() && rest.size() < warnings.size()) {
            return warnings(rest, right, rightBottom + 4, column, foot);
        }
        return rest.size() == warnings.size() && under < foot ? warnings(rest, left, under, width, foot) : rest;
    }

    private List<String> warnings(List<String> warnings, double x, double top, double width, double bottom)
            throws IOException {
        return Warnings.draw(pen, warnings, x, top, width, bottom);
    }

    private double proof(double x, double top, double width) throws IOException {
        if (content.findingOnly()) {
            double below = pen.paragraph(Weight.BOLD, 20, Pen.ACCENT, x, top, width, content.title());
            for (String line : content.lines()) {
                below = pen.paragraph(Weight.REGULAR, 12, Pen.INK, x, below, width, line);
            }
            return below + 4;
        }
        double y = pen.paragraph(Weight.BOLD, HEAD, Pen.ACCENT, x, top, width, content.proofTitle());
        if (!content.bars().isEmpty()) {
            bars(x, y + 4, width);
            y += BARS + 8;
        }
        for (String line : content.proof()) {
            y = pen.paragraph(Weight.BOLD, 11.5, Pen.INK, x, y, width, line) + 1;
        }
        return y;
    }

    /** Each tray against the mean, the band of 10 % to either side marked. */
    private void bars(double x, double top, double width) throws IOException {
        double scale = BARS / 150;
        double base = top + BARS;
        double step = width / content.bars().size();
        for (int i = 0; i < content.bars().size(); i++) {
            double height = Math.min(150, content.bars().get(i)) * scale;
            pen.fill(x + i * step + 0.22 * step, base - height, 0.56 * step, height, Pen.ACCENT);
            String percent = Long.toString(Math.round(content.bars().get(i)));
            double middle = x + (i + 0.5) * step - pen.faces().width(Weight.BOLD, 10, percent) / 2;
            pen.text(Weight.BOLD, 10, Color.WHITE, middle, base - 5, percent);
        }
        pen.line(x, base, x + width, base, 0.8, Pen.INK);
        pen.line(x, base - 100 * scale, x + width, base - 100 * scale, 0.9, Pen.INK);
        for (double percent : new double[] {90, 110}) {
            dashed(x, base - percent * scale, width);
        }
    }

    private void dashed(double x, double y, double width) throws IOException {
        for (double at = 0; at < width; at += 6) {
            pen.line(x + at, y, x + Math.min(width, at + 3), y, 0.5, Pen.INK);
        }
    }

    private double signature(double x, double top, double width) throws IOException {
        double room = content.qr().isEmpty() ? width : width - QR - 8;
        double y = top;
        for (String line : content.signature()) {
            y = pen.paragraph(Weight.REGULAR, BODY, Pen.INK, x, y, room, line);
        }
        y += 16;
        pen.line(x, y, x + room, y, 0.6, Pen.INK);
        if (!content.qr().isEmpty()) {
            QrCode.draw(pen, content.qr(), x + width - QR, top + 2, QR);
            y = Math.max(y, top + QR + 4);
        }
        return y;
    }

    private double list(String title, List<String> lines, double x, double top, double width) throws IOException {
        double y = title.isEmpty() ? top : pen.paragraph(Weight.BOLD, HEAD, Pen.ACCENT, x, top, width, title);
        for (String line : lines) {
            pen.fill(x + 1, y + BODY * 0.62, 3, 3, Pen.INK);
            y = pen.paragraph(Weight.REGULAR, BODY, Pen.INK, x + 9, y, width - 9, line);
        }
        return y;
    }

    /** Boxes for the pen and the last line; returns where they begin. */
    private double foot() throws IOException {
        double y = face.bottom();
        double height = pen.paragraphHeight(Weight.REGULAR, 9, face.innerWidth(), content.footer());
        pen.paragraph(Weight.REGULAR, 9, Pen.INK, face.left(), y - height, face.innerWidth(), content.footer());
        y -= height + 3 + PEN_BOX;
        double width = face.innerWidth() / content.penLabels().size();
        for (int i = 0; i < content.penLabels().size(); i++) {
            pen.box(face.left() + i * width, y, width, PEN_BOX, 0.6, Pen.LINE);
            pen.text(
                    Weight.REGULAR,
                    9,
                    Pen.INK,
                    face.left() + i * width + 4,
                    y + 10,
                    content.penLabels().get(i));
        }
        return y - 3;
    }
}
