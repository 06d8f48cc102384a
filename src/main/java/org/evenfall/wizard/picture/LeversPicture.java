package org.evenfall.wizard.picture;

import java.util.List;
import javafx.scene.text.TextAlignment;
import org.evenfall.finding.Arg;
import org.evenfall.finding.Sentences;
import org.evenfall.machine.Lever;
import org.evenfall.quantity.Unit;

/** Each lever as a scale from its lowest to its highest setting, with its steps and an arrow to where it throws wider. */
public final class LeversPicture extends Picture {

    /** Height of one line of a name, and of what is under it, em. */
    private static final double NAME_EM = 1.25;

    private static final double LEVER_EM = 4.2;

    private List<Lever> levers = List.of();

    /** Begins with nothing to show. */
    public LeversPicture(Sentences words) {
        super(words, 0.9);
        show(List.of());
    }

    /** Draws these levers. */
    public void show(List<Lever> all) {
        levers = List.copyOf(all);
        redraw(levers.isEmpty() ? words.text("picture.levers.empty") : spoken());
    }

    private String spoken() {
        return String.join(
                " ",
                levers.stream()
                        .map(lever -> words.text(
                                "picture.levers.spoken",
                                Arg.text(name(lever)),
                                Arg.text(number(lever.lowest())),
                                Arg.text(number(lever.highest())),
                                Arg.text(number(lever.step())),
                                Arg.text(way(lever))))
                        .toList());
    }

    private String name(Lever lever) {
        return lever.label().isBlank() ? words.text("picture.levers.unnamed") : lever.label();
    }

    private String way(Lever lever) {
        return words.text(
                switch (lever.widerWhen()) {
                    case HIGHER -> "picture.levers.higher";
                    case LOWER -> "picture.levers.lower";
                    case UNKNOWN, UNANSWERED -> "picture.levers.unknown";
                });
    }

    private String number(double value) {
        return words.number(value, Math.abs(value - Math.rint(value)) < 1e-6 ? 0 : 1, Unit.NONE);
    }

    @Override
    void draw(Brush brush, double width, double height) {
        if (levers.isEmpty()) {
            nothingYet(brush, width, height, words.text("picture.levers.empty"));
            return;
        }
        double em = brush.em();
        double room = height - (levers.size() == fitting(brush, width, height) ? 0 : 1.6 * em);
        int shown = Math.max(1, fitting(brush, width, room));
        double needed = 0;
        for (Lever lever : levers.subList(0, shown)) {
            needed += high(brush, lever, width);
        }
        double space = Math.max(0, Math.min(2.4 * em, (room - needed) / shown));
        double y = Math.max(0, (room - needed - shown * space) / 2);
        for (Lever lever : levers.subList(0, shown)) {
            y = lever(brush, lever, y + space / 2, width) + space / 2;
        }
        if (shown < levers.size()) {
            brush.within(
                    words.text("picture.levers.more", Arg.count(levers.size() - shown)),
                    width / 2,
                    height - 0.9 * em,
                    brush.body(),
                    TextAlignment.CENTER,
                    0,
                    width);
        }
    }

    private List<String> lines(Brush brush, Lever lever, double width) {
        return brush.wrapped(name(lever), width - 2 * brush.em(), brush.body().heavy(), 2);
    }

    private double high(Brush brush, Lever lever, double width) {
        return (LEVER_EM + NAME_EM * lines(brush, lever, width).size()) * brush.em();
    }

    /** How many have room. */
    private int fitting(Brush brush, double width, double height) {
        double left = height;
        int count = 0;
        while (count < levers.size() && left >= high(brush, levers.get(count), width)) {
            left -= high(brush, levers.get(count), width);
            count++;
        }
        return count;
    }

    /** Draws one from the top down; gives the y under it. */
    private double lever(Brush brush, Lever lever, double top, double width) {
        double em = brush.em();
        Palette palette = brush.palette();
        Scale scale = new Scale(lever.lowest(), lever.highest(), 2 * em, width - 2 * em);
        double line = top;
        for (String name : lines(brush, lever, width)) {
            line += NAME_EM * em;
            brush.text(name, em, line - 0.4 * em, brush.body().heavy(), TextAlignment.LEFT);
        }
        double y = line + 2.4 * em;
        brush.line(scale.start(), y, scale.end(), y, palette.ink(), 2);
        steps(brush, lever, scale, y);
        for (double end : new double[] {lever.lowest(), lever.highest()}) {
            brush.line(scale.at(end), y - 0.55 * em, scale.at(end), y + 0.2 * em, palette.ink(), 2.5);
            brush.text(number(end), scale.at(end), y + 0.95 * em, brush.body(), TextAlignment.CENTER);
        }
        way(brush, lever, scale, line + 0.9 * em);
        return line + LEVER_EM * em;
    }

    /** One tick a step, or as many as can be kept apart. */
    private static void steps(Brush brush, Lever lever, Scale scale, double y) {
        double em = brush.em();
        double apart = scale.length(lever.step());
        int each = (int) Math.max(1, Math.ceil(0.3 * em / Math.max(apart, 1e-3)));
        for (int i = 0; i * lever.step() < lever.highest() - lever.lowest(); i += each) {
            double x = scale.at(lever.lowest() + i * lever.step());
            brush.line(x, y - 0.35 * em, x, y, brush.palette().ink(), 1);
        }
    }

    /** The arrow towards wider with its word at its head and the other at its foot. */
    private void way(Brush brush, Lever lever, Scale scale, double y) {
        double em = brush.em();
        Lettering lettering = brush.body().heavy().in(brush.palette().accent());
        int sign = lever.widerSign();
        if (sign == 0) {
            brush.within(
                    way(lever),
                    (scale.start() + scale.end()) / 2,
                    y,
                    brush.body().in(brush.palette().warn()),
                    TextAlignment.CENTER,
                    scale.start(),
                    scale.end());
            return;
        }
        String low = words.text(sign > 0 ? "picture.levers.narrower" : "picture.levers.wider");
        String high = words.text(sign > 0 ? "picture.levers.wider" : "picture.levers.narrower");
        brush.text(low, scale.start() - em, y, lettering, TextAlignment.LEFT);
        brush.text(high, scale.end() + em, y, lettering, TextAlignment.RIGHT);
        double from = scale.start() - 0.4 * em + brush.width(low, lettering);
        double to = scale.end() + 0.4 * em - brush.width(high, lettering);
        new Marks(brush)
                .arrow(
                        sign > 0 ? from : to,
                        y,
                        sign > 0 ? to : from,
                        y,
                        brush.palette().accent(),
                        2);
    }
}
