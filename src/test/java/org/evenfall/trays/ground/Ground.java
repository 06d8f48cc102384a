package org.evenfall.trays.ground;

import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;

/**
 * Whole test-and-adjust loops on virtual machines of several families, by the advice and by other rules on the same machines
 * with the same noise. Arguments: {@code family=ballistic,measured rule=advice,naive count=80 seed=1 trays=seven faults}; without
 * {@code rule} all but {@code bound}, which is slow; {@code rule=none} for the faults alone.
 */
public final class Ground {

    private Ground() {}

    /** Prints the tables. */
    public static void main(String[] args) {
        Map<String, String> options = new TreeMap<>(Map.of("count", "80", "seed", "1", "trays", "proposed"));
        for (String arg : args) {
            String[] parts = arg.split("=", 2);
            options.put(parts[0], parts.length > 1 ? parts[1] : "");
        }
        int count = Integer.parseInt(options.get("count"));
        long seed = Long.parseLong(options.get("seed"));
        List<Rules> rules = options.containsKey("rule") ? chosen(Rules.values(), options.get("rule")) : Rules.QUICK;
        for (Family family : chosen(Family.values(), options.get("family"))) {
            long from = System.nanoTime();
            List<Site> sites = family.sites(count, seed, options.get("trays").equals("seven"));
            System.out.print(loops(family, sites, rules));
            if (options.containsKey("faults")) {
                System.out.print(FaultTable.of(sites));
            }
            System.out.printf(Locale.ROOT, "%.0f s%n%n", (System.nanoTime() - from) / 1e9);
        }
    }

    private static <E extends Enum<E>> List<E> chosen(E[] all, String names) {
        return names == null
                ? List.of(all)
                : Arrays.stream(all)
                        .filter(one ->
                                List.of(names.split(",")).contains(one.name().toLowerCase(Locale.ROOT)))
                        .toList();
    }

    /** The table of the loops of some rules. */
    static String loops(Family family, List<Site> sites, List<Rules> rules) {
        Map<Rules, List<Loop>> done = new EnumMap<>(Rules.class);
        rules.forEach(rule -> done.put(rule, rule.run(sites)));
        double naiveTests = done.containsKey(Rules.NAIVE) ? LoopTable.meanTests(done.get(Rules.NAIVE)) : Double.NaN;
        StringBuilder table = new StringBuilder();
        table.append(String.format(
                Locale.ROOT,
                "%s: %d machines, %d up to 21 m, %d folded at the start, CV at the start %.0f %% in the median%n",
                family.name().toLowerCase(Locale.ROOT),
                sites.size(),
                sites.stream().filter(site -> site.job().widthM() <= 21).count(),
                sites.stream().filter(Site::folded).count(),
                sites.stream()
                        .mapToDouble(site -> site.trueCv(site.start()))
                        .sorted()
                        .skip(sites.size() / 2)
                        .findFirst()
                        .orElseThrow()));
        table.append(LoopTable.HEAD).append('\n');
        done.forEach((rule, loops) ->
                table.append(LoopTable.line(rule.name(), loops, naiveTests)).append('\n'));
        return table.toString();
    }
}
