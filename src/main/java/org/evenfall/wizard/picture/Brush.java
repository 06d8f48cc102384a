package org.evenfall.wizard.picture;

import java.util.ArrayList;
import java.util.List;
import javafx.geometry.VPos;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.paint.Color;
import javafx.scene.shape.StrokeLineCap;
import javafx.scene.text.Font;
import javafx.scene.text.FontWeight;
import javafx.scene.text.Text;
import javafx.scene.text.TextAlignment;

/** Lines, words and marks on one picture. All measures that have to do with words are in em, the picture's text size. */
class Brush {

    /** Usual size of a note, in the picture's own text size. */
    static final double NOTE_EM = 0.87;

    private final GraphicsContext canvas;
    private final Palette palette;
    private final Font base;
    private final double noteEm;
    private final Text ruler = new Text();

    /** @param noteEm size of the smallest text, in the picture's own text size */
    Brush(GraphicsContext canvas, Palette palette, Font base, double noteEm) {
        this.canvas = canvas;
        this.palette = palette;
        this.base = base;
        this.noteEm = noteEm;
        canvas.setTextBaseline(VPos.CENTER);
        canvas.setLineCap(StrokeLineCap.BUTT);
    }

    Palette palette() {
        return palette;
    }

    /** Pixels of one em. */
    double em() {
        return base.getSize();
    }

    Lettering note() {
        return new Lettering(noteEm, false, palette.soft());
    }

    Lettering body() {
        return new Lettering(1, false, palette.ink());
    }

    Lettering lead() {
        return new Lettering(1.2, true, palette.ink());
    }

    double width(String text, Lettering lettering) {
        ruler.setFont(font(lettering));
        ruler.setText(text);
        return ruler.getLayoutBounds().getWidth();
    }

    /** One line, its middle at y. */
    void text(String text, double x, double y, Lettering lettering, TextAlignment align) {
        canvas.setFont(font(lettering));
        canvas.setTextAlign(align);
        canvas.setFill(lettering.colour());
        canvas.fillText(text, x, y);
    }

    /** One line that stays between left and right, cut with an ellipsis where it is too long. */
    void within(String text, double x, double y, Lettering lettering, TextAlignment align, double left, double right) {
        String fitting = fitted(text, right - left, lettering);
        double half = width(fitting, lettering);
        double start = switch (align) {
            case RIGHT -> x - half;
            case CENTER -> x - half / 2;
            default -> x;
        };
        text(fitting, Math.max(left, Math.min(right - half, start)), y, lettering, TextAlignment.LEFT);
    }

    /** The same on a strip of paper, so that lines beneath do not strike it through. */
    void onPaper(String text, double x, double y, Lettering lettering, TextAlignment align, double left, double right) {
        String fitting = fitted(text, right - left, lettering);
        double wide = width(fitting, lettering);
        double start = switch (align) {
            case RIGHT -> x - wide;
            case CENTER -> x - wide / 2;
            default -> x;
        };
        start = Math.max(left, Math.min(right - wide, start));
        double high = lettering.lineEm() * em();
        box(start - 0.15 * em(), y - high / 2, wide + 0.3 * em(), high, Palette.faint(palette.paper(), 0.88));
        text(fitting, start, y, lettering, TextAlignment.LEFT);
    }

    /** The text, or as much of it as fits with an ellipsis. */
    String fitted(String text, double wide, Lettering lettering) {
        if (width(text, lettering) <= wide) {
            return text;
        }
        int keep = text.length();
        while (keep > 0 && width(text.substring(0, keep).stripTrailing() + "…", lettering) > wide) {
            keep--;
        }
        return keep == 0 ? "" : text.substring(0, keep).stripTrailing() + "…";
    }

    List<String> wrapped(String text, double wide, Lettering lettering) {
        List<String> lines = new ArrayList<>();
        StringBuilder line = new StringBuilder();
        for (String word : text.split(" ", -1)) {
            String longer = line.isEmpty() ? word : line + " " + word;
            if (!line.isEmpty() && width(longer, lettering) > wide) {
                lines.add(line.toString());
                line = new StringBuilder(word);
            } else {
                line = new StringBuilder(longer);
            }
        }
        lines.add(line.toString());
        return lines.stream().map(one -> fitted(one, wide, lettering)).toList();
    }

