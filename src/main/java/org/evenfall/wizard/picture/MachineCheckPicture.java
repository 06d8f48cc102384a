package org.evenfall.wizard.picture;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import javafx.scene.paint.Color;
import javafx.scene.text.TextAlignment;
import org.evenfall.finding.Arg;
import org.evenfall.finding.Sentences;
import org.evenfall.machine.CheckItem;
import org.evenfall.machine.MachineCheckResult;
import org.evenfall.machine.Side;
import org.evenfall.machine.VaneCheck;
import org.evenfall.result.MachineCheckLines;
import org.jspecify.annotations.Nullable;

/**
 * The machine from behind, left at the left: every part of the list with its state at its place, the vanes on their
 * discs, how far the frame is out of level (drawn larger than it is).
 */
public final class MachineCheckPicture extends Picture {

    /** Where each part sits on the machine, from -1 to 1 across and 0 (ground) to 1 (top), and on which side it is named. */
    private static final Map<CheckItem, double[]> PLACES = places();

    private @Nullable MachineCheckResult machineCheck;

    /** Begins with nothing to show. */
    public MachineCheckPicture(Sentences words) {
        super(words, 0.95);
        show(null);
    }

    /** Draws this; null: nothing yet. */
    public void show(@Nullable MachineCheckResult result) {
        machineCheck = result;
        redraw(
                result == null
                        ? words.text("picture.yard.empty")
                        : words.text(
                                "picture.yard.spoken",
                                Arg.count(result.failed().size()),
                                Arg.count(result.unanswered().size())));
    }

    private static Map<CheckItem, double[]> places() {
        Map<CheckItem, double[]> places = new EnumMap<>(CheckItem.class);
        places.put(CheckItem.AGITATOR, new double[] {-0.34, 0.76});
        places.put(CheckItem.SHUTTERS_EQUAL, new double[] {-0.4, 0.565});
        places.put(CheckItem.BEARINGS, new double[] {-0.4, 0.46});
        places.put(CheckItem.DISCS, new double[] {-0.68, 0.375});
        places.put(CheckItem.TYRES, new double[] {-0.9, 0.14});
        places.put(CheckItem.TILT, new double[] {0.62, 0.79});
        places.put(CheckItem.LEVEL, new double[] {0.82, 0.64});
        places.put(CheckItem.SHUTTERS_CLOSE, new double[] {0.4, 0.555});
        places.put(CheckItem.GUARDS, new double[] {0.78, 0.47});
        places.put(CheckItem.VANES_SAME_SET, new double[] {0.6, 0.395});
        return places;
    }

    @Override
    void draw(Brush brush, double width, double height) {
        MachineCheckResult result = machineCheck;
        if (result == null) {
            nothingYet(brush, width, height, words.text("picture.yard.empty"));
            return;
        }
        double em = brush.em();
        boolean narrow = width < 20 * em;
        double margin = narrow ? 0.6 * em : Math.max(5.9 * em, (width - 20 * em) / 2);
        double listHigh = narrow ? 5.4 * 1.35 * em : 0;
        int rows = narrow ? Math.min(8, result.vanes().size()) : Math.min(4, vaneRows(result));
        double vaneHigh = (1.3 * rows + (narrow ? 3.4 : 2.3)) * em;
        Scale across = new Scale(-1, 1, margin, width - margin);
        double room = height - listHigh - vaneHigh - 0.2 * em;
        double machineHigh = Math.min(room, 1.15 * across.length(2));
        double ground = 0.2 * em + (room + machineHigh) / 2;
        Scale up = new Scale(0, 1, ground, ground - machineHigh);
        MachineFromBehind machine = new MachineFromBehind(brush, across, up, lean(result));
        machine.draw();
        double foot = figures(brush, result, up.start() + 0.4 * em, width);
        vanes(brush, result, machine, foot + 0.3 * em, narrow, width);
        items(brush, result, machine, across, width, narrow, height - listHigh + 0.4 * em);
    }

    private static int vaneRows(MachineCheckResult result) {
        long left =
                result.vanes().stream().filter(vane -> vane.side() == Side.LEFT).count();
        return (int) Math.max(left, result.vanes().size() - left);
    }

    /** Radians by which the frame is drawn out of level: larger than it is, so that it is seen. */
    private static double lean(MachineCheckResult result) {
        Double level = result.levelDifferenceM();
        return level == null ? 0 : Math.max(-0.1, Math.min(0.1, 2.5 * level));
    }

