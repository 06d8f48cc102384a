package org.evenfall.wizard.picture;

import java.util.List;
import org.evenfall.finding.Arg;
import org.evenfall.finding.Sentences;
import org.evenfall.quantity.Unit;
import org.jspecify.annotations.Nullable;

/** How a container is filled for the bulk density: fill from above, strike level, weigh. */
public final class FillingPicture extends Picture {

    private @Nullable Double volumeL;

    /** Begins without a volume. */
    public FillingPicture(Sentences words) {
        super(words, 0.62);
        show(null);
    }

    /** @param containerL volume of the container; null while it is not typed */
    public void show(@Nullable Double containerL) {
        volumeL = containerL;
        redraw(String.join(" ", fill(), words.text("picture.filling.strike"), words.text("picture.filling.weigh")));
    }

    private String fill() {
        return volumeL == null
                ? words.text("picture.filling.empty")
                : words.text(
                        "picture.filling.fill",
                        Arg.number(volumeL, Math.abs(volumeL - Math.rint(volumeL)) < 1e-6 ? 0 : 2, Unit.L));
    }

    @Override
    void draw(Brush brush, double width, double height) {
        Lettering body = brush.body();
        List<Panels.Panel> panels = List.of(
                new Panels.Panel(fill(), body, (left, top, wide, high) -> pour(brush, left, top, wide, high)),
                new Panels.Panel(
                        words.text("picture.filling.strike"),
                        body,
                        (left, top, wide, high) -> strike(brush, left, top, wide, high)),
                new Panels.Panel(
                        words.text("picture.filling.weigh"),
                        body,
                        (left, top, wide, high) -> weigh(brush, left, top, wide, high)));
        new Panels(brush, panels).draw(width, height);
    }

    /** The stream falls from a scoop, as high above the rim as a hand is wide. */
    private static void pour(Brush brush, double left, double top, double wide, double high) {
        Parts parts = new Parts(brush);
        double room = Math.min(0.5 * wide, 0.62 * high);
        double x = left + 0.45 * wide - room / 2;
        double rim = top + 0.5 * high;
        parts.container(x, rim, room, 0.5 * high, 0.7);
        parts.granules(x + 0.42 * room, top + 0.08 * high, 0.16 * room, 0.56 * high, Math.max(1.5, 0.035 * room), 4);
        brush.outline(
                new double[] {x + 0.42 * room, x + 0.42 * room, x - 0.1 * room},
                new double[] {top + 0.1 * high, top, top},
                brush.palette().ink(),
                2);
        new Marks(brush)
                .upright(
                        x + 1.25 * room, top + 0.08 * high, rim, brush.palette().accent());
    }

    private static void strike(Brush brush, double left, double top, double wide, double high) {
        double room = Math.min(0.5 * wide, 0.62 * high);
        double x = left + 0.45 * wide - room / 2;
        double rim = top + 0.5 * high;
        new Parts(brush).container(x, rim, room, 0.5 * high, 1);
        brush.box(
                x - 0.15 * room,
                rim - 0.09 * high,
                1.3 * room,
                0.09 * high,
                brush.palette().soft());
        new Marks(brush)
                .arrow(
                        x,
                        rim - 0.24 * high,
                        x + room,
                        rim - 0.24 * high,
                        brush.palette().accent(),
                        2.5);
    }

    private void weigh(Brush brush, double left, double top, double wide, double high) {
        double em = brush.em();
        double foot = top + high;
        Parts parts = new Parts(brush);
        double room = Math.min(0.5 * wide, 0.62 * high);
        double tall = Math.min(0.5 * high, high - 2 * em);
        parts.container(left + 0.5 * wide - room / 2, foot - 1.9 * em - tall - 1.5, room, tall, 1);
        parts.scales(left + 0.1 * wide, foot, 0.8 * wide, words.text("picture.filling.grams"));
    }
}
