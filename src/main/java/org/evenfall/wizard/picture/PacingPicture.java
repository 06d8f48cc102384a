package org.evenfall.wizard.picture;

import java.util.List;
import javafx.scene.text.TextAlignment;
import org.evenfall.finding.Arg;
import org.evenfall.finding.Sentences;
import org.evenfall.quantity.Unit;
import org.evenfall.trays.StripLoad;
import org.evenfall.trays.TrayLayout;
import org.jspecify.annotations.Nullable;

/**
 * Where the trays go, from above and to scale across: three passes with their directions, wheel marks, the trays from
 * midway to midway, and how far to pace to each from the centre tramline.
 */
public final class PacingPicture extends Picture {

    private static final double HEAD_EM = 1.9;

    /** Least height of the strip over the rows that are paced, em. */
    private static final double STRIP_EM = 5;

    /** Least width of the words for the length of a pass, em. */
    private static final double LENGTH_EM = 3.3;

    /** Height of the measure between two tramlines, em. */
    private static final double WIDTH_EM = 2.5;

    private @Nullable TrayLayout layout;
    private @Nullable Double widthM;

    /** Begins with nothing to show. */
    public PacingPicture(Sentences words) {
        super(words, 0.95);
        show(null, null);
    }

    /** Draws this; null: not known yet. */
    public void show(@Nullable TrayLayout plan, @Nullable Double tramlineWidthM) {
        layout = plan;
        widthM = plan == null ? tramlineWidthM : Double.valueOf(plan.tramlineWidthM());
        redraw(spoken());
    }

    private String spoken() {
        TrayLayout plan = layout;
        if (plan == null) {
            return caption();
        }
        List<Arg> paced = PacingRows.distancesM(plan.positionsM(), 1).stream()
                .map(metres -> Arg.number(metres, TrayPlaces.decimals(metres), Unit.M))
                .toList();
        return words.text(
                "picture.pacing.spoken",
                Arg.count(plan.positionsM().size()),
                Arg.text(wide(plan.tramlineWidthM())),
                new Arg.Series(paced));
    }

    private String caption() {
        TrayLayout plan = layout;
        if (plan == null) {
            return words.text(widthM == null ? "picture.pacing.empty" : "picture.pacing.noTrays");
        }
        return plan.inWheelMarks().isEmpty()
                ? words.text("picture.pacing.note")
                : words.text(
                        "picture.pacing.inWheels",
                        new Arg.Series(plan.inWheelMarks().stream()
                                .map(tray -> Arg.count(tray + 1L))
                                .toList()));
    }

    private String wide(@Nullable Double metres) {
        return metres == null
                ? words.text("picture.pacing.widthOpen")
                : words.number(metres, TrayPlaces.decimals(metres), Unit.M);
    }

    @Override
    void draw(Brush brush, double width, double full) {
        double em = brush.em();
        StripFromAbove strip = new StripFromAbove(brush, layout, widthM, width);
        List<Double> places = layout == null ? List.of() : layout.positionsM();
        PacingRows rows = new PacingRows(brush, words, strip.across(), places);
        double height = height(brush, width, full, rows.rows());
        int shown = Math.max(1, Math.min(rows.rows(), roomForRows(em, height)));
        double rowsHigh = places.isEmpty() ? 0 : (shown * PacingRows.ROW_EM + 0.5) * em;
        double top = HEAD_EM * em;
        double foot = Math.min(height - WIDTH_EM * em - rowsHigh, top + 1.2 * width);
        double row = foot - 1.3 * em;
        strip.ground(top, foot);
        passes(brush, strip, top, foot);
        if (layout != null) {
            rows.draw(row, foot + 0.3 * em, shown);
            strip.trays(row);
            new TrayNumbers(brush, words, strip.across(), places).draw(row - 0.5 * strip.side() - 0.75 * em);
        }
        length(brush, strip, top, foot);
        sides(brush, strip, row, width);
        between(brush, strip, foot + rowsHigh + 0.5 * em, width);
    }

