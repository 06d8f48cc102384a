package org.evenfall.wizard.picture;

import java.util.List;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import javafx.scene.text.TextAlignment;
import org.evenfall.finding.Arg;
import org.evenfall.finding.Sentences;
import org.evenfall.quantity.Unit;
import org.evenfall.result.LogLines;
import org.evenfall.setup.SeasonLogResult.Field;

/** The nitrogen that each field has got, as bars to one scale, against the plan of the season. */
public final class LogPicture extends Picture {

    /** Height of a field with its name, em. */
    private static final double ROW_EM = 3.4;

    private static final double BAR_EM = 1.6;

    /** Height of the title above and the axis below the fields, em. */
    private static final double AROUND_EM = 6.2;

    private List<Field> fields = List.of();
    private List<String> names = List.of();

    /** Begins with nothing to show. */
    public LogPicture(Sentences words) {
        super(words, 0.8);
        show(List.of(), UnaryOperator.identity());
    }

    /**
     * Draws these; a field of which no nitrogen is known is left out.
     *
     * @param all fields with what they got
     * @param shown what a name looks like here
     */
    public void show(List<Field> all, UnaryOperator<String> shown) {
        fields = all.stream()
                .filter(field -> field.amounts().nitrogenKgPerHa() != null)
                .toList();
        names = fields.stream()
                .map(field -> LogLines.name(words, shown.apply(field.field())))
                .toList();
        redraw(spoken());
    }

    private String spoken() {
        if (fields.isEmpty()) {
            return words.text("picture.log.empty");
        }
        return words.text(
                "picture.log.spoken",
                Arg.text(words.text("picture.log.title")),
                Arg.text(fields.stream()
                        .map(field ->
                                names.get(fields.indexOf(field)) + " " + words.number(spread(field), 0, Unit.KG_PER_HA))
                        .collect(Collectors.joining(", "))));
    }

    private static double spread(Field field) {
        Double spread = field.amounts().nitrogenKgPerHa();
        return spread == null ? 0 : spread;
    }

    private static double planned(Field field) {
        return field.plan() == null ? 0 : field.plan().nitrogenKgPerHa();
    }

    @Override
    void draw(Brush brush, double width, double height) {
        if (fields.isEmpty()) {
            nothingYet(brush, width, height, words.text("picture.log.empty"));
            return;
        }
        double em = brush.em();
        int room = (int) Math.max(1, (height / em - AROUND_EM) / ROW_EM);
        int drawn = fields.size() <= room ? fields.size() : Math.max(1, room - 1);
        double longest = fields.stream()
                .mapToDouble(field -> Math.max(spread(field), planned(field)))
                .max()
                .orElse(1);
        Scale across = new Scale(0, 1.25 * Math.max(1, longest), 1.2 * em, width - 1.2 * em);
        double top = Math.max(0.4 * em, (height - (AROUND_EM + ROW_EM * drawn) * em) / 2);
        brush.within(
                words.text("picture.log.title"),
                across.start(),
                top + 0.8 * em,
                brush.body().heavy(),
                TextAlignment.LEFT,
                0,
                width);
        double y = top + 1.8 * em;
        for (int i = 0; i < drawn; i++) {
            field(brush, across, i, y, width);
            y += ROW_EM * em;
        }
        if (drawn < fields.size()) {
            brush.within(
                    words.text("picture.log.more", Arg.count((long) fields.size() - drawn)),
                    across.start(),
                    y + 0.5 * em,
                    brush.note(),
                    TextAlignment.LEFT,
                    0,
                    width);
            y += 1.2 * em;
        }
        new Marks(brush).axis(across, y + 0.4 * em, words.text("picture.log.axis"), words);
    }

    private void field(Brush brush, Scale across, int index, double top, double width) {
        double em = brush.em();
        Palette palette = brush.palette();
        Field field = fields.get(index);
        double spread = spread(field);
        double planned = planned(field);
        boolean more = planned > 0 && spread > planned;
        String plan = planned == 0 ? "" : words.text("picture.log.plan", Arg.number(planned, 0, Unit.NONE));
        double planWide = plan.isEmpty() ? 0 : brush.width(plan, brush.note()) + 0.8 * em;
        brush.within(
                names.get(index),
                across.start(),
                top + 0.7 * em,
                brush.body(),
                TextAlignment.LEFT,
                across.start(),
                across.end() - planWide);
        brush.within(plan, across.end(), top + 0.7 * em, brush.note(), TextAlignment.RIGHT, 0, across.end());
        double y = top + 1.4 * em;
        brush.box(across.start(), y, across.length(spread), BAR_EM * em, more ? palette.warn() : palette.accent());
        if (planned > 0) {
            brush.frame(across.start(), y, across.length(planned), BAR_EM * em, palette.ink(), 1.5);
        }
        brush.within(
                words.number(spread, 0, Unit.NONE),
                across.at(Math.max(spread, planned)) + 0.5 * em,
                y + BAR_EM * em / 2,
                brush.body().heavy().in(more ? palette.warn() : palette.accent()),
                TextAlignment.LEFT,
                0,
                width - 0.2 * em);
    }
}
