package org.evenfall.trays.proof;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;
import org.evenfall.trays.FieldCv;

/** Runs the estimator of the field CV on virtual machines and counts how often its interval holds the truth. */
final class Proof {

    /** The family that is no usual machine: printed, not counted in "all". */
    static final String LIMIT = "narrow";

    /** Families by name. */
    static final Map<String, PatternFamily> FAMILIES = families();

    /** The families that are like usual machines. */
    static final List<String> USUAL_FAMILIES =
            FAMILIES.keySet().stream().filter(name -> !name.equals(LIMIT)).toList();

    /** One estimate and the truth. */
    record Case(String family, TrayPlaces places, int band, double widthM, double truePercent, FieldCv estimate) {

        boolean covered() {
            return estimate.intervalPercent().contains(truePercent);
        }
    }

    private Proof() {}

    private static Map<String, PatternFamily> families() {
        Map<String, PatternFamily> families = new LinkedHashMap<>();
        families.put("landing", new LandingFamily());
        families.put("piecewise", new PiecewiseFamily());
        families.put("rough", new RoughFamily());
        families.put(LIMIT, new NarrowFamily());
        return families;
    }

    /** Cases of so many machines a family and band; the same every time. */
    static List<Case> run(int machinesABand, Collection<String> families, Predicate<TrayPlaces> used) {
        List<Case> cases = new ArrayList<>();
        long seed = 0;
        for (String family : families) {
            for (int band = 0; band < ProofMachine.BANDS_PERCENT.length - 1; band++) {
                for (int i = 0; i < machinesABand; i++) {
                    ProofMachine machine = ProofMachine.draw(FAMILIES.get(family), band, ++seed);
                    double widthM = machine.tramlines().widthM();
                    for (TrayPlaces places : TrayPlaces.values()) {
                        if (used.test(places) && places.usedAt(widthM)) {
                            cases.add(new Case(
                                    family, places, band, widthM, machine.truePercent(), machine.estimate(places)));
                        }
                    }
                }
            }
        }
        return cases;
    }

    /** Share of the cases whose interval holds the truth, %. */
    static double coverage(List<Case> cases) {
        return 100.0 * cases.stream().filter(Case::covered).count() / cases.size();
    }

    /** Mean width of the intervals, points. */
    static double meanWidth(List<Case> cases) {
        return cases.stream()
                .mapToDouble(each -> each.estimate().intervalPercent().width())
                .average()
                .orElseThrow();
    }

    /** Cases with trays at these places and a true field CV of 5 % and more. */
    static List<Case> above5(List<Case> cases, TrayPlaces places) {
        return cases.stream()
                .filter(each -> each.places() == places && each.band() > 0)
                .toList();
    }

    /** Prints the tables for so many machines a family and band (default 140). */
    public static void main(String[] args) {
        System.out.println(ProofTable.of(
                run(args.length > 0 ? Integer.parseInt(args[0]) : 140, FAMILIES.keySet(), places -> true)));
    }
}
