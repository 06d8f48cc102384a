package org.evenfall.setup;

import java.util.List;
import org.evenfall.finding.Finding;
import org.evenfall.finding.FindingKind;
import org.evenfall.machine.HeightResult;
import org.evenfall.machine.MachineCheckResult;
import org.evenfall.machine.MachineProfile;
import org.evenfall.rate.BucketResult;
import org.evenfall.reference.MatchResult;
import org.evenfall.setup.entry.YesNo;
import org.evenfall.setup.path.MatchPaths;
import org.jspecify.annotations.Nullable;

/** Step 7: may a card be made, and what settings go on it. */
final class CardAssessor {

    private CardAssessor() {}

    /** @param findings all findings of the steps before */
    static CardResult assess(
            ReadSetup read, @Nullable MatchResult match, FinalSettings settings, List<Finding> findings) {
        boolean findingOnly = match != null && match.outOfReach() && read.get(MatchPaths.TRAY_TEST_ONLY) != YesNo.YES;
        List<String> missing = findings.stream()
                .filter(finding -> finding.kind() == FindingKind.MISSING)
                .map(Finding::key)
                .distinct()
                .toList();
        boolean stopped = findings.stream().anyMatch(finding -> finding.kind() == FindingKind.STOP);
        return new CardResult(missing.isEmpty() && !stopped && !findingOnly, findingOnly, missing, settings);
    }

    /** The settings that go on the card: those of the last tray test, else as measured, else those to start from. */
    static FinalSettings settings(
            MachineProfile machine,
            ReadSettings start,
            MachineCheckResult check,
            @Nullable HeightResult height,
            RateResult rate,
            TraysResult trays) {
        TrayTestResult last = trays.last();
        ReadSettings tested = last == null ? null : last.settings();
        BucketResult bucket = rate.lastBucket();
        return new FinalSettings(
                tested == null || tested.levers().isEmpty() ? start.levers() : tested.levers(),
                first(tested == null ? null : tested.ptoRpm(), check.ptoRpm(), start.ptoRpm()),
                bucket == null ? (last == null ? null : last.openingLeft()) : Double.valueOf(bucket.openingLeft()),
                bucket == null ? (last == null ? null : last.openingRight()) : Double.valueOf(bucket.openingRight()),
                first(
                        tested == null ? null : tested.heightOverCropM(),
                        height == null ? null : Double.valueOf(height.wantedOverCropM()),
                        first(start.heightOverCropM(), machine.wantedHeightM(), null)),
                first(tested == null ? null : tested.tiltDeg(), start.tiltDeg(), null),
                rate.plan() == null ? null : rate.plan().flow().speedKmPerH());
    }

    private static @Nullable Double first(@Nullable Double one, @Nullable Double two, @Nullable Double three) {
        if (one != null) {
            return one;
        }
        return two != null ? two : three;
    }
}