    /** The same in at most so many lines, the last one cut with an ellipsis where there is more. */
    List<String> wrapped(String text, double wide, Lettering lettering, int most) {
        List<String> lines = wrapped(text, wide, lettering);
        if (lines.size() <= most) {
            return lines;
        }
        List<String> shown = new ArrayList<>(lines.subList(0, most - 1));
        shown.add(fitted(String.join(" ", lines.subList(most - 1, lines.size())), wide, lettering));
        return shown;
    }

    /** Several lines from the top down; gives the y under them. */
    double paragraph(String text, double x, double top, double wide, Lettering lettering, TextAlignment align) {
        double high = lettering.lineEm() * em();
        double y = top;
        for (String line : wrapped(text, wide, lettering)) {
            text(line, x, y + high / 2, lettering, align);
            y += high;
        }
        return y;
    }

    /** Several lines about x, each kept between left and right; gives the y under them. */
    double paragraphWithin(String text, double x, double top, Lettering lettering, double left, double right) {
        double high = lettering.lineEm() * em();
        double y = top;
        for (String line : wrapped(text, right - left, lettering)) {
            within(line, x, y + high / 2, lettering, TextAlignment.CENTER, left, right);
            y += high;
        }
        return y;
    }

    void line(double x1, double y1, double x2, double y2, Color colour, double wide) {
        canvas.setStroke(colour);
        canvas.setLineWidth(scaled(wide));
        canvas.setLineDashes();
        canvas.strokeLine(x1, y1, x2, y2);
    }

    void dashed(double x1, double y1, double x2, double y2, Color colour, double wide) {
        canvas.setStroke(colour);
        canvas.setLineWidth(scaled(wide));
        canvas.setLineDashes(0.4 * em(), 0.3 * em());
        canvas.strokeLine(x1, y1, x2, y2);
        canvas.setLineDashes();
    }

    void box(double x, double y, double wide, double high, Color fill) {
        canvas.setFill(fill);
        canvas.fillRect(x, y, wide, high);
    }

    void frame(double x, double y, double wide, double high, Color colour, double thick) {
        canvas.setStroke(colour);
        canvas.setLineWidth(scaled(thick));
        canvas.setLineDashes();
        canvas.strokeRect(x, y, wide, high);
    }

    void polyline(double[] x, double[] y, Color colour, double wide, boolean dashes) {
        canvas.setStroke(colour);
        canvas.setLineWidth(scaled(wide));
        if (dashes) {
            canvas.setLineDashes(0.4 * em(), 0.3 * em());
        } else {
            canvas.setLineDashes();
        }
        canvas.strokePolyline(x, y, x.length);
        canvas.setLineDashes();
    }

    void shape(double[] x, double[] y, Color fill) {
        canvas.setFill(fill);
        canvas.fillPolygon(x, y, x.length);
    }

    void outline(double[] x, double[] y, Color colour, double wide) {
        canvas.setStroke(colour);
        canvas.setLineWidth(scaled(wide));
        canvas.setLineDashes();
        canvas.strokePolygon(x, y, x.length);
    }

    void oval(double x, double y, double radiusX, double radiusY, Color fill) {
        canvas.setFill(fill);
        canvas.fillOval(x - radiusX, y - radiusY, 2 * radiusX, 2 * radiusY);
    }

    void ring(double x, double y, double radiusX, double radiusY, Color colour, double wide) {
        canvas.setStroke(colour);
        canvas.setLineWidth(scaled(wide));
        canvas.setLineDashes();
        canvas.strokeOval(x - radiusX, y - radiusY, 2 * radiusX, 2 * radiusY);
    }

    /** Everything drawn inside is moved to the right by so many pixels. */
    void shifted(double right, Runnable drawing) {
        canvas.save();
        canvas.translate(right, 0);
        drawing.run();
        canvas.restore();
    }

    /** Lines grow with the text, for a hall. */
    private double scaled(double thick) {
        return thick * Math.max(1, em() / 15);
    }

    private Font font(Lettering lettering) {
        double size = lettering.em() * base.getSize();
        return lettering.bold()
                ? Font.font(base.getFamily(), FontWeight.BOLD, size)
                : Font.font(base.getFamily(), size);
    }
}
