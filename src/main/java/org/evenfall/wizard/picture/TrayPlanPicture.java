package org.evenfall.wizard.picture;

import java.util.List;
import javafx.scene.text.TextAlignment;
import org.evenfall.finding.Arg;
import org.evenfall.finding.Sentences;
import org.evenfall.quantity.Unit;
import org.evenfall.trays.TrayLayout;
import org.jspecify.annotations.Nullable;

/**
 * The test place from above, to scale: three tramlines with the pass and direction on each, the trays in one row across
 * and how far to pace from the middle. Trays are drawn larger than they are.
 */
public final class TrayPlanPicture extends Picture {

    private @Nullable TrayLayout layout;

    /** Begins with nothing to show. */
    public TrayPlanPicture(Sentences words) {
        super(words, 0.72);
        show(null);
    }

    /** Draws this; null: nothing yet. */
    public void show(@Nullable TrayLayout plan) {
        layout = plan;
        redraw(
                plan == null
                        ? words.text("picture.plan.empty")
                        : words.text(
                                "picture.plan.spoken",
                                Arg.count(plan.positionsM().size()),
                                Arg.number(plan.tramlineWidthM(), 0, Unit.M)));
    }

    @Override
    void draw(Brush brush, double width, double height) {
        TrayLayout plan = layout;
        if (plan == null) {
            nothingYet(brush, width, height, words.text("picture.plan.empty"));
            return;
        }
        double em = brush.em();
        double reach = 1.2 * plan.tramlineWidthM();
        for (double pass : plan.passesM()) {
            reach = Math.max(reach, Math.abs(pass) * 1.18);
        }
        Scale across = new Scale(-reach, reach, 0, width);
        double note = em
                * brush.note().lineEm()
                * brush.wrapped(words.text("picture.plan.note"), width - 0.6 * em, brush.note())
                        .size();
        double foot = height - 4.5 * em - note;
        double row = 1.9 * em + (foot - 1.9 * em) * 0.46;
        passes(brush, plan, across, 1.9 * em, foot, row, width);
        trays(brush, plan, across, row);
        pacing(brush, plan, across, row, foot, width);
        brush.paragraph(
                words.text("picture.plan.note"),
                width / 2,
                height - note - 0.2 * em,
                width - 0.6 * em,
                brush.note(),
                TextAlignment.CENTER);
    }

    private void passes(Brush brush, TrayLayout plan, Scale across, double top, double foot, double row, double width) {
        double em = brush.em();
        Palette palette = brush.palette();
        Marks marks = new Marks(brush);
        double track = Math.max(0.35 * em, across.length(plan.wheels().trackM() / 2));
        double tyre = Math.max(2, across.length(plan.wheels().tyreM()));
        for (int i = 0; i < plan.passesM().size(); i++) {
            double x = across.at(plan.passesM().get(i));
            brush.line(x - track, top, x - track, foot, palette.line(), tyre);
            brush.line(x + track, top, x + track, foot, palette.line(), tyre);
            boolean forward = plan.passForward().get(i);
            marks.arrow(
                    x,
                    forward ? foot - 0.4 * em : top + 0.4 * em,
                    x,
                    forward ? top + 0.3 * em : foot - 0.3 * em,
                    palette.accent(),
                    2.5);
            brush.within(
                    words.text("picture.plan.pass", Arg.count(i + 1L)),
                    x,
                    1 * em,
                    brush.body().heavy().in(palette.accent()),
                    TextAlignment.CENTER,
                    Math.max(0.3 * em, x - across.length(plan.tramlineWidthM()) / 2),
                    Math.min(width - 0.3 * em, x + across.length(plan.tramlineWidthM()) / 2));
        }
        for (double half : new double[] {-0.5, 0.5}) {
            double x = across.at(half * plan.tramlineWidthM());
            brush.dashed(x, top + 0.5 * em, x, foot, palette.soft(), 1);
        }
        brush.onPaper(
                words.text("picture.plan.halfway"),
                across.at(0.5 * plan.tramlineWidthM()),
                row - 2 * em,
                brush.note(),
                TextAlignment.CENTER,
                across.at(0) + 0.8 * em,
                width);
    }

    private void trays(Brush brush, TrayLayout plan, Scale across, double row) {
        double em = brush.em();
        List<Double> positions = plan.positionsM();
        double slot = across.length(positions.get(positions.size() - 1) - positions.get(0))
                / Math.max(1, positions.size() - 1);
        double side = Math.max(3, Math.min(0.95 * em, 0.6 * slot));
        brush.line(
                across.at(positions.get(0)),
                row,
                across.at(positions.get(positions.size() - 1)),
                row,
                brush.palette().soft(),
                1);
        int each = (int) Math.max(1, Math.ceil(1.2 * em / slot));
        for (int i = 0; i < positions.size(); i++) {
            double x = across.at(positions.get(i));
            brush.box(x - side / 2, row - side / 2, side, side, brush.palette().straw());
            brush.frame(
                    x - side / 2, row - side / 2, side, side, brush.palette().ink(), 1);
            if (Math.abs(i - positions.size() / 2) % each == 0) {
                brush.onPaper(
                        words.number(i + 1, 0, Unit.NONE),
                        x,
                        row + 1.15 * em,
                        brush.note().in(brush.palette().ink()),
                        TextAlignment.CENTER,
                        0,
                        across.end());
            }
        }
    }

    /** Distance of each tray from the middle one, and the whole width. */
    private void pacing(Brush brush, TrayLayout plan, Scale across, double row, double foot, double width) {
        double em = brush.em();
        Marks marks = new Marks(brush);
        List<Double> places =
                plan.positionsM().stream().filter(place -> place > 0.01).toList();
        int shown = Math.min(places.size(), 3);
        double y = foot + 0.7 * em;
        for (int k = 0; k < shown; k++) {
            // nearest, one between, outermost
            double place = places.get(shown == 1 ? 0 : k * (places.size() - 1) / (shown - 1));
            brush.dashed(
                    across.at(place),
                    row + 1.8 * em,
                    across.at(place),
                    y,
                    brush.palette().line(),
                    1);
            marks.across(across.at(0), across.at(place), y, brush.palette().ink());
            Lettering lettering = brush.note().in(brush.palette().ink());
            Arg distance = Arg.number(place, Math.abs(place - Math.rint(place)) < 0.05 ? 0 : 1, Unit.M);
            double from = across.at(place) + 0.6 * em;
            String whole = words.text("picture.plan.distance", distance);
            boolean fits = brush.width(whole, lettering) < width - 0.2 * em - from;
            brush.text(
                    fits ? whole : words.text("picture.plan.short", distance), from, y, lettering, TextAlignment.LEFT);
            y += 1.25 * em;
        }
        marks.across(
                across.at(-plan.tramlineWidthM()),
                across.at(0),
                foot + 0.7 * em,
                brush.palette().soft());
        brush.paragraphWithin(
                words.text("picture.plan.width", Arg.number(plan.tramlineWidthM(), 0, Unit.M)),
                across.at(-plan.tramlineWidthM() / 2),
                foot + 1.1 * em,
                brush.note(),
                0.2 * em,
                across.at(0) - 0.4 * em);
    }
}
