package org.evenfall.wizard.picture;

import java.util.List;
import javafx.scene.paint.Color;
import javafx.scene.text.TextAlignment;
import org.evenfall.finding.Arg;
import org.evenfall.finding.Sentences;
import org.evenfall.machine.Side;
import org.evenfall.quantity.Unit;
import org.jspecify.annotations.Nullable;

/**
 * The headland from above: where the discs are when the outlets open and when they close, measured from the headland
 * tramline, and on which side the border device is.
 */
public final class SwitchingPicture extends Picture {

    /** Drawn depth into the field where nothing is typed, m. */
    private static final double SKETCH_M = 12;

    /** Least height between field edge and headland tramline, em. */
    private static final double HEADLAND_EM = 5;

    private @Nullable Double onM;
    private @Nullable Double offM;
    private @Nullable Double widthM;
    private Side side = Side.UNANSWERED;

    /** Begins with nothing to show. */
    public SwitchingPicture(Sentences words) {
        super(words, 1.05);
        show(null, null, null, Side.UNANSWERED);
    }

    /**
     * Draws this.
     *
     * @param switchOnM discs from the headland tramline when the outlets open, m, plus into the field; null: not typed
     * @param switchOffM the same when they close
     * @param tramlineWidthM null while not known
     * @param borderSide side of the border device, as driven
     */
    public void show(
            @Nullable Double switchOnM, @Nullable Double switchOffM, @Nullable Double tramlineWidthM, Side borderSide) {
        onM = switchOnM;
        offM = switchOffM;
        widthM = tramlineWidthM;
        side = borderSide;
        redraw(String.join(". ", text(true), text(false), device()) + ". " + caption());
    }

    private String caption() {
        return words.text(onM == null && offM == null ? "picture.switching.empty" : "picture.switching.note");
    }

    private String device() {
        return words.text(
                switch (side) {
                    case UNANSWERED -> "picture.switching.deviceOpen";
                    case LEFT -> "picture.switching.deviceLeft";
                    case RIGHT -> "picture.switching.deviceRight";
                });
    }

    private String text(boolean open) {
        Double metres = open ? onM : offM;
        if (metres == null) {
            return words.text(open ? "picture.switching.openUnknown" : "picture.switching.closeUnknown");
        }
        Arg distance = Arg.number(Math.abs(metres), TrayPlaces.decimals(metres), Unit.M);
        if (metres == 0) {
            return words.text(open ? "picture.switching.openAt" : "picture.switching.closeAt");
        }
        if (metres < 0) {
            return words.text(open ? "picture.switching.openEdge" : "picture.switching.closeEdge", distance);
        }
        return words.text(open ? "picture.switching.open" : "picture.switching.close", distance);
    }

    @Override
    void draw(Brush brush, double width, double full) {
        double em = brush.em();
        double height = new Caption(caption()).draw(brush, width, full, brush.body());
        double edge = 0.6 * em;
        double deep = Math.max(SKETCH_M / 2, Math.max(metres(onM), metres(offM)));
        double beyond = Math.max(0, Math.max(-metres(onM), -metres(offM)));
        double foot = height - (TractorFromAbove.LONG_EM + 0.6) * em;
        // across the headland to scale where that leaves its words their room
        double headlandM = Math.max(beyond, widthM == null ? SKETCH_M : widthM / 2);
        double headland = edge + Math.max(HEADLAND_EM * em, (foot - edge) * headlandM / (headlandM + deep));
        headland = Math.min(headland, edge + 0.58 * (foot - edge));
        double perM = (foot - headland) / deep;
        if (beyond > 0) {
            perM = Math.min(perM, (headland - edge) / Math.max(headlandM, 1.5 * beyond));
        }
        Scale down = new Scale(0, deep, headland, headland + deep * perM);
        ground(brush, width, edge, headland, height);
        border(brush, width, edge, headland);
        machine(brush, width, down, false);
        machine(brush, width, down, true);
    }

    private static double metres(@Nullable Double typed) {
        return typed == null ? SKETCH_M : typed;
    }

