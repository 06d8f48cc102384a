package org.evenfall.trays;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;

/** Moves the trays that a wheel would run over to the nearest free place between their neighbours. */
final class WheelMarkAvoidance {

    /** Lengths that differ by less are equal, m. */
    private static final double ROUNDING_M = 1e-9;

    private final TrayLayout planned;
    private final WheelMarks marks;
    private final List<Double> wheelsM;
    private final double reachM;
    private final double trayAcrossM;

    WheelMarkAvoidance(TrayLayout planned, WheelMarks marks, double trayAcrossM) {
        this.planned = planned;
        this.marks = marks;
        this.trayAcrossM = trayAcrossM;
        this.reachM = marks.reachM(trayAcrossM);
        this.wheelsM = planned.passesM().stream()
                .flatMap(pass -> List.of(pass - marks.trackM() / 2, pass + marks.trackM() / 2).stream())
                .toList();
    }

    /** The layout with every tray moved that can be. */
    TrayLayout layout() {
        List<Double> places = new ArrayList<>(planned.positionsM());
        Set<Integer> blocked = new HashSet<>();
        IntStream.range(0, places.size()).filter(i -> !isClear(places.get(i))).forEach(blocked::add);
        List<Double> moved = new ArrayList<>(Collections.nCopies(places.size(), 0.0));
        List<Integer> inWheelMarks = new ArrayList<>();
        for (int tray : blocked.stream().sorted().toList()) {
            Double place = freePlace(tray, places, blocked);
            if (place == null) {
                inWheelMarks.add(tray);
            } else {
                moved.set(tray, place - places.get(tray));
                places.set(tray, place);
            }
        }
        return new TrayLayout(
                places,
                planned.tramlineWidthM(),
                planned.trayAreaM2(),
                planned.passesM(),
                planned.passForward(),
                marks,
                moved,
                inWheelMarks);
    }

    private boolean isClear(double placeM) {
        return wheelsM.stream().allMatch(wheel -> Math.abs(placeM - wheel) >= reachM - ROUNDING_M);
    }

    /**
     * Nearest place along a wheel mark that is clear of wheels and of the neighbours, of equals the outer one; null where there
     * is none.
     */
    private @Nullable Double freePlace(int tray, List<Double> places, Set<Integer> blocked) {
        double at = places.get(tray);
        double from = tray == 0 ? Double.NEGATIVE_INFINITY : places.get(tray - 1) + trayAcrossM;
        double to = tray == places.size() - 1 ? Double.POSITIVE_INFINITY : places.get(tray + 1) - trayAcrossM;
        if (blocked.contains(tray + 1)) {
            // the neighbour is to be moved itself; the order of the trays is kept all the same
            to = places.get(tray + 1);
        }
        double low = from;
        double high = to;
        return wheelsM.stream()
                .flatMap(wheel -> List.of(wheel - reachM, wheel + reachM).stream())
                .filter(this::isClear)
                .filter(place -> place >= low - ROUNDING_M && place <= high + ROUNDING_M)
                .min(Comparator.<Double>comparingDouble(place -> tenthsOfMm(Math.abs(place - at)))
                        .thenComparingDouble(place -> -Math.abs(place)))
                .orElse(null);
    }

    /** To a tenth of a millimetre, so that two distances of the same length are equal. */
    private static double tenthsOfMm(double metres) {
        return Math.rint(metres * 1e4);
    }
}
