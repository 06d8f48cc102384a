package org.evenfall.wizard.picture;

import java.util.ArrayList;
import java.util.List;
import javafx.scene.text.TextAlignment;
import org.evenfall.finding.Arg;
import org.evenfall.finding.Sentences;
import org.evenfall.machine.MachineProfile;
import org.evenfall.quantity.Unit;
import org.jspecify.annotations.Nullable;

/** The two discs from above, to scale: the diameter over the vane tips, the PTO shaft and what it turns. */
public final class DiscsPicture extends Picture {

    /** Drawn while the diameter is not known, m. Assumption: a usual size. */
    private static final double USUAL_DIAMETER_M = 0.8;

    /** Least distance of the two centres, m. Assumption. */
    private static final double CENTRES_M = 1;

    private @Nullable MachineProfile machine;

    /** Begins with nothing to show. */
    public DiscsPicture(Sentences words) {
        super(words, 0.95);
        redraw(sentence());
    }

    /** Draws this machine. */
    public void show(MachineProfile profile) {
        machine = profile;
        redraw(diameter() + ". " + sentence());
    }

    private @Nullable Double diameterM() {
        MachineProfile shown = machine;
        return shown == null || shown.discRadiusM() == null ? null : Double.valueOf(2 * shown.discRadiusM());
    }

    private String diameter() {
        Double metres = diameterM();
        return metres == null
                ? words.text("picture.discs.diameter")
                : words.text("picture.discs.across", Arg.number(100 * metres, 0, Unit.CM));
    }

    private String sentence() {
        MachineProfile shown = machine;
        List<String> parts = new ArrayList<>();
        if (shown != null && shown.discSpeedAt540Rpm() != null) {
            parts.add(words.text("picture.discs.speed", Arg.number(shown.discSpeedAt540Rpm(), 0, Unit.RPM)));
        }
        if (shown != null && shown.ptoLowestRpm() != null && shown.ptoHighestRpm() != null) {
            parts.add(words.text(
                    "picture.discs.range",
                    Arg.number(shown.ptoLowestRpm(), 0, Unit.NONE),
                    Arg.number(shown.ptoHighestRpm(), 0, Unit.RPM)));
        }
        return parts.isEmpty() ? words.text("picture.discs.empty") : String.join(" ", parts);
    }

    @Override
    void draw(Brush brush, double width, double full) {
        double em = brush.em();
        Palette palette = brush.palette();
        double height = new Caption(sentence()).draw(brush, width, full);
        Double known = diameterM();
        double diameter = known == null ? USUAL_DIAMETER_M : known;
        double apart = Math.max(CENTRES_M, 1.15 * diameter);
        double around = 8.6 * em;
        double perMetre = Math.min(
                (width - 2 * em) / (apart + Math.max(diameter, CENTRES_M)),
                Math.max(2 * em, height - around) / Math.max(diameter, USUAL_DIAMETER_M));
        double radius = perMetre * diameter / 2;
        double top = Math.max(0, (height - around - 2 * radius) / 2);
        double y = top + 5.2 * em + radius;
        double left = width / 2 - perMetre * apart / 2;
        double right = width / 2 + perMetre * apart / 2;
        brush.box(
                width / 2 - 0.35 * em,
                top + 0.6 * em,
                0.7 * em,
                y - top - 1.2 * em,
                Palette.faint(palette.soft(), 0.5));
        brush.box(left, y - 0.35 * em, right - left, 0.7 * em, Palette.faint(palette.soft(), 0.5));
        double box = Math.min(Math.min(0.9 * em, 0.6 * radius), perMetre * (apart - diameter) / 2);
        brush.box(width / 2 - box, y - box, 2 * box, 2 * box, palette.soft());
        Parts parts = new Parts(brush);
        for (double x : new double[] {left, right}) {
            brush.oval(x, y, radius, radius, palette.paper());
            // across, so that both vane tips are on the measure
            parts.disc(x, y, radius, x == left ? 0 : 0.5);
            brush.ring(x, y, radius, radius, palette.line(), 1);
        }
        brush.within(
                words.text("picture.discs.pto"),
                width / 2 + 0.8 * em,
                top + 1.2 * em,
                brush.body(),
                TextAlignment.LEFT,
                width / 2 + 0.8 * em,
                width - 0.3 * em);
        brush.within(
                words.text("picture.discs.tractor"),
                width / 2 - 0.8 * em,
                top + 1.2 * em,
                brush.body(),
                TextAlignment.RIGHT,
                0.3 * em,
                width / 2 - 0.8 * em);
        measure(brush, left, y, radius, width);
    }

    private void measure(Brush brush, double x, double y, double radius, double width) {
        double em = brush.em();
        Palette palette = brush.palette();
        double line = y + radius + 1.1 * em;
        for (double end : new double[] {x - radius, x + radius}) {
            brush.dashed(end, y, end, line, palette.accent(), 1);
        }
        new Marks(brush).across(x - radius, x + radius, line, palette.accent());
        brush.within(
                diameter(),
                x,
                line + 1.2 * em,
                brush.body().heavy().in(palette.accent()),
                TextAlignment.CENTER,
                0.3 * em,
                width - 0.3 * em);
    }
}
