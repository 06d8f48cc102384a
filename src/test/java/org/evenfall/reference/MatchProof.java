package org.evenfall.reference;

import java.util.EnumMap;
import java.util.Locale;
import java.util.Map;
import org.evenfall.flight.ThrowAssumptions;

/** How well the match does on {@link VirtualLibraries}: counts, and as lines of a table. */
final class MatchProof {

    /** Upper ends of the bands of stated chances. */
    static final double[] BANDS = {0.02, 0.1, 0.3, 0.5, 0.7, 0.9, 1.0001};

    /** A count of those that hold among all. */
    static final class Share {
        private int all;
        private int hold;
        private double stated;

        void add(boolean holds, double chance) {
            all++;
            hold += holds ? 1 : 0;
            stated += chance;
        }

        int count() {
            return all;
        }

        double percent() {
            return 100.0 * hold / all;
        }

        /** Mean of the stated chances, %. */
        double statedPercent() {
            return 100 * stated / all;
        }
    }

    final Share first = new Share();
    final Share firstSieved = new Share();
    final Share inThree = new Share();
    final Share neighbourFirst = new Share();
    final Share[] chances = new Share[BANDS.length];
    final Map<VirtualLibraries.Known, Share> covered = new EnumMap<>(VirtualLibraries.Known.class);

    private MatchProof() {
        for (int i = 0; i < chances.length; i++) {
            chances[i] = new Share();
        }
        for (VirtualLibraries.Known known : VirtualLibraries.Known.values()) {
            covered.put(known, new Share());
        }
    }

    /**
     * Matches so many new products.
     *
     * @param takeOffDeg true take-off; the program assumes 5°
     * @param bulkError relative error of every bulk density
     * @param d50Error error of every ln d50
     */
    static MatchProof run(int queries, double takeOffDeg, double bulkError, double d50Error) {
        ThrowAssumptions truth = new ThrowAssumptions(takeOffDeg, 0.14, 1);
        VirtualLibraries libraries = new VirtualLibraries(20261126, truth, bulkError, d50Error);
        MatchProof proof = new MatchProof();
        for (int i = 0; i < queries; i++) {
            proof.add(libraries.query(), truth, i);
        }
        return proof;
    }

    private void add(VirtualLibraries.Query query, ThrowAssumptions truth, long seed) {
        Comparisons product = Comparisons.of(query.candidate(), Examples.FIELD);
        ReferenceOrder order =
                ReferenceOrder.of(product, product.with(query.library()), seed, 1000, ProgressMonitor.NONE);
        double ownM = query.truth().edgeM(truth);
        int rank = 0;
        for (ReferenceOrder.Place place : order.places()) {
            int index = query.library().indexOf(place.comparison().reference);
            boolean closest = index == query.closest();
            if (closest && query.same()) {
                first.add(rank == 0, 0);
                inThree.add(rank < 3, 0);
                if (query.known().get(index) == VirtualLibraries.Known.SIEVED) {
                    firstSieved.add(rank == 0, 0);
                }
            } else if (closest) {
                neighbourFirst.add(rank == 0, 0);
            }
            int band = 0;
            while (place.chance() > BANDS[band]) {
                band++;
            }
            chances[band].add(closest, place.chance());
            double differenceM = ownM - query.truths().get(index).edgeM(truth);
            covered.get(query.known().get(index))
                    .add(place.comparison().throwIntervalM().contains(differenceM), 0);
            rank++;
        }
    }

    /** As lines of a table. */
    String table(String title) {
        StringBuilder text = new StringBuilder(String.format(
                Locale.ROOT,
                "%s%n  measured again: first %.0f %%, sieved %.0f %%, in three %.0f %%; neighbour first %.0f %%%n  throw interval holds:",
                title,
                first.percent(),
                firstSieved.percent(),
                inThree.percent(),
                neighbourFirst.percent()));
        covered.forEach(
                (known, share) -> text.append(String.format(Locale.ROOT, " %s %.0f %%", known, share.percent())));
        text.append(String.format(Locale.ROOT, "%n  chance stated, true:"));
        for (Share share : chances) {
            text.append(String.format(
                    Locale.ROOT, " %.0f, %.0f (%d);", share.statedPercent(), share.percent(), share.count()));
        }
        return text.append(System.lineSeparator()).toString();
    }
}
