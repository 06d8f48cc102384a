package org.evenfall.wizard.picture;

import java.util.ArrayList;
import java.util.List;
import javafx.scene.text.TextAlignment;
import org.evenfall.finding.Arg;
import org.evenfall.finding.Sentences;
import org.evenfall.quantity.Unit;
import org.jspecify.annotations.Nullable;

/** The machine from behind on level ground: a tape at each side up to the frame, the tyres, the tilt. */
public final class LevelPicture extends Picture {

    /** The frame is drawn so much further out of level than it is, so that it is seen, radians for 1 m. */
    private static final double LEAN_PER_M = 2.5;

    private static final double MOST_LEAN = 0.1;
    private static final double FRAME = 0.645;

    private Measured measured = Measured.NOTHING;

    /** Begins with nothing measured. */
    public LevelPicture(Sentences words) {
        super(words, 0.95);
        show(Measured.NOTHING);
    }

    /**
     * What was measured; null where not.
     *
     * @param leftM height of the frame at the left, m
     * @param rightM at the right, m
     * @param tiltDeg tilt, °; positive: rear higher
     * @param tyreLeftBar tyre pressure at the left, bar
     * @param tyreRightBar at the right, bar
     */
    public record Measured(
            @Nullable Double leftM,
            @Nullable Double rightM,
            @Nullable Double tiltDeg,
            @Nullable Double tyreLeftBar,
            @Nullable Double tyreRightBar) {

        static final Measured NOTHING = new Measured(null, null, null, null, null);
    }

    /** Draws this. */
    public void show(Measured values) {
        measured = values;
        redraw(String.join(". ", spoken()));
    }

    private List<String> spoken() {
        List<String> parts = new ArrayList<>();
        parts.add(words.text("picture.level.left") + " " + height(measured.leftM()));
        parts.add(words.text("picture.level.right") + " " + height(measured.rightM()));
        parts.add(sentence());
        return parts;
    }

    private String height(@Nullable Double metres) {
        return metres == null ? words.text("picture.level.tape") : words.number(100 * metres, 1, Unit.CM);
    }

    private String tyre(@Nullable Double bar) {
        return bar == null ? words.text("picture.level.tyre") : words.number(bar, 2, Unit.BAR);
    }

    private String sentence() {
        Double tilt = measured.tiltDeg();
        if (tilt == null) {
            return words.text("picture.level.empty");
        }
        return Math.abs(tilt) < 0.05
                ? words.text("picture.level.noTilt")
                : words.text(
                        tilt > 0 ? "picture.level.rearHigher" : "picture.level.frontHigher",
                        Arg.number(Math.abs(tilt), 1, Unit.DEG));
    }

    private double lean() {
        if (measured.leftM() == null || measured.rightM() == null) {
            return 0;
        }
        return Math.max(-MOST_LEAN, Math.min(MOST_LEAN, LEAN_PER_M * (measured.leftM() - measured.rightM())));
    }

    @Override
    void draw(Brush brush, double width, double full) {
        double em = brush.em();
        Palette palette = brush.palette();
        double height = new Caption(sentence()).draw(brush, width, full);
        double margin = Math.max(4.2 * em, (width - 24 * em) / 2);
        Scale across = new Scale(-1, 1, margin, width - margin);
        double around = 4 * em;
        double high = Math.min(height - around, 1.1 * across.length(2));
        double ground = (height - around + high) / 2 + em;
        Scale up = new Scale(0, 1, ground, ground - high);
        MachineFromBehind machine = new MachineFromBehind(brush, across, up, lean());
        machine.draw();
        side(brush, machine, up, -1, margin, width);
        side(brush, machine, up, 1, margin, width);
        double y = ground + em;
        brush.text(tyre(measured.tyreLeftBar()), across.at(-0.86), y, brush.body(), TextAlignment.CENTER);
        brush.text(tyre(measured.tyreRightBar()), across.at(0.86), y, brush.body(), TextAlignment.CENTER);
        brush.text(words.text("picture.level.tyres"), width / 2, y, brush.body(), TextAlignment.CENTER);
        brush.within(
                words.text("picture.level.ground"),
                width / 2,
                y + 1.4 * em,
                brush.body().in(palette.soft()),
                TextAlignment.CENTER,
                0.4 * em,
                width - 0.4 * em);
    }

    /** The tape at one side, from the ground to the end of the frame, with its reading at the top. */
    private void side(Brush brush, MachineFromBehind machine, Scale up, int sign, double margin, double width) {
        double em = brush.em();
        Palette palette = brush.palette();
        double end = machine.place(sign * 0.85, FRAME)[1];
        double frame = machine.place(sign * 0.85, FRAME)[0];
        double x = sign < 0 ? margin - 1.2 * em : width - margin + 1.2 * em;
        brush.dashed(frame, end, x, end, palette.accent(), 1.5);
        new Parts(brush).tape(x, up.start(), end, (up.start() - end) / 10, palette.accent());
        Double metres = sign < 0 ? measured.leftM() : measured.rightM();
        String name = words.text(sign < 0 ? "picture.level.left" : "picture.level.right");
        double low = sign < 0 ? 0.2 * em : width / 2;
        double high = sign < 0 ? width / 2 : width - 0.2 * em;
        Lettering bold = brush.body().heavy().in(palette.accent());
        brush.onPaper(name, x, end - 2.3 * em, bold, TextAlignment.CENTER, low, high);
        brush.onPaper(height(metres), x, end - em, bold, TextAlignment.CENTER, low, high);
    }
}