    /** Each vane under its disc: name, wear, state. */
    private void vanes(
            Brush brush,
            MachineCheckResult result,
            MachineFromBehind machine,
            double top,
            boolean narrow,
            double width) {
        double em = brush.em();
        double y = top;
        for (Side side : List.of(Side.LEFT, Side.RIGHT)) {
            double sign = side == Side.LEFT ? -1 : 1;
            List<VaneCheck> here =
                    result.vanes().stream().filter(vane -> vane.side() == side).toList();

            if (!narrow) {
                y = top;
            }
            for (int i = 0; i < Math.min(4, here.size()); i++) {
                VaneCheck vane = here.get(i);
                double turn = (i * 2.0 / Math.max(1, here.size()) - 0.9) * Math.PI;
                Color colour =
                        vane.failed() ? brush.palette().stop() : brush.palette().paper();
                machine.vane(sign, turn, colour);
                double x = sign < 0 || narrow ? 0.9 * em : width / 2 + 0.9 * em;
                state(brush, x, y + 0.6 * em, vane.failed() ? State.FAILED : State.GOOD);
                String text = MachineCheckLines.vane(words, vane);
                brush.within(
                        text,
                        x + 0.8 * em,
                        y + 0.6 * em,
                        brush.note()
                                .in(
                                        vane.failed()
                                                ? brush.palette().stop()
                                                : brush.palette().ink()),
                        TextAlignment.LEFT,
                        x + 0.8 * em,
                        sign < 0 && !narrow ? width / 2 : width - 0.2 * em);
                y += 1.3 * em;
            }
        }
    }

    private enum State {
        GOOD,
        OPEN,
        FAILED,
        OVERRIDDEN
    }

    private static State state(MachineCheckResult result, CheckItem item) {
        if (result.failed().contains(item)) {
            return State.FAILED;
        }
        if (result.overridden().contains(item)) {
            return State.OVERRIDDEN;
        }
        return result.unanswered().contains(item) ? State.OPEN : State.GOOD;
    }

    private static Color colour(Brush brush, State state) {
        return switch (state) {
            case GOOD -> brush.palette().good();
            case OPEN -> brush.palette().accent();
            case FAILED -> brush.palette().stop();
            case OVERRIDDEN -> brush.palette().warn();
        };
    }

    private static void state(Brush brush, double x, double y, State state) {
        Marks marks = new Marks(brush);
        double radius = 0.38 * brush.em();
        Color colour = colour(brush, state);
        switch (state) {
            case GOOD -> marks.disc(x, y, radius, colour);
            case OPEN -> marks.ring(x, y, 1.1 * radius, colour);
            case FAILED -> marks.square(x, y, radius, colour);
            case OVERRIDDEN -> marks.triangle(x, y, radius, colour);
        }
    }

    private void items(
            Brush brush,
            MachineCheckResult result,
            MachineFromBehind machine,
            Scale across,
            double width,
            boolean narrow,
            double listTop) {
        double em = brush.em();
        List<CheckItem> order = new ArrayList<>(List.of(CheckItem.values()));
        order.sort((a, b) -> Double.compare(place(b)[1], place(a)[1]));
        double freeLeft = 0;
        double freeRight = 0;
        int listed = 0;
        for (CheckItem item : order) {
            State state = state(result, item);
            // the wheels are on the ground, all else leans with the machine
            double[] at = item == CheckItem.TYRES
                    ? new double[] {across.at(place(item)[0]), machine.place(0, place(item)[1])[1]}
                    : machine.place(place(item)[0], place(item)[1]);
            double x = at[0];
            double y = at[1];
            boolean left = place(item)[0] < 0;
            Lettering lettering = brush.note().in(colour(brush, state));
            String name = words.text("picture.yard." + item.name());
            if (narrow) {
                double column = listed % 2 == 0 ? 0.9 * em : width / 2 + 0.4 * em;
                double row = listTop + (Math.floorDiv(listed, 2) + 0.5) * 1.35 * em;
                state(brush, x, y, state);
                state(brush, column, row, state);
                brush.within(
                        name,
                        column + 0.8 * em,
                        row,
                        lettering,
                        TextAlignment.LEFT,
                        column + 0.8 * em,
                        listed % 2 == 0 ? width / 2 : width);
                listed++;
                continue;
            }
            double line = Math.max(y, left ? freeLeft : freeRight);
            double edge = left ? across.start() - 0.5 * em : across.end() + 0.5 * em;
            brush.line(x, y, edge, line, colour(brush, state), 1);
            state(brush, x, y, state);
            int rows = 0;
            for (String part : brush.wrapped(name, left ? edge - 0.5 * em : width - edge - 0.5 * em, lettering)) {
                brush.text(
                        part,
                        left ? edge - 0.3 * em : edge + 0.3 * em,
                        line + rows * 1.05 * em,
                        lettering,
                        left ? TextAlignment.RIGHT : TextAlignment.LEFT);
                rows++;
            }
            double next = line + (0.45 + 1.05 * rows) * em;
            if (left) {
                freeLeft = next;
            } else {
                freeRight = next;
            }
        }
    }

    private static double[] place(CheckItem item) {
        return PLACES.getOrDefault(item, new double[] {0, 0.5});
    }

    private double figures(Brush brush, MachineCheckResult result, double y, double width) {
        double em = brush.em();
        return brush.paragraphWithin(
                String.join(" · ", MachineCheckLines.levelAndShaft(words, result)),
                width / 2,
                y,
                brush.note().in(brush.palette().ink()),
                0.3 * em,
                width - 0.3 * em);
    }
}
