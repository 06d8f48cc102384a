package org.evenfall.wizard.picture;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import javafx.scene.paint.Color;
import javafx.scene.text.TextAlignment;
import org.evenfall.finding.Arg;
import org.evenfall.finding.Sentences;
import org.evenfall.granule.ProductForm;
import org.evenfall.quantity.Unit;

/** Granules of each kind in a row on a millimetre axis, to scale; the kind that was chosen is emphasised. */
public final class GranulesPicture extends Picture {

    /** Typical sizes, mm. Common practice: descriptions of the trade. */
    private static final List<Kind> KINDS = List.of(
            new Kind(ProductForm.GRANULAR_UREA, 2, 4),
            new Kind(ProductForm.PRILLED_UREA, 1, 2),
            new Kind(ProductForm.CALCIUM_AMMONIUM_NITRATE, 2, 5),
            new Kind(ProductForm.AMMONIUM_NITRATE, 2, 4));

    private static final double AXIS_MM = 30;

    private ProductForm form = ProductForm.UNANSWERED;

    /** Begins with nothing chosen. */
    public GranulesPicture(Sentences words) {
        super(words, 1.05);
        show(ProductForm.UNANSWERED);
    }

    private record Kind(ProductForm form, double fromMm, double toMm) {}

    /** Emphasises this kind. */
    public void show(ProductForm chosen) {
        form = chosen;
        String spoken = KINDS.stream()
                .filter(kind -> kind.form() == form)
                .findFirst()
                .map(this::name)
                .orElse("");
        redraw((spoken + " " + sentence()).strip());
    }

    private String sentence() {
        return words.text(form == ProductForm.UNANSWERED ? "picture.granules.empty" : "picture.granules.typical");
    }

    private String name(Kind kind) {
        return words.text(
                "picture.granules.kind",
                Arg.text(words.choice(kind.form())),
                Arg.number(kind.fromMm(), 0, Unit.NONE),
                Arg.number(kind.toMm(), 0, Unit.MM));
    }

    @Override
    void draw(Brush brush, double width, double full) {
        double em = brush.em();
        double height = new Caption(sentence()).draw(brush, width, full);
        Scale across = new Scale(0, AXIS_MM, 1.2 * em, width - 1.2 * em);
        List<Kind> shown = shown(brush, across, width, height - 3.4 * em);
        double needed = needed(brush, shown, across, width);
        double space = Math.max(0, Math.min(1.2 * em, (height - 3 * em - needed) / shown.size()));
        double y = Math.max(0.3 * em, (height - 3 * em - needed - space * shown.size()) / 2);
        for (Kind kind : shown) {
            y = row(brush, kind, across, y, width) + space;
        }
        new Marks(brush).axis(across, y + 0.2 * em, words.text("picture.granules.axis"), words);
    }

    /** As many kinds as have room, the chosen one always. */
    private List<Kind> shown(Brush brush, Scale across, double width, double height) {
        List<Kind> shown = new ArrayList<>(KINDS);
        while (shown.size() > 1 && needed(brush, shown, across, width) > height) {
            int last = shown.size() - 1;
            shown.remove(shown.get(last).form() == form ? last - 1 : last);
        }
        return shown;
    }

    private double needed(Brush brush, List<Kind> kinds, Scale across, double width) {
        double needed = 0;
        for (Kind kind : kinds) {
            needed += rowHigh(brush, kind, across, width);
        }
        return needed;
    }

    private double rowHigh(Brush brush, Kind kind, Scale across, double width) {
        int lines = brush.wrapped(
                        name(kind), width - 2.4 * brush.em(), brush.body().heavy())
                .size();
        return (1.25 * lines + 0.3) * brush.em() + across.length(kind.toMm());
    }

    private double row(Brush brush, Kind kind, Scale across, double top, double width) {
        double em = brush.em();
        boolean chosen = kind.form() == form;
        Color colour = chosen ? brush.palette().straw() : brush.palette().soft();
        Lettering lettering =
                chosen ? brush.body().heavy().in(colour) : brush.body().in(colour);
        double y = brush.paragraph(name(kind), across.start(), top, width - 2.4 * em, lettering, TextAlignment.LEFT);
        double foot = y + 0.1 * em + across.length(kind.toMm());
        // the same granules at every redraw
        Random sizes = new Random(5);
        double at = 0;
        double diameter = kind.toMm();
        while (at + diameter <= AXIS_MM) {
            double radius = across.length(diameter) / 2;
            double x = across.at(at + diameter / 2);
            brush.oval(x, foot - radius, radius, radius, Palette.faint(colour, chosen ? 0.45 : 0.12));
            brush.ring(x, foot - radius, radius, radius, colour, chosen ? 1.5 : 1);
            at += diameter;
            diameter = kind.fromMm() + (kind.toMm() - kind.fromMm()) * sizes.nextDouble();
        }
        return foot + 0.2 * em;
    }
}
