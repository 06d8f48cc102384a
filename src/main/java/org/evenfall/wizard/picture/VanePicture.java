package org.evenfall.wizard.picture;

import java.util.List;
import javafx.scene.paint.Color;
import javafx.scene.text.TextAlignment;
import org.evenfall.finding.Arg;
import org.evenfall.finding.Sentences;
import org.evenfall.machine.Side;
import org.evenfall.quantity.Unit;
import org.jspecify.annotations.Nullable;

/** Each vane along a ruler from its root to its tip: its length now in full, its length when new as an outline. */
public final class VanePicture extends Picture {

    private static final double ROW_EM = 4;

    /** Length drawn while none is measured, m. Assumption: a usual size. */
    private static final double USUAL_LENGTH_M = 0.3;

    private List<Vane> vanes = List.of();

    /** Begins with nothing to show. */
    public VanePicture(Sentences words) {
        super(words, 0.95);
        show(List.of());
    }

    /**
     * One vane.
     *
     * @param side which disc
     * @param label name of the vane
     * @param lengthM length now, m; null while not measured
     * @param newM length when new, m; null where not known
     * @param failed to be put right
     */
    public record Vane(
            Side side,
            String label,
            @Nullable Double lengthM,
            @Nullable Double newM,
            boolean failed) {}

    /** Draws these vanes. */
    public void show(List<Vane> all) {
        vanes = all.stream()
                .filter(vane -> vane.lengthM() != null || vane.newM() != null)
                .toList();
        redraw(
                vanes.isEmpty()
                        ? words.text("picture.vane.empty")
                        : String.join(
                                ". ",
                                vanes.stream()
                                        .map(vane -> name(vane) + " " + figures(vane))
                                        .toList()));
    }

    private String name(Vane vane) {
        return words.text(
                "picture.vane.name",
                Arg.text(words.choice(vane.side())),
                Arg.text(vane.label().strip()));
    }

    private String figures(Vane vane) {
        Double now = vane.lengthM();
        Double fresh = vane.newM();
        if (fresh == null) {
            return now == null ? "" : words.word(mm(now));
        }
        return now == null
                ? words.text("picture.vane.onlyNew", mm(fresh))
                : words.text("picture.vane.both", mm(now), mm(fresh));
    }

    private static Arg mm(double metres) {
        return Arg.number(1000 * metres, 0, Unit.MM);
    }

    @Override
    void draw(Brush brush, double width, double full) {
        double em = brush.em();
        String sentence = words.text(vanes.isEmpty() ? "picture.vane.empty" : "picture.vane.gloves");
        double height = new Caption(sentence).draw(brush, width, full);
        double longest = vanes.stream().mapToDouble(VanePicture::longest).max().orElse(USUAL_LENGTH_M);
        Scale across = new Scale(0, 1060 * longest, 1.2 * em, width - 1.2 * em);
        double axis = 4.7 * em;
        int most = (int) Math.max(1, (height - axis) / (ROW_EM * em));
        List<Vane> shown = vanes.isEmpty()
                ? List.of(new Vane(Side.LEFT, "", USUAL_LENGTH_M, null, false))
                : vanes.subList(0, Math.min(most, vanes.size()));
        double row = Math.min(6 * em, (height - axis) / shown.size());
        double top = Math.max(0, (height - axis - shown.size() * row) / 2);
        brush.text(
                words.text("picture.vane.root"),
                across.start() - 0.6 * em,
                top + 0.8 * em,
                brush.body(),
                TextAlignment.LEFT);
        brush.text(
                words.text("picture.vane.tip"),
                across.at(1000 * longest),
                top + 0.8 * em,
                brush.body(),
                TextAlignment.RIGHT);
        for (int i = 0; i < shown.size(); i++) {
            vane(brush, shown.get(i), across, top + 1.8 * em + i * row, row);
        }
        new Marks(brush)
                .axis(across, top + 1.8 * em + shown.size() * row + 0.2 * em, words.text("picture.vane.axis"), words);
    }

    private static double longest(Vane vane) {
        return Math.max(vane.lengthM() == null ? 0 : vane.lengthM(), vane.newM() == null ? 0 : vane.newM());
    }

    private void vane(Brush brush, Vane vane, Scale across, double top, double row) {
        double em = brush.em();
        Palette palette = brush.palette();
        Color colour = vane.failed() ? palette.stop() : palette.ink();
        double thick = Math.min(1.5 * em, 0.36 * row);
        double y = top + 1.5 * em;
        if (!vanes.isEmpty()) {
            double start = across.start() + (vane.failed() ? em : 0);
            if (vane.failed()) {
                new Marks(brush).square(across.start() + 0.3 * em, top + 0.75 * em, 0.38 * em, colour);
            }
            String figures = figures(vane);
            double room = across.end() - 0.6 * em - brush.width(figures, brush.body());
            brush.within(name(vane), start, top + 0.75 * em, brush.body().in(colour), TextAlignment.LEFT, start, room);
            brush.text(figures, across.end(), top + 0.75 * em, brush.body().in(colour), TextAlignment.RIGHT);
        }
        if (vane.lengthM() != null) {
            double tip = across.at(1000 * vane.lengthM());
            brush.box(across.start(), y, tip - across.start(), thick, Palette.faint(colour, 0.3));
            brush.frame(across.start(), y, tip - across.start(), thick, colour, 1.5);
        }
        if (vane.newM() != null) {
            double tip = across.at(1000 * vane.newM());
            brush.dashed(across.start(), y, tip, y, palette.accent(), 1.5);
            brush.dashed(across.start(), y + thick, tip, y + thick, palette.accent(), 1.5);
            brush.dashed(tip, y, tip, y + thick, palette.accent(), 2);
        }
    }
}
