package org.evenfall.wizard.picture;

import javafx.scene.text.TextAlignment;
import org.evenfall.finding.Arg;
import org.evenfall.finding.Sentences;
import org.evenfall.flight.DrivingPattern;
import org.evenfall.quantity.Unit;
import org.jspecify.annotations.Nullable;

/** Three tramlines from above: which way each is driven, which sides meet, and how far apart they are. */
public final class PassesPicture extends Picture {

    private @Nullable Double widthM;
    private DrivingPattern driving = DrivingPattern.UNANSWERED;

    /** Begins with nothing to show. */
    public PassesPicture(Sentences words) {
        super(words, 1.1);
        show(null, DrivingPattern.UNANSWERED);
    }

    /** @param tramlineWidthM null while it is not known */
    public void show(@Nullable Double tramlineWidthM, DrivingPattern pattern) {
        widthM = tramlineWidthM;
        driving = pattern;
        redraw(wide() + " " + sentence());
    }

    private String sentence() {
        return words.text(
                switch (driving) {
                    case UNANSWERED -> "picture.passes.empty";
                    case BACK_AND_FORTH -> "picture.passes.backAndForth";
                    case ROUND_AND_ROUND -> "picture.passes.roundAndRound";
                });
    }

    private String wide() {
        return widthM == null
                ? words.text("picture.passes.width")
                : words.text("picture.tramlines", Arg.number(widthM, 0, Unit.M));
    }

    @Override
    void draw(Brush brush, double width, double full) {
        double em = brush.em();
        double height = new Caption(sentence()).draw(brush, width, full);
        double gap = 0.33 * width;
        double high = Math.min(height - 6.5 * em, 1.3 * width);
        double top = (height - high - 6.5 * em) / 2 + 2.6 * em;
        double foot = top + high;
        for (int pass = 0; pass < 3; pass++) {
            pass(brush, width / 2 + (pass - 1) * gap, top, foot, pass);
        }
        if (driving == DrivingPattern.BACK_AND_FORTH) {
            double turn = Math.min(gap / 2, 1.6 * em);
            Marks marks = new Marks(brush);
            marks.turn(width / 2 - gap, width / 2, top, -turn, brush.palette().accent());
            marks.turn(width / 2, width / 2 + gap, foot, turn, brush.palette().accent());
        }
        double y = foot + 2.3 * em;
        new Marks(brush).across(width / 2, width / 2 + gap, y, brush.palette().accent());
        brush.within(
                wide(),
                width / 2 + gap / 2,
                y + 1.2 * em,
                brush.body().heavy().in(brush.palette().accent()),
                TextAlignment.CENTER,
                0.3 * em,
                width - 0.3 * em);
    }

    /** One tramline: wheel marks, the arrow between them, and the machine's left and right at its sides. */
    private void pass(Brush brush, double x, double top, double foot, int pass) {
        double em = brush.em();
        Palette palette = brush.palette();
        for (double wheel : new double[] {-0.5, 0.5}) {
            brush.line(x + wheel * em, top, x + wheel * em, foot, palette.line(), 4);
        }
        if (driving == DrivingPattern.UNANSWERED && pass > 0) {
            return;
        }
        boolean away = driving != DrivingPattern.BACK_AND_FORTH || pass != 1;
        double from = away ? foot - 0.8 * em : top + 0.8 * em;
        double to = away ? top + 0.8 * em : foot - 0.8 * em;
        new Marks(brush).arrow(x, from, x, to, palette.accent(), 2.5);
        double y = (top + foot) / 2;
        String left = words.text("picture.passes.left");
        String right = words.text("picture.passes.right");
        brush.text(away ? left : right, x - 0.85 * em, y, brush.body(), TextAlignment.RIGHT);
        brush.text(away ? right : left, x + 0.85 * em, y, brush.body(), TextAlignment.LEFT);
    }
}
