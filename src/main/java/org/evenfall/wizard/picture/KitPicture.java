package org.evenfall.wizard.picture;

import java.util.List;
import javafx.scene.paint.Color;
import org.evenfall.finding.Arg;
import org.evenfall.finding.Sentences;
import org.jspecify.annotations.Nullable;

/** What to bring to the yard and to the field, each thing drawn and named. */
public final class KitPicture extends Picture {

    /** Width of a column, em. */
    private static final double COLUMN_EM = 8.5;

    private static final int MOST_COLUMNS = 4;

    /** Height of a row that is no longer crowded, em. */
    private static final double ROW_EM = 5;

    private @Nullable Integer trays;

    /** Begins without a number of trays. */
    public KitPicture(Sentences words) {
        super(words, 1.1);
        show(null);
    }

    /** @param count trays that are needed; null while that is not known */
    public void show(@Nullable Integer count) {
        trays = count;
        redraw(words.text("picture.kit.spoken", Arg.text(trayWords())));
    }

    private String trayWords() {
        return trays == null ? words.text("picture.kit.empty") : words.text("picture.kit.trays", Arg.count(trays));
    }

    @Override
    void draw(Brush brush, double width, double height) {
        Parts parts = new Parts(brush);
        double em = brush.em();
        Lettering body = brush.body();
        int columns = (int) Math.max(2, Math.min(MOST_COLUMNS, width / (COLUMN_EM * em)));
        List<Panels.Panel> panels = List.of(
                new Panels.Panel(words.text("picture.kit.container"), body, (x, y, w, h) -> {
                    double side = Math.min(0.5 * w, h);
                    parts.container(x + (w - side) / 2, y + 0.1 * h, side, 0.9 * h, 0);
                }),
                new Panels.Panel(
                        words.text("picture.kit.scales"),
                        body,
                        (x, y, w, h) -> parts.scales(x, y + h, w, h, words.text("picture.kit.grams"))),
                new Panels.Panel(words.text("picture.kit.sieves"), body, (x, y, w, h) -> sieves(brush, x, y, w, h)),
                new Panels.Panel(
                        words.text("picture.kit.tape"),
                        body,
                        (x, y, w, h) -> parts.tape(
                                x + w / 2, y + h, y, h / 8, brush.palette().accent())),
                new Panels.Panel(words.text("picture.kit.bucket"), body, (x, y, w, h) -> bucket(brush, x, y, w, h)),
                new Panels.Panel(trayWords(), body, (x, y, w, h) -> tray(brush, x, y, w, h)),
                new Panels.Panel(words.text("picture.kit.pegs"), body, (x, y, w, h) -> pegs(brush, x, y, w, h)),
                new Panels.Panel(words.text("picture.kit.gloves"), body, (x, y, w, h) -> goggles(brush, x, y, w, h)));
        while (columns < MOST_COLUMNS && Math.ceil(1.0 * panels.size() / columns) * ROW_EM * em > height) {
            columns++;
        }
        new Panels(brush, panels).grid(width, height, columns);
    }

    private static void sieves(Brush brush, double x, double y, double wide, double high) {
        double each = high / 4;
        double left = x + 0.2 * wide;
        for (int i = 0; i < 4; i++) {
            double top = y + i * each;
            brush.frame(left, top, 0.6 * wide, each, brush.palette().ink(), 1.5);
            if (i < 3) {
                brush.dashed(
                        left + 2,
                        top + 0.75 * each,
                        left + 0.6 * wide - 2,
                        top + 0.75 * each,
                        brush.palette().soft(),
                        1.5);
            }
        }
    }

    private static void bucket(Brush brush, double x, double y, double wide, double high) {
        double middle = x + wide / 2;
        double half = Math.min(0.34 * wide, 0.5 * high);
        Color ink = brush.palette().ink();
        brush.outline(
                new double[] {middle - half, middle + half, middle + 0.75 * half, middle - 0.75 * half},
                new double[] {y + 0.3 * high, y + 0.3 * high, y + high, y + high},
                ink,
                2);
        brush.polyline(
                new double[] {middle - half, middle - 0.5 * half, middle + 0.5 * half, middle + half},
                new double[] {y + 0.3 * high, y + 0.02 * high, y + 0.02 * high, y + 0.3 * high},
                brush.palette().soft(),
                1.5,
                false);
    }

    /** A tray from above with its dividers against bouncing. */
    private static void tray(Brush brush, double x, double y, double wide, double high) {
        double side = Math.min(0.8 * wide, high);
        double left = x + (wide - side) / 2;
        double top = y + high - side;
        for (int i = 1; i < 4; i++) {
            double at = side * i / 4;
            brush.line(left + at, top, left + at, top + side, brush.palette().soft(), 1);
            brush.line(left, top + at, left + side, top + at, brush.palette().soft(), 1);
        }
        brush.frame(left, top, side, side, brush.palette().ink(), 2);
    }

    private static void pegs(Brush brush, double x, double y, double wide, double high) {
        for (int i = 0; i < 3; i++) {
            double at = x + wide * (0.25 + 0.25 * i);
            brush.line(at, y + 0.08 * high, at, y + high, brush.palette().ink(), 2.5);
            brush.shape(
                    new double[] {at, at + 0.16 * wide, at},
                    new double[] {y + 0.08 * high, y + 0.2 * high, y + 0.32 * high},
                    brush.palette().accent());
        }
    }

    private static void goggles(Brush brush, double x, double y, double wide, double high) {
        double radius = Math.min(0.2 * wide, 0.4 * high);
        double middle = y + high / 2;
        for (int side = -1; side <= 1; side += 2) {
            double at = x + wide / 2 + side * 1.2 * radius;
            brush.oval(at, middle, radius, radius, Palette.faint(brush.palette().accent(), 0.12));
            brush.ring(at, middle, radius, radius, brush.palette().ink(), 2);
            brush.line(
                    at + side * radius,
                    middle,
                    at + side * 1.5 * radius,
                    middle,
                    brush.palette().ink(),
                    2);
        }
        brush.line(
                x + wide / 2 - 0.2 * radius,
                middle,
                x + wide / 2 + 0.2 * radius,
                middle,
                brush.palette().ink(),
                2);
    }
}