    private void ground(Brush brush, double width, double edge, double headland, double foot) {
        double em = brush.em();
        Palette palette = brush.palette();
        brush.line(0, edge, width, edge, palette.good(), 3);
        wheelMarks(brush, List.of(0.0, headland - 0.5 * em, width, headland - 0.5 * em));
        wheelMarks(brush, List.of(0.0, headland + 0.5 * em, width, headland + 0.5 * em));
        for (boolean open : new boolean[] {false, true}) {
            double x = x(width, open, em);
            wheelMarks(brush, List.of(x - 0.5 * em, headland + 0.5 * em, x - 0.5 * em, foot));
            wheelMarks(brush, List.of(x + 0.5 * em, headland + 0.5 * em, x + 0.5 * em, foot));
        }
        brush.dashed(0, headland, width, headland, palette.ink(), 1);
        Lettering note = brush.note().in(palette.good());
        brush.text(words.text("picture.switching.edge"), 0.4 * em, edge + 0.9 * em, note, TextAlignment.LEFT);
        Lettering name = brush.note().in(palette.ink());
        String whole = words.text("picture.switching.headland");
        // clear of the tractor that comes up to the headland
        boolean fits = 0.4 * em + brush.width(whole, name) < x(width, false, em) - 1.1 * em;
        brush.text(
                fits ? whole : words.text("picture.switching.headlandShort"),
                0.4 * em,
                headland - 1.1 * em,
                name,
                TextAlignment.LEFT);
    }

    private static void wheelMarks(Brush brush, List<Double> ends) {
        brush.line(
                ends.get(0),
                ends.get(1),
                ends.get(2),
                ends.get(3),
                brush.palette().line(),
                4);
    }

    /** The tramline on which the outlets close is at the left, that on which they open at the right. */
    private static double x(double width, boolean open, double em) {
        return width / 2 + (open ? 1 : -1) * Math.max(1.4 * em, 0.07 * width);
    }

    /** The machine along the border: its device is on the side of the field edge. */
    private void border(Brush brush, double width, double edge, double headland) {
        double em = brush.em();
        Palette palette = brush.palette();
        Lettering lettering = brush.body().in(side == Side.UNANSWERED ? palette.soft() : palette.accent());
        String text = device();
        double used = brush.width(words.text("picture.switching.edge"), brush.note()) + 1.6 * em;
        boolean oneRow = used + brush.width(text, lettering) < width;
        double y = edge + (oneRow ? 1 : 2.2) * em;
        if (side != Side.UNANSWERED) {
            double way = side == Side.LEFT ? 1 : -1;
            double discs = width - (way > 0 ? 4.4 : 1.2) * em;
            TractorFromAbove.draw(brush, discs, headland, new double[] {way, 0}, palette.soft());
            new Marks(brush).arrow(discs, headland - 0.7 * em, discs, headland - 1.9 * em, palette.accent(), 2);
        }
        brush.onPaper(text, width - 0.4 * em, y, lettering, TextAlignment.RIGHT, 0.4 * em, width - 0.4 * em);
    }

    /** One machine with its discs at their place, the measure from the headland tramline and its words. */
    private void machine(Brush brush, double width, Scale down, boolean open) {
        double em = brush.em();
        Palette palette = brush.palette();
        Double typed = open ? onM : offM;
        double x = x(width, open, em);
        double discs = down.at(metres(typed));
        Color colour = typed == null ? palette.soft() : palette.accent();
        TractorFromAbove.draw(brush, x, discs, new double[] {0, open ? 1 : -1}, palette.soft());
        for (double disc : new double[] {-0.5, 0.5}) {
            if (open) {
                new Marks(brush).disc(x + disc * em, discs, 0.42 * em, colour);
            } else {
                new Marks(brush).ring(x + disc * em, discs, 0.42 * em, colour);
            }
        }
        int out = open ? 1 : -1;
        double measure = x + out * 1.5 * em;
        brush.dashed(x + out * em, discs, measure + out * 0.4 * em, discs, colour, 1);
        new Marks(brush).upright(measure, down.start(), discs, colour);
        double left = open ? measure + 0.6 * em : 0.3 * em;
        double right = open ? width - 0.3 * em : measure - 0.6 * em;
        brush.paragraph(
                text(open),
                open ? left : right,
                down.start() + 1 * em,
                right - left,
                brush.body().heavy().in(colour),
                open ? TextAlignment.LEFT : TextAlignment.RIGHT);
    }
}
