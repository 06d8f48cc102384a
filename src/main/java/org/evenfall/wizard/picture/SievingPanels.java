package org.evenfall.wizard.picture;

import java.util.List;
import org.evenfall.finding.Sentences;

/** How to sieve: shake the stack, weigh each class. */
record SievingPanels(Sentences words) {

    private static final int SIEVES = 3;

    void draw(Brush brush, double width, double full) {
        double height = new Caption(words.text("picture.sieve.empty")).draw(brush, width, full);
        new Panels(
                        brush,
                        List.of(
                                new Panels.Panel(
                                        words.text("picture.sieve.shake"),
                                        brush.body(),
                                        (left, top, wide, high) -> shake(brush, left, top, wide, high)),
                                new Panels.Panel(
                                        words.text("picture.sieve.weigh"),
                                        brush.body(),
                                        (left, top, wide, high) -> weigh(brush, left, top, wide, high))))
                .draw(width, height);
    }

    /** Three sieves on a pan, the coarsest on top, and which way they are moved. */
    private static void shake(Brush brush, double left, double top, double wide, double high) {
        double room = Math.min(0.62 * wide, 0.9 * high);
        double x = left + (wide - room) / 2;
        double each = 0.78 * high / (SIEVES + 1);
        for (int i = 0; i <= SIEVES; i++) {
            double y = top + 0.22 * high + i * each;
            brush.frame(x, y, room, each, brush.palette().ink(), 1.5);
            double radius = each * (0.17 - 0.04 * i);
            new Parts(brush).granules(x + 3, y + each * 0.3, room - 6, each * 0.4, radius, i);
            if (i < SIEVES) {
                brush.dashed(
                        x + 2,
                        y + 0.78 * each,
                        x + room - 2,
                        y + 0.78 * each,
                        brush.palette().soft(),
                        1.5);
            }
        }
        Marks marks = new Marks(brush);
        double middle = x + room / 2;
        double y = top + 0.09 * high;
        marks.arrow(middle - 2, y, x, y, brush.palette().accent(), 2);
        marks.arrow(middle + 2, y, x + room, y, brush.palette().accent(), 2);
    }

    private void weigh(Brush brush, double left, double top, double wide, double high) {
        double em = brush.em();
        double foot = top + high;
        double tall = Math.min(0.34 * high, high - 2.2 * em);
        Parts parts = new Parts(brush);
        parts.container(left + 0.32 * wide, foot - 2 * em - tall, 0.36 * wide, tall, 0.7);
        parts.scales(left + 0.1 * wide, foot, 0.8 * wide, words.text("picture.filling.grams"));
    }
}
