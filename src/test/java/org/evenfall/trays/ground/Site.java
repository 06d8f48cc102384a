package org.evenfall.trays.ground;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import org.evenfall.machine.Lever;
import org.evenfall.machine.Widening;

/** A machine on its field, with settings as on the scales; what was computed once is kept. */
final class Site {

    private final Family family;
    private final Machine machine;
    private final long seed;
    private final Map<Map<String, Double>, TrueField> fields = new ConcurrentHashMap<>();
    private final List<Lever> levers;

    Site(Family family, Machine machine, long seed) {
        this.family = family;
        this.machine = machine;
        this.seed = seed;
        this.levers = List.of(
                job().first().lever(widening(machine.meanThrowM(1, 0) - machine.meanThrowM(-1, 0))),
                job().second().lever(widening(machine.meanThrowM(0, 1) - machine.meanThrowM(0, -1))));
    }

    /** The way that lengthens the mean throw at the start. */
    private static Widening widening(double longerUp) {
        return longerUp > 0 ? Widening.HIGHER : Widening.LOWER;
    }

    Family family() {
        return family;
    }

    Machine machine() {
        return machine;
    }

    Job job() {
        return machine.job();
    }

    long seed() {
        return seed;
    }

    /** The levers with their true directions. */
    List<Lever> levers() {
        return levers;
    }

    Map<String, Double> settings(int first, int second) {
        Map<String, Double> settings = new LinkedHashMap<>();
        settings.put(job().first().label(), job().first().setting(first));
        settings.put(job().second().label(), job().second().setting(second));
        return settings;
    }

    Map<String, Double> start() {
        return settings(0, 0);
    }

    Map<String, Double> good() {
        return settings(machine.goodFirst(), machine.goodSecond());
    }

    int first(Map<String, Double> settings) {
        return job().first().steps(settings.get(job().first().label()));
    }

    int second(Map<String, Double> settings) {
        return job().second().steps(settings.get(job().second().label()));
    }

    TrueField field(Map<String, Double> settings) {
        return fields.computeIfAbsent(settings, s -> machine.field(first(s), second(s), Fault.NONE));
    }

    double trueCv(Map<String, Double> settings) {
        return field(settings).cvPercent();
    }

    /** Whether the first lever answers the other way round: a step that throws further makes the centre heavier. */
    boolean folded() {
        int wider = levers.get(0).widerSign();
        return centre(wider) > centre(-wider);
    }

    private double centre(int first) {
        TrueField field = field(settings(first, 0));
        return field.overTray(0) - field.overTray(job().widthM() / 2);
    }
}
