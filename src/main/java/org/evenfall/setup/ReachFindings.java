package org.evenfall.setup;

import java.util.ArrayList;
import java.util.List;
import org.evenfall.finding.Arg;
import org.evenfall.finding.Finding;
import org.evenfall.finding.Step;
import org.evenfall.quantity.Interval;
import org.evenfall.quantity.Unit;
import org.evenfall.reference.MatchResult;
import org.evenfall.reference.Reachability;
import org.evenfall.setup.entry.YesNo;
import org.evenfall.setup.path.MatchPaths;
import org.evenfall.trays.EvennessVerdict;
import org.jspecify.annotations.Nullable;

/**
 * How far the product flies and whether it can reach the tramline width, by the model. “Probably not” is a warning; an even
 * tray test at this width lifts it.
 */
final class ReachFindings {

    private static final String FLIGHT = "source.flightModel";

    private static final String REACH = "source.reach";

    private ReachFindings() {}

    /** How far the product flies and whether that is enough; nothing while the product or the width is not known. */
    static List<Finding> ofProduct(@Nullable MatchResult match, @Nullable Double tramlineWidthM) {
        List<Finding> findings = new ArrayList<>();
        if (match != null && tramlineWidthM != null && match.widestReachableM() != null) {
            againstDense(match, findings);
            findings.add(Finding.note(
                            Step.PRODUCT,
                            "product.reach." + match.reachability(),
                            Arg.number(tramlineWidthM, 0, Unit.M),
                            Arg.number(match.widestReachableM(), 0, Unit.M))
                    .from(REACH));
        }
        return findings;
    }

    /** The warning, and how a tray test lifts it. */
    static List<Finding> ofMatch(
            ReadSetup read, @Nullable MatchResult match, TraysResult trays, @Nullable Double tramlineWidthM) {
        if (match == null || tramlineWidthM == null || match.widestReachableM() == null) {
            return List.of();
        }
        Arg widest = Arg.number(match.widestReachableM(), 0, Unit.M);
        Arg width = Arg.number(tramlineWidthM, 0, Unit.M);
        if (match.outOfReach()) {
            boolean wanted = trays.last() != null || read.get(MatchPaths.TRAY_TEST_ONLY) == YesNo.YES;
            Finding finding = proved(trays)
                    ? Finding.note(Step.MATCH, "match.outOfReachProved", width, widest)
                    : Finding.warn(Step.MATCH, wanted ? "match.outOfReachTray" : "match.outOfReach", width, widest);
            return List.of(finding.at(MatchPaths.TRAY_TEST_ONLY.pointer()).from(REACH));
        }
        return match.reachability() == Reachability.DOUBTFUL && !proved(trays)
                ? List.of(Finding.warn(Step.MATCH, "match.reachDoubtful", width, widest)
                        .from(REACH))
                : List.of();
    }

    /** How much less far, or further, than a dense 27 % N product; only where its error does not explain it. */
    private static void againstDense(MatchResult match, List<Finding> findings) {
        Interval interval = match.throwAgainstDenseIntervalM();
        if (interval == null || match.throwAgainstDenseM() == null) {
            return;
        }
        boolean shorter = interval.high() < 0;
        if (shorter || interval.low() > 0) {
            double sign = shorter ? -1 : 1;
            findings.add(Finding.note(
                            Step.PRODUCT,
                            shorter ? "product.fliesShorter" : "product.fliesFurther",
                            Arg.number(sign * match.throwAgainstDenseM(), 0, Unit.M),
                            Arg.number(shorter ? -interval.high() : interval.low(), 0, Unit.NONE),
                            Arg.number(shorter ? -interval.low() : interval.high(), 0, Unit.M))
                    .from(FLIGHT));
        } else {
            findings.add(Finding.note(Step.PRODUCT, "product.fliesAlike").from(FLIGHT));
        }
    }

    private static boolean proved(TraysResult trays) {
        TrayTestResult proof = trays.proof();
        if (proof == null) {
            return false;
        }
        EvennessVerdict verdict = proof.evenness().verdict();
        return verdict == EvennessVerdict.EVEN || verdict == EvennessVerdict.PROBABLY_EVEN;
    }
}
