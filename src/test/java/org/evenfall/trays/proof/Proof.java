package org.evenfall.trays.proof;

import java.util.ArrayList;
import java.util.Collection;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
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

    /** The tables of coverage and of calibration, ready to print. */
    static String table(List<Case> cases) {
        StringBuilder text =
                new StringBuilder("coverage of the 90 % interval, % (mean width in points), by true field CV\n");
        text.append(String.format(Locale.ROOT, "%-10s %-15s", "family", "trays"));
        for (int band = 0; band < ProofMachine.BANDS_PERCENT.length - 1; band++) {
            text.append(String.format(
                    Locale.ROOT,
                    " %12s",
                    String.format(
                            Locale.ROOT,
                            "%.0f-%.0f",
                            ProofMachine.BANDS_PERCENT[band],
                            ProofMachine.BANDS_PERCENT[band + 1])));
        }
        text.append("        5-35  tests\n");
        List<String> families = new ArrayList<>(FAMILIES.keySet());
        families.add("all");
        for (String family : families) {
            for (TrayPlaces places : TrayPlaces.values()) {
                List<Case> row = cases.stream()
                        .filter(each -> each.places() == places
                                && (family.equals("all")
                                        ? !each.family().equals(LIMIT)
                                        : each.family().equals(family)))
                        .toList();
                if (!row.isEmpty()) {
                    text.append(row(family, places, row));
                }
            }
        }
        return text.append(widths(cases)).append(calibration(cases)).toString();
    }

    private static String row(String family, TrayPlaces places, List<Case> row) {
        StringBuilder text = new StringBuilder(String.format(Locale.ROOT, "%-10s %-15s", family, places));
        for (int band = 0; band < ProofMachine.BANDS_PERCENT.length - 1; band++) {
            int wanted = band;
            text.append(cell(row.stream().filter(each -> each.band() == wanted).toList()));
        }
        List<Case> upper = row.stream().filter(each -> each.band() > 0).toList();
        return text.append(cell(upper))
                .append(String.format(Locale.ROOT, " %6d%n", upper.size()))
                .toString();
    }

    private static String cell(List<Case> cases) {
        if (cases.isEmpty()) {
            return "            -";
        }
        return String.format(Locale.ROOT, " %5.1f (%4.1f)", coverage(cases), meanWidth(cases));
    }

    private static String widths(List<Case> cases) {
        StringBuilder text = new StringBuilder(
                "\ncoverage by tramline width, %, true field CV 5-35 %: in each family up to 20, 27, 34 and 50 m\n");
        double[] ends = {0, 20.5, 27.5, 34, 50};
        for (TrayPlaces places : TrayPlaces.values()) {
            text.append(String.format(Locale.ROOT, "%-15s", places));
            for (String family : FAMILIES.keySet()) {
                for (int i = 1; i < ends.length; i++) {
                    double from = ends[i - 1];
                    double to = ends[i];
                    List<Case> cell = cases.stream()
                            .filter(each -> each.places() == places
                                    && each.band() > 0
                                    && each.family().equals(family)
                                    && each.widthM() > from
                                    && each.widthM() <= to)
                            .toList();
                    text.append(cell.isEmpty() ? "      -" : String.format(Locale.ROOT, " %6.1f", coverage(cell)));
                }
                text.append(" |");
            }
            text.append('\n');
        }
        return text.toString();
    }

    private static String calibration(List<Case> cases) {
        StringBuilder text = new StringBuilder(
                "\nchance of at most 15 %: estimated (mean), true share, tests; three families, true field CV 2-35 %\n");
        double[] ends = {0, 0.1, 0.5, 0.9, 1.0001};
        Map<TrayPlaces, StringBuilder> lines = new EnumMap<>(TrayPlaces.class);
        for (Case each : cases) {
            lines.computeIfAbsent(each.places(), places -> new StringBuilder());
        }
        for (TrayPlaces places : lines.keySet()) {
            text.append(String.format(Locale.ROOT, "%-15s", places));
            for (int i = 1; i < ends.length; i++) {
                double from = ends[i - 1];
                double to = ends[i];
                List<Case> cell = cases.stream()
                        .filter(each -> each.places() == places
                                && !each.family().equals(LIMIT)
                                && each.estimate().probabilityAtMost15() >= from
                                && each.estimate().probabilityAtMost15() < to)
                        .toList();
                text.append(String.format(
                        Locale.ROOT,
                        "  %5.1f %5.1f %5d",
                        100
                                * cell.stream()
                                        .mapToDouble(c -> c.estimate().probabilityAtMost15())
                                        .average()
                                        .orElse(0),
                        100
                                * cell.stream()
                                        .mapToDouble(c -> c.truePercent() <= 15 ? 1 : 0)
                                        .average()
                                        .orElse(0),
                        cell.size()));
            }
            text.append('\n');
        }
        return text.toString();
    }

    /** Prints the tables for so many machines a family and band (default 140). */
    public static void main(String[] args) {
        System.out.println(
                table(run(args.length > 0 ? Integer.parseInt(args[0]) : 140, FAMILIES.keySet(), places -> true)));
    }
}
