package org.evenfall.sheet;

import java.awt.Color;
import java.io.IOException;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureElement;
import org.apache.pdfbox.pdmodel.documentinterchange.taggedpdf.StandardStructureTypes;
import org.evenfall.page.Flow;
import org.evenfall.page.Pen;
import org.evenfall.sheet.SheetContent.Box;
import org.evenfall.sheet.SheetContent.Plan;

/**
 * Trays in their row, the passes with their directions, and a box for the arrow of the wind.
 *
 * @param plan what is drawn
 * @param drawn is given the box of the wind
 */
record PlanPiece(Plan plan, PlacedBox.Drawn drawn) implements Flow.Piece {

    private static final double ARROW = 24 * SheetStyle.MM;
    private static final double HEAD = 2.2 * SheetStyle.MM;
    private static final double TRAY = 3.6 * SheetStyle.MM;
    private static final double WIND = 22 * SheetStyle.MM;

    /** Room at both sides of the outer passes for what is written under them. */
    private static final double SIDE = 8 * SheetStyle.MM;

    private static double windWidth(Pen pen, String label) throws IOException {
        return Math.max(WIND, pen.width(SheetStyle.LABEL, label) + 1);
    }

    @Override
    public double height(Pen pen, double width) {
        return ARROW + 2 * SheetStyle.SMALL_GAP + SheetStyle.LABEL.lineHeight();
    }

    @Override
    public double gap() {
        return SheetStyle.SMALL_GAP;
    }

    @Override
    public void draw(Pen pen, double x, double top, double width) throws IOException {
        double wind = windWidth(pen, plan.windLabel());
        double first = plan.passesM().get(0);
        double last = plan.passesM().get(plan.passesM().size() - 1);
        double scale = (width - wind - SheetStyle.GAP - 2 * SIDE) / (last - first);
        double zero = x + SIDE - first * scale;
        PDStructureElement figure =
                pen.tags().figure(String.join(" ", plan.heading().notes()));
        pen.mark(figure, () -> {
            for (int i = 0; i < plan.passesM().size(); i++) {
                arrow(
                        pen,
                        zero + plan.passesM().get(i) * scale,
                        top,
                        plan.forward().get(i));
            }
            for (double place : plan.traysM()) {
                tray(pen, zero + place * scale, top + ARROW / 2);
            }
        });
        for (int i = 0; i < plan.traysM().size(); i++) {
            number(pen, Integer.toString(i + 1), zero + plan.traysM().get(i) * scale, top + (ARROW + TRAY) / 2);
        }
        for (int i = 0; i < plan.passesM().size(); i++) {
            centred(pen, plan.passLabels().get(i), zero + plan.passesM().get(i) * scale, top + ARROW);
        }
        windBox(pen, x + width - wind, top, wind);
    }

    private static void arrow(Pen pen, double x, double top, boolean up) throws IOException {
        double tip = up ? top : top + ARROW;
        double back = up ? tip + 1.6 * HEAD : tip - 1.6 * HEAD;
        pen.line(x, top, x, top + ARROW, 1.4, SheetStyle.BLACK);
        pen.line(x - HEAD / 1.5, back, x, tip, 1.8, SheetStyle.BLACK);
        pen.line(x + HEAD / 1.5, back, x, tip, 1.8, SheetStyle.BLACK);
    }

    private static void tray(Pen pen, double x, double y) throws IOException {
        pen.fill(x - TRAY / 2, y - TRAY / 2, TRAY, TRAY, Color.WHITE);
        pen.box(x - TRAY / 2, y - TRAY / 2, TRAY, TRAY, SheetStyle.FRAME, SheetStyle.BLACK);
    }

    /** The number of a tray; nothing shows through it. */
    private static void number(Pen pen, String text, double x, double top) throws IOException {
        double width = pen.width(SheetStyle.LABEL, text) + 2;
        pen.fill(x - width / 2, top + 1, width, SheetStyle.LABEL.lineHeight(), Color.WHITE);
        centred(pen, text, x, top);
    }

    private static void centred(Pen pen, String text, double x, double top) throws IOException {
        double width = pen.width(SheetStyle.LABEL, text) + 1;
        pen.marked(StandardStructureTypes.P, SheetStyle.LABEL, x - width / 2, top + 1, width, text);
    }

    private void windBox(Pen pen, double x, double top, double width) throws IOException {
        double under = pen.marked(StandardStructureTypes.P, SheetStyle.LABEL, x, top, width, plan.windLabel());
        double boxTop = under + SheetStyle.SMALL_GAP;
        double height = top + height(pen, width) - boxTop;
        pen.box(x, boxTop, WIND, height, SheetStyle.FRAME, SheetStyle.BLACK);
        Box box = new Box(plan.heading().promptId(), plan.windLabel(), "", false, "", "", false);
        drawn.at(box, x, boxTop, WIND, height);
    }
}
