package org.evenfall.setup;

import java.util.ArrayList;
import java.util.List;
import org.evenfall.finding.Finding;
import org.evenfall.finding.FindingKind;
import org.evenfall.finding.Step;
import org.evenfall.machine.HeightResult;
import org.evenfall.machine.MachineCheckResult;
import org.evenfall.machine.MachineProfile;
import org.evenfall.rate.BucketResult;
import org.evenfall.reference.MatchResult;
import org.evenfall.setup.entry.YesNo;
import org.evenfall.setup.path.CardPaths;
import org.evenfall.setup.path.MatchPaths;
import org.evenfall.setup.path.ProductPaths;
import org.evenfall.trays.EvennessVerdict;
import org.evenfall.trays.Uniformity;
import org.jspecify.annotations.Nullable;

/** Step 7: may a card be made, and what settings go on it. */
final class CardAssessor {

    private final ReadSetup read;
    private final @Nullable MatchResult match;
    private final @Nullable TrayTestResult proof;
    private final boolean tested;

    private CardAssessor(ReadSetup read, @Nullable MatchResult match, TraysResult trays) {
        this.read = read;
        this.match = match;
        this.proof = trays.proof();
        this.tested = trays.last() != null;
    }

    /** @param before all findings of the steps before */
    static Assessed<CardResult> assess(
            ReadSetup read,
            @Nullable MatchResult match,
            TraysResult trays,
            FinalSettings settings,
            List<Finding> before) {
        return new CardAssessor(read, match, trays).card(settings, before);
    }

    private Assessed<CardResult> card(FinalSettings settings, List<Finding> before) {
        List<Finding> findings = new ArrayList<>();
        Double uneven = unevenPercent();
        if (uneven != null && read.isBlank(CardPaths.UNEVEN_REASON)) {
            findings.add(Finding.missing(Step.CARD, "missing.unevenReason").at(CardPaths.UNEVEN_REASON.pointer()));
        }
        List<Finding> all = new ArrayList<>(before);
        all.addAll(findings);
        List<String> missing = all.stream()
                .filter(finding -> finding.kind() == FindingKind.MISSING)
                .map(Finding::key)
                .distinct()
                .toList();
        boolean stopped = all.stream().anyMatch(finding -> finding.kind() == FindingKind.STOP);
        boolean findingOnly = findingOnly() && !read.isBlank(CardPaths.SIGNED_BY);
        return new Assessed<>(
                new CardResult(
                        missing.isEmpty() && !stopped && !findingOnly,
                        findingOnly,
                        missing,
                        settings,
                        uneven,
                        testedDelivery()),
                findings);
    }

    /** Instead of a card: too uneven to spread, or out of reach by the model and the person wants no tray test. */
    private boolean findingOnly() {
        if (proof != null) {
            return proof.evenness().verdict() == EvennessVerdict.DO_NOT_SPREAD;
        }
        return match != null && match.outOfReach() && !tested && read.get(MatchPaths.TRAY_TEST_ONLY) == YesNo.NO;
    }

    /** Field CV of a test that is not even enough, but may be spread with a reason, %; else null. */
    private @Nullable Double unevenPercent() {
        Uniformity evenness = proof == null ? null : proof.evenness();
        return evenness != null && evenness.verdict() == EvennessVerdict.NOT_EVEN_ENOUGH
                ? Double.valueOf(evenness.field().medianPercent())
                : null;
    }

    /** The delivery that was tested, where it is another one than now; else empty. */
    private String testedDelivery() {
        return proof == null || ConditionRules.sameName(proof.conditions().delivery(), read.get(ProductPaths.DELIVERY))
                ? ""
                : proof.conditions().delivery();
    }

    /**
     * The settings that go on the card: those of the tray test that proves them, else of the last test, else as measured,
     * else those to start from. The opening is that of the last bucket test that counts.
     */
    static FinalSettings settings(
            MachineProfile machine,
            ReadSettings start,
            MachineCheckResult check,
            @Nullable HeightResult height,
            RateResult rate,
            TraysResult trays) {
        TrayTestResult test = trays.proof() == null ? trays.last() : trays.proof();
        ReadSettings tested = test == null ? null : test.settings();
        BucketResult bucket = rate.lastBucket();
        return new FinalSettings(
                tested == null || tested.levers().isEmpty() ? start.levers() : tested.levers(),
                first(tested == null ? null : tested.ptoRpm(), check.ptoRpm(), start.ptoRpm()),
                bucket == null ? (test == null ? null : test.openingLeft()) : Double.valueOf(bucket.openingLeft()),
                bucket == null ? (test == null ? null : test.openingRight()) : Double.valueOf(bucket.openingRight()),
                first(SetNow.heightM(machine, start, height), tested == null ? null : tested.heightOverCropM(), null),
                first(tested == null ? null : tested.tiltDeg(), start.tiltDeg(), null),
                SetNow.speedKmPerH(rate));
    }

    private static @Nullable Double first(@Nullable Double one, @Nullable Double two, @Nullable Double three) {
        if (one != null) {
            return one;
        }
        return two != null ? two : three;
    }
}
