package org.evenfall.trays.ground;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.evenfall.trays.AdviceKind;

/** The first advice on machines with a fault: how often each kind, and how often the right cause. */
final class FaultTable {

    private FaultTable() {}

    static String of(List<Site> sites) {
        StringBuilder table = new StringBuilder();
        table.append(String.format(
                Locale.ROOT,
                "%-13s %-4s %6s | %-9s %5s %5s | %s%n",
                "fault",
                "set",
                "true",
                "owner",
                "right",
                "lever",
                "first advice"));
        for (Fault fault : EnumSet.range(Fault.NONE, Fault.TRAY_ZERO)) {
            for (boolean wellSet : new boolean[] {true, false}) {
                for (FaultTrial.Owner owner : FaultTrial.Owner.values()) {
                    table.append(line(sites, fault, wellSet, owner));
                }
            }
        }
        return table.toString();
    }

    private static String line(List<Site> sites, Fault fault, boolean wellSet, FaultTrial.Owner owner) {
        List<FaultTrial> trials = sites.parallelStream()
                .map(site -> FaultTrial.run(site, fault, wellSet, owner))
                .toList();
        Set<AdviceKind> right = FaultTrial.right(fault, wellSet, owner);
        return String.format(
                Locale.ROOT,
                "%-13s %-4s %6.1f | %-9s %4.0f%% %4.0f%% | %s%n",
                fault.name().toLowerCase(Locale.ROOT),
                wellSet ? "well" : "mis",
                median(trials.stream().mapToDouble(FaultTrial::truePercent).toArray()),
                owner.name().toLowerCase(Locale.ROOT),
                LoopTable.share(trials, trial -> right.contains(trial.kind())),
                LoopTable.share(trials, trial -> trial.kind() == AdviceKind.MOVE_LEVER),
                kinds(trials));
    }

    private static String kinds(List<FaultTrial> trials) {
        Map<AdviceKind, Long> counts =
                trials.stream().collect(Collectors.groupingBy(FaultTrial::kind, TreeMap::new, Collectors.counting()));
        List<String> words = new ArrayList<>();
        counts.forEach((kind, count) -> words.add(kind.name().toLowerCase(Locale.ROOT) + " " + count));
        return String.join(", ", words);
    }

    private static double median(double[] values) {
        Arrays.sort(values);
        return values[values.length / 2];
    }
}
