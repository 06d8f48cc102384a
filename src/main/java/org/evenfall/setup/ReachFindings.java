package org.evenfall.setup;

import java.util.List;
import org.evenfall.finding.Arg;
import org.evenfall.finding.Finding;
import org.evenfall.finding.Step;
import org.evenfall.quantity.Unit;
import org.evenfall.reference.MatchResult;
import org.evenfall.setup.entry.YesNo;
import org.evenfall.setup.path.MatchPaths;
import org.evenfall.trays.EvennessVerdict;
import org.jspecify.annotations.Nullable;

/** The model's “not at this width” is a warning; an even tray test at this width lifts it. */
final class ReachFindings {

    private ReachFindings() {}

    /** Nothing while the model sees no limit. */
    static List<Finding> of(
            ReadSetup read, @Nullable MatchResult match, TraysResult trays, @Nullable Double tramlineWidthM) {
        if (match == null || tramlineWidthM == null || !match.outOfReach()) {
            return List.of();
        }
        Arg widest = Arg.number(match.widestReachableM() == null ? 0 : match.widestReachableM(), 0, Unit.M);
        Arg width = Arg.number(tramlineWidthM, 0, Unit.M);
        boolean wanted = trays.last() != null || read.get(MatchPaths.TRAY_TEST_ONLY) == YesNo.YES;
        Finding finding = proved(trays)
                ? Finding.note(Step.MATCH, "match.outOfReachProved", width, widest)
                : Finding.warn(Step.MATCH, wanted ? "match.outOfReachTray" : "match.outOfReach", width, widest);
        return List.of(finding.at(MatchPaths.TRAY_TEST_ONLY.pointer()));
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
