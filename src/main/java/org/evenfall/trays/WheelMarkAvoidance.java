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

    private final TrayLayout even;
    private final WheelMarks marks;
    private final List<Double> wheelsM;
    private final double reachM;
    private final double trayAcrossM;

    WheelMarkAvoidance(TrayLayout even, WheelMarks marks, double trayAcrossM) {
        this.even = even;
        this.marks = marks;
        this.trayAcrossM = trayAcrossM;
        this.reachM = marks.reachM(trayAcrossM);
        this.wheelsM = even.passesM().stream()
                .flatMap(pass -> List.of(pass - marks.trackM() / 2, pass + marks.trackM() / 2).stream())
                .toList();
    }

    TrayLayout layout() {
        List<Double> places = new ArrayList<>(even.positionsM());
        Set<Integer> blocked = new HashSet<>();
        IntStream.range(0, places.size()).filter(i -> !clear(places.get(i))).forEach(blocked::add);
        List<Double> moved = new ArrayList<>(Collections.nCopies(places.size(), 0.0));
        List<Integer> left = new ArrayList<>();
        for (int tray : blocked.stream().sorted().toList()) {
            Double place = free(tray, places, blocked);
            if (place == null) {
                left.add(tray);
            } else {
                moved.set(tray, place - places.get(tray));
                places.set(tray, place);
            }
        }
        return new TrayLayout(
                places,
                even.tramlineWidthM(),
                even.trayAreaM2(),
                even.passesM(),
                even.passForward(),
                marks,
                moved,
                left);
    }

    private boolean clear(double placeM) {
        return wheelsM.stream().allMatch(wheel -> Math.abs(placeM - wheel) >= reachM - 1e-9);
    }

    /** Nearest place beside a wheel mark that is free of wheels and trays, outwards rather than inwards; else null. */
    private @Nullable Double free(int tray, List<Double> places, Set<Integer> blocked) {
        double at = places.get(tray);
        double from = tray == 0 ? Double.NEGATIVE_INFINITY : places.get(tray - 1) + trayAcrossM;
        double to = tray == places.size() - 1 ? Double.POSITIVE_INFINITY : places.get(tray + 1) - trayAcrossM;
        if (blocked.contains(tray + 1)) {
            // the neighbour has to give way itself; even so it keeps its side
            to = places.get(tray + 1);
        }
        double low = from;
        double high = to;
        return wheelsM.stream()
                .flatMap(wheel -> List.of(wheel - reachM, wheel + reachM).stream())
                .filter(this::clear)
                .filter(place -> place >= low - 1e-9 && place <= high + 1e-9)
                .min(Comparator.<Double>comparingDouble(place -> tenths(Math.abs(place - at)))
                        .thenComparingDouble(place -> -Math.abs(place)))
                .orElse(null);
    }

    /** To a tenth of a millimetre, so that two ways of the same length are the same. */
    private static double tenths(double metres) {
        return Math.rint(metres * 1e4);
    }
}
