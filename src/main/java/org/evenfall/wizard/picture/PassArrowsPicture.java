package org.evenfall.wizard.picture;

import java.util.List;
import javafx.scene.text.TextAlignment;
import org.evenfall.finding.Arg;
import org.evenfall.finding.Sentences;
import org.evenfall.flight.DrivingPattern;
import org.evenfall.quantity.Unit;
import org.evenfall.trays.TrayLayout;
import org.evenfall.trays.WindLimits;
import org.jspecify.annotations.Nullable;

/**
 * What to drive, from above: the three passes in their order, each in the direction in which the field is driven, the trays
 * between; how strong the wind is, and how far people stay off.
 */
public final class PassArrowsPicture extends Picture {

    private static final List<String> NAMES =
            List.of("picture.passArrows.first", "picture.passArrows.centre", "picture.passArrows.third");

    private static final List<String> WHOLE_NAMES = List.of(
            "picture.passArrows.firstTramline",
            "picture.passArrows.centreTramline",
            "picture.passArrows.thirdTramline");

    private static final double HEAD_EM = 2.4;

    /** Least height of the strip where a sentence is under it, em. */
    private static final double STRIP_EM = 8;

    /** Least height of the strip for the turns to be drawn too, em. */
    private static final double TURNS_EM = 11;

    private @Nullable TrayLayout layout;
    private @Nullable Double widthM;
    private DrivingPattern driving = DrivingPattern.UNANSWERED;
    private @Nullable Double windMPerS;
    private WindLimits limits = WindLimits.USUAL;

    /** Begins with nothing to show. */
    public PassArrowsPicture(Sentences words) {
        super(words, 1.05);
        show(null, null, DrivingPattern.UNANSWERED, null, WindLimits.USUAL);
    }

    /**
     * Draws this.
     *
     * @param plan places of the trays; null while not known
     * @param tramlineWidthM null while not known
     * @param wind measured, m/s; null while not typed
     * @param windLimits against which its words are chosen
     */
    public void show(
            @Nullable TrayLayout plan,
            @Nullable Double tramlineWidthM,
            DrivingPattern pattern,
            @Nullable Double wind,
            WindLimits windLimits) {
        layout = plan;
        widthM = tramlineWidthM;
        driving = pattern;
        windMPerS = wind;
        limits = windLimits;
        redraw(String.join(" ", order(), windText(), words.text("picture.passArrows.people")));
    }

    private String order() {
        return words.text(
                switch (driving) {
                    case UNANSWERED -> "picture.passArrows.empty";
                    case BACK_AND_FORTH -> "picture.passArrows.backAndForth";
                    case ROUND_AND_ROUND -> "picture.passArrows.roundAndRound";
                });
    }

    private WindLimits.@Nullable Strength strength() {
        return windMPerS == null ? null : limits.classify(windMPerS);
    }

    private String windText() {
        WindLimits.Strength strength = strength();
        if (windMPerS == null || strength == null) {
            return words.text("picture.passArrows.windOpen");
        }
        return words.text(
                switch (strength) {
                    case CALM -> "picture.passArrows.windCalm";
                    case NOTE -> "picture.passArrows.windSome";
                    case WARN -> "picture.passArrows.windStrong";
                    case STOP -> "picture.passArrows.windTooStrong";
                },
                Arg.number(windMPerS, 1, Unit.M_PER_S));
    }

    @Override
    void draw(Brush brush, double width, double full) {
        double em = brush.em();
        double height = notes(brush, width, full);
        StripFromAbove strip = new StripFromAbove(brush, layout, widthM, width);
        double top = HEAD_EM * em;
        double foot = Math.min(height - 0.4 * em, top + 1.5 * width);
        boolean turns = driving == DrivingPattern.BACK_AND_FORTH && foot - top > TURNS_EM * em;
        if (turns) {
            top += 1.4 * em;
            foot -= 1.4 * em;
        }
        double row = top + 0.4 * (foot - top);
        strip.ground(top, foot);
        List<String> names = names(brush, width);
        for (int i = 0; i < names.size(); i++) {
            pass(brush, strip, i, names.get(i), top, foot);
        }
        strip.trays(row);
        if (turns) {
            List<Double> x = strip.passes();
            double high = 1.2 * em;
            new Marks(brush)
                    .turn(x.get(0), x.get(1), foot, high, brush.palette().accent());
            new Marks(brush)
                    .turn(x.get(1), x.get(2), top, -high, brush.palette().accent());
        }
    }

    /** Whether a pass goes up the picture, the way of the middle one. */
    private boolean forward(int pass) {
        return driving != DrivingPattern.BACK_AND_FORTH || pass == 1;
    }

    /** The tramlines by their whole names, or short where these have no room side by side. */
    private List<String> names(Brush brush, double width) {
        Lettering lettering = brush.body().heavy();
        List<String> whole = WHOLE_NAMES.stream().map(key -> words.text(key)).toList();
        boolean fits = whole.stream().allMatch(name -> brush.width(name, lettering) < 0.32 * width - 0.4 * brush.em());
        return fits ? whole : NAMES.stream().map(key -> words.text(key)).toList();
    }

    private void pass(Brush brush, StripFromAbove strip, int pass, String name, double top, double foot) {
        double em = brush.em();
        double x = strip.passes().get(pass);
        brush.within(
                name,
                x,
                0.9 * em,
                brush.body().heavy().in(brush.palette().accent()),
                TextAlignment.CENTER,
                0.2 * em,
                strip.across().end() - 0.2 * em);
        boolean known = driving != DrivingPattern.UNANSWERED;
        boolean forward = forward(pass);
        if (known) {
            strip.arrow(x, forward, top + 0.1 * em, foot - 0.1 * em);
        }
        double y = known && !forward ? top + 1.6 * em : foot - 1.6 * em;
        new Marks(brush).disc(x, y, 0.85 * em, brush.palette().accent());
        brush.text(
                words.number(pass + 1, 0, Unit.NONE),
                x,
                y,
                brush.body().heavy().in(brush.palette().paper()),
                TextAlignment.CENTER);
    }

    /** Order, wind and people at the foot; gives the height that is left. */
    private double notes(Brush brush, double width, double full) {
        double em = brush.em();
        IconRows rows = new IconRows(brush, width);
        WindLimits.Strength strength = strength();
        rows.add(
                (left, top, side) -> WindMark.draw(brush, left, top, side, strength),
                windText(),
                brush.body().heavy().in(WindMark.colour(brush.palette(), strength)),
                strength == null ? "" : words.text("picture.passArrows.strengthOnly"));
        rows.add(
                (left, top, side) -> person(brush, left + side / 2, top, side),
                words.text("picture.passArrows.people"),
                brush.body().heavy(),
                "");
        double foot = rows.draw(full - 0.3 * em);
        Caption order = new Caption(order());
        boolean low = foot - order.height(brush, width, brush.body()) < (HEAD_EM + STRIP_EM) * em;
        // where there is no room for both, the arrows say it
        return low && driving != DrivingPattern.UNANSWERED ? foot : order.draw(brush, width, foot, brush.body());
    }

    private static void person(Brush brush, double x, double top, double side) {
        Palette palette = brush.palette();
        brush.oval(x, top + 0.17 * side, 0.15 * side, 0.15 * side, palette.ink());
        brush.shape(
                new double[] {x - 0.24 * side, x + 0.24 * side, x + 0.17 * side, x - 0.17 * side},
                new double[] {top + 0.38 * side, top + 0.38 * side, top + side, top + side},
                palette.ink());
    }
}