    /** How many trays a side can be paced over so much height. */
    private static int roomForRows(double em, double height) {
        return (int) ((height - (HEAD_EM + STRIP_EM + WIDTH_EM) * em) / (PacingRows.ROW_EM * em));
    }

    /** Height over the sentence at the foot; it is left out where the distances of all trays need its room. */
    private double height(Brush brush, double width, double full, int rows) {
        Lettering lettering = layout == null ? brush.body() : brush.note();
        double under = new Caption(caption()).height(brush, width, lettering);
        boolean minor = layout != null && layout.inWheelMarks().isEmpty();
        if (minor && roomForRows(brush.em(), full - under) < rows) {
            return full;
        }
        return new Caption(caption()).draw(brush, width, full, lettering);
    }

    private void passes(Brush brush, StripFromAbove strip, double top, double foot) {
        double em = brush.em();
        for (int i = 0; i < strip.passes().size(); i++) {
            double x = strip.passes().get(i);
            if (layout != null) {
                strip.arrow(x, layout.passForward().get(i), top + 0.3 * em, foot - 0.2 * em);
            }
            brush.within(
                    words.text("picture.plan.pass", Arg.count(i + 1L)),
                    x,
                    1 * em,
                    brush.body().heavy().in(brush.palette().accent()),
                    TextAlignment.CENTER,
                    Math.max(0.3 * em, x - strip.half()),
                    Math.min(strip.across().end() - 0.3 * em, x + strip.half()));
        }
    }

    /** Which side is left, in the gaps between the outermost trays and the next tramlines. */
    private void sides(Brush brush, StripFromAbove strip, double row, double width) {
        double quarter = 1.5 * strip.half();
        for (int side : new int[] {-1, 1}) {
            String text = words.text(side < 0 ? "picture.passes.left" : "picture.passes.right");
            if (brush.width(text, brush.note()) < strip.half() - 1.5 * brush.em()) {
                double x = width / 2 + side * quarter;
                double wide = brush.width(text, brush.note()) + 0.6 * brush.em();
                // no measure goes through it
                brush.box(
                        x - wide / 2,
                        row - 0.6 * brush.em(),
                        wide,
                        1.2 * brush.em(),
                        brush.palette().paper());
                brush.text(text, x, row, brush.note(), TextAlignment.CENTER);
            }
        }
    }

    /** How far each pass is driven with the outlets open: a measure that is not to scale. */
    private void length(Brush brush, StripFromAbove strip, double top, double foot) {
        double em = brush.em();
        String text = words.text("picture.pacing.length", Arg.number(StripLoad.PASS_LENGTH_M, 0, Unit.M));
        double wide = strip.half() - 1.2 * em;
        List<String> lines = brush.wrapped(text, Math.max(wide, LENGTH_EM * em), brush.note());
        double high = lines.size() * brush.note().lineEm() * em;
        if (layout == null || wide < LENGTH_EM * em || foot - top < high + 5 * em) {
            return;
        }
        double x = strip.across().at(0) + 1.5 * strip.half();
        double middle = (top + foot - 1.3 * em) / 2;
        new Marks(brush)
                .upright(x, top + 0.3 * em, foot - 0.2 * em, brush.palette().soft());
        brush.box(
                x - 0.5 * em,
                middle - high / 2 - 0.1 * em,
                em,
                high + 0.2 * em,
                brush.palette().paper());
        brush.paragraph(text, x, middle - high / 2, wide, brush.note(), TextAlignment.CENTER);
    }

    private void between(Brush brush, StripFromAbove strip, double y, double width) {
        double em = brush.em();
        double right = strip.passes().get(strip.passes().size() - 1);
        new Marks(brush).across(width / 2, right, y, brush.palette().accent());
        brush.within(
                words.text("picture.pacing.between", Arg.text(wide(widthM))),
                (width / 2 + right) / 2,
                y + 1.1 * em,
                brush.body().heavy().in(brush.palette().accent()),
                TextAlignment.CENTER,
                0.3 * em,
                width - 0.3 * em);
    }
}
