package org.evenfall.trays.proof;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** The cases of a proof as tables: coverage and width by band, coverage by tramline width, calibration of the chance. */
final class ProofTable {

    private ProofTable() {}

    /** The tables of coverage and of calibration, ready to print. */
    static String of(List<Proof.Case> cases) {
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
        List<String> families = new ArrayList<>(Proof.FAMILIES.keySet());
        families.add("all");
        for (String family : families) {
            for (TrayPlaces places : TrayPlaces.values()) {
                List<Proof.Case> row = cases.stream()
                        .filter(each -> each.places() == places
                                && (family.equals("all")
                                        ? !each.family().equals(Proof.LIMIT)
                                        : each.family().equals(family)))
                        .toList();
                if (!row.isEmpty()) {
                    text.append(row(family, places, row));
                }
            }
        }
        return text.append(widths(cases)).append(calibration(cases)).toString();
    }

    private static String row(String family, TrayPlaces places, List<Proof.Case> row) {
        StringBuilder text = new StringBuilder(String.format(Locale.ROOT, "%-10s %-15s", family, places));
        for (int band = 0; band < ProofMachine.BANDS_PERCENT.length - 1; band++) {
            int wanted = band;
            text.append(cell(row.stream().filter(each -> each.band() == wanted).toList()));
        }
        List<Proof.Case> upper = row.stream().filter(each -> each.band() > 0).toList();
        return text.append(cell(upper))
                .append(String.format(Locale.ROOT, " %6d%n", upper.size()))
                .toString();
    }

    private static String cell(List<Proof.Case> cases) {
        if (cases.isEmpty()) {
            return "            -";
        }
        return String.format(Locale.ROOT, " %5.1f (%4.1f)", Proof.coverage(cases), Proof.meanWidth(cases));
    }

    private static String widths(List<Proof.Case> cases) {
        StringBuilder text = new StringBuilder(
                "\ncoverage by tramline width, %, true field CV 5-35 %: in each family up to 20, 27, 34 and 50 m\n");
        double[] ends = {0, 20.5, 27.5, 34, 50};
        for (TrayPlaces places : TrayPlaces.values()) {
            text.append(String.format(Locale.ROOT, "%-15s", places));
            for (String family : Proof.FAMILIES.keySet()) {
                for (int i = 1; i < ends.length; i++) {
                    double from = ends[i - 1];
                    double to = ends[i];
                    List<Proof.Case> cell = cases.stream()
                            .filter(each -> each.places() == places
                                    && each.band() > 0
                                    && each.family().equals(family)
                                    && each.widthM() > from
                                    && each.widthM() <= to)
                            .toList();
                    text.append(
                            cell.isEmpty() ? "      -" : String.format(Locale.ROOT, " %6.1f", Proof.coverage(cell)));
                }
                text.append(" |");
            }
            text.append('\n');
        }
        return text.toString();
    }

    private static String calibration(List<Proof.Case> cases) {
        StringBuilder text = new StringBuilder(
                "\nchance of at most 15 %: estimated (mean), true share, tests; three families, true field CV 2-35 %\n");
        double[] ends = {0, 0.1, 0.5, 0.9, 1.0001};
        Map<TrayPlaces, StringBuilder> lines = new EnumMap<>(TrayPlaces.class);
        for (Proof.Case each : cases) {
            lines.computeIfAbsent(each.places(), places -> new StringBuilder());
        }
        for (TrayPlaces places : lines.keySet()) {
            text.append(String.format(Locale.ROOT, "%-15s", places));
            for (int i = 1; i < ends.length; i++) {
                double from = ends[i - 1];
                double to = ends[i];
                List<Proof.Case> cell = cases.stream()
                        .filter(each -> each.places() == places
                                && !each.family().equals(Proof.LIMIT)
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
}
