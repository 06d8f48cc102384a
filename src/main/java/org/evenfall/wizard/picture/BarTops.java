package org.evenfall.wizard.picture;

import java.util.ArrayList;
import java.util.List;
import javafx.geometry.Rectangle2D;
import javafx.scene.text.TextAlignment;

/** Numbers over bars: each only where it covers no other number and no bar. */
final class BarTops {

    private final BarsAcross bars;
    private final List<Rectangle2D> taken = new ArrayList<>();

    /** @param tops all bars, which no number may cover */
    BarTops(BarsAcross bars, List<Top> tops) {
        this.bars = bars;
        for (Top top : tops) {
            double level = bars.up().at(top.value());
            double x = bars.across().at(top.placeM()) - 0.44 * bars.bar();
            taken.add(new Rectangle2D(
                    x, level, 0.88 * bars.bar(), Math.max(0, bars.up().start() - level)));
        }
    }

    /**
     * The end of one bar.
     *
     * @param placeM place of its tray, m
     * @param value its height
     * @param text its number
     */
    record Top(double placeM, double value, String text) {}

    /** Draws the number of this bar unless there is no room for it. */
    void number(Top top, Lettering lettering) {
        Brush brush = bars.brush();
        double em = brush.em();
        double wide = brush.width(top.text(), lettering);
        double x = bars.across().at(top.placeM());
        double level = bars.up().at(top.value());
        double high = 1.05 * lettering.em() * em;
        Rectangle2D room = new Rectangle2D(x - wide / 2 - 0.1 * em, level - high - 0.1 * em, wide + 0.2 * em, high);
        if (taken.stream().noneMatch(room::intersects)) {
            brush.box(
                    room.getMinX(),
                    room.getMinY(),
                    room.getWidth(),
                    room.getHeight(),
                    Palette.faint(brush.palette().paper(), 0.8));
            brush.text(top.text(), x, level - 0.62 * high, lettering, TextAlignment.CENTER);
            taken.add(room);
        }
    }
}
