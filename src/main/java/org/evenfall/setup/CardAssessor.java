package org.evenfall.setup;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import org.evenfall.finding.Arg;
import org.evenfall.finding.Finding;
import org.evenfall.finding.Severity;
import org.evenfall.finding.Step;
import org.evenfall.machine.HeightResult;
import org.evenfall.machine.MachineCheckResult;
import org.evenfall.machine.MachineProfile;
import org.evenfall.rate.BucketResult;
import org.evenfall.reference.MatchResult;
import org.evenfall.setup.entry.Setup;
import org.evenfall.setup.entry.TrayTestEntry;
import org.evenfall.setup.entry.YesNo;
import org.jspecify.annotations.Nullable;

/** Step 7: may a card be made, and what settings go on it. */
final class CardAssessor {

    private CardAssessor() {}

    static CardResult assess(
            Setup setup,
            MachineProfile machine,
            @Nullable MatchResult match,
            MachineCheckResult machineCheck,
            @Nullable HeightResult height,
            RateResult rate,
            TraysResult trays,
            EntryReader reader) {
        reader.read(setup.card().windStop(), Fields.WIND, "/card/windStop", Step.CARD);
        reader.need(!setup.card().measuredBy().isBlank(), Step.CARD, "missing.measuredBy", "/card/measuredBy");
        reader.need(!setup.card().signedBy().isBlank(), Step.CARD, "missing.signedBy", "/card/signedBy");
        boolean dated = ProductAssessor.date(setup.card().date()) != null;
        if (!dated && !setup.card().date().isBlank()) {
            reader.add(Finding.stop(
                            Step.CARD, "entry.notADate", Arg.text(setup.card().date()))
                    .at("/card/date"));
        }
        reader.need(dated, Step.CARD, "missing.date", "/card/date");
        boolean findingOnly =
                match != null && match.outOfReach() && setup.match().trayTestOnly() != YesNo.YES;
        FinalSettings settings = settings(setup, machine, machineCheck, height, rate, trays);
        List<String> missing = new ArrayList<>();
        for (Finding finding : reader.findings()) {
            if (finding.key().startsWith("missing.") && !missing.contains(finding.key())) {
                missing.add(finding.key());
            }
        }
        boolean stopped = reader.findings().stream().anyMatch(finding -> finding.severity() == Severity.STOP);
        return new CardResult(missing.isEmpty() && !stopped && !findingOnly, findingOnly, missing, settings);
    }

    private static FinalSettings settings(
            Setup setup,
            MachineProfile machine,
            MachineCheckResult machineCheck,
            @Nullable HeightResult height,
            RateResult rate,
            TraysResult trays) {
        // read again without telling: the steps have told already
        EntryReader quiet = new EntryReader();
        ReadSettings start = MatchAssessor.settings(setup.match().settings(), machine, "", quiet, Step.CARD);
        ReadSettings tested = null;
        Double testedLeft = null;
        Double testedRight = null;
        if (!trays.tests().isEmpty()) {
            TrayTestEntry last = setup.trays()
                    .tests()
                    .get(trays.tests().get(trays.tests().size() - 1).index());
            tested = MatchAssessor.settings(last.settings(), machine, "", quiet, Step.CARD);
            testedLeft = quiet.read(last.openingLeft(), Fields.OPENING, "", Step.CARD);
            testedRight = quiet.read(last.openingRight(), Fields.OPENING, "", Step.CARD);
        }
        BucketResult bucket = rate.bucketTests().isEmpty()
                ? null
                : rate.bucketTests().get(rate.bucketTests().size() - 1);
        Map<String, Double> levers = tested == null || tested.levers().isEmpty() ? start.levers() : tested.levers();
        return new FinalSettings(
                levers,
                first(pick(tested, ReadSettings::ptoRpm), machineCheck.ptoRpm(), start.ptoRpm()),
                first(bucket == null ? null : Double.valueOf(bucket.openingLeft()), testedLeft, null),
                first(bucket == null ? null : Double.valueOf(bucket.openingRight()), testedRight, null),
                first(
                        pick(tested, ReadSettings::heightOverCropM),
                        height == null ? null : Double.valueOf(height.wantedOverCropM()),
                        first(start.heightOverCropM(), machine.wantedHeightM(), null)),
                first(pick(tested, ReadSettings::tiltDeg), start.tiltDeg(), null),
                rate.plan() == null ? null : rate.plan().flow().speedKmPerH());
    }

    private static @Nullable Double pick(
            @Nullable ReadSettings settings, Function<ReadSettings, @Nullable Double> value) {
        return settings == null ? null : value.apply(settings);
    }

    private static @Nullable Double first(@Nullable Double one, @Nullable Double two, @Nullable Double three) {
        if (one != null) {
            return one;
        }
        return two != null ? two : three;
    }
}
