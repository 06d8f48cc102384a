package org.evenfall.setup;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.evenfall.finding.Arg;
import org.evenfall.finding.Finding;
import org.evenfall.finding.Step;
import org.evenfall.granule.BulkDensity;
import org.evenfall.machine.Lever;
import org.evenfall.machine.MachineProfile;
import org.evenfall.quantity.EnteredQuantity;
import org.evenfall.quantity.Unit;
import org.evenfall.setup.entry.BucketEntry;
import org.evenfall.setup.entry.SettingsEntries;
import org.evenfall.setup.path.EntryPath;
import org.evenfall.setup.path.ProductPaths;
import org.evenfall.setup.path.QuantityMap;
import org.evenfall.setup.path.RatePaths;
import org.evenfall.setup.path.SettingsPaths;
import org.jspecify.annotations.Nullable;

/**
 * What a bucket test was caught with, against the setup. Another delivery or density flows otherwise, so the test proves
 * nothing; other levers or another PTO speed may change the flow, which is reported until the test is repeated.
 */
final class BucketConditions {

    /** Key of a difference, before its kind. */
    static final String DIFFERS = "rate.differs.";

    private final ReadSetup read;
    private final EntryPath<BucketEntry> at;
    private final int number;

    /** @param index which of the entered tests, from 0 */
    BucketConditions(ReadSetup read, int index) {
        this.read = read;
        this.at = RatePaths.BUCKET_TESTS.item(index);
        this.number = index + 1;
    }

    /** Why the test proves nothing; empty where its product is that of the setup, or not stated. */
    Optional<Finding> worthless(@Nullable BulkDensity now) {
        EntryPath<String> delivery = RatePaths.BUCKET_DELIVERY.at(at);
        String then = delivery.get(read.setup()).strip();
        String today = read.get(ProductPaths.DELIVERY).strip();
        if (!then.isEmpty() && !today.isEmpty() && !ConditionRules.sameName(then, today)) {
            return Optional.of(missing(ConditionKind.DELIVERY, Arg.text(then), Arg.text(today))
                    .at(delivery.pointer()));
        }
        Double density = read.number(RatePaths.BUCKET_BULK_DENSITY, at);
        if (density != null && now != null && !DeliveryCheck.isAlike(density, now)) {
            return Optional.of(missing(
                            ConditionKind.DENSITY,
                            Arg.number(density, 2, Unit.KG_PER_L),
                            Arg.number(now.meanKgPerL(), 2, Unit.KG_PER_L))
                    .at(RatePaths.BUCKET_BULK_DENSITY.at(at).pointer()));
        }
        return Optional.empty();
    }

    private Finding missing(ConditionKind kind, Arg then, Arg now) {
        return Finding.missing(Step.RATE, DIFFERS + kind, Arg.count(number), then, now)
                .from(kind.source());
    }

    /** What the test does not state and what was set otherwise than on the card. */
    List<Finding> settings(MachineProfile machine, FinalSettings card, @Nullable BulkDensity density) {
        List<Finding> findings = new ArrayList<>();
        List<Arg> assumed = new ArrayList<>();
        if (RatePaths.BUCKET_DELIVERY.at(at).get(read.setup()).isBlank() && !read.isBlank(ProductPaths.DELIVERY)) {
            assumed.add(Arg.word(RatePaths.BUCKET_DELIVERY.labelKey()));
        }
        if (blank(RatePaths.BUCKET_BULK_DENSITY.at(at)) && density != null) {
            assumed.add(Arg.word(RatePaths.BUCKET_BULK_DENSITY.labelKey()));
        }
        EntryPath<SettingsEntries> settings = RatePaths.BUCKET_SETTINGS.at(at);
        levers(settings, machine, card, findings, assumed);
        pto(settings, card, findings, assumed);
        if (!assumed.isEmpty()) {
            findings.add(Finding.warn(Step.RATE, "rate.assumed", Arg.count(number), new Arg.Series(assumed))
                    .at(at.pointer()));
        }
        return findings;
    }

    private void levers(
            EntryPath<SettingsEntries> settings,
            MachineProfile machine,
            FinalSettings card,
            List<Finding> findings,
            List<Arg> assumed) {
        ReadSettings stated = SettingsAssessor.assess(read, settings, machine).present();
        List<Lever> compared = machine.levers().stream()
                .filter(lever -> stated.levers().containsKey(lever.label())
                        && card.levers().containsKey(lever.label()))
                .toList();
        if (compared.isEmpty() && !card.levers().isEmpty()) {
            assumed.add(Arg.word(SettingsPaths.LEVERS.labelKey()));
        }
        LeverDifference.first(compared, stated, new ReadSettings(card.levers(), null, null, null))
                .map(lever -> lever.at(QuantityMap.item(SettingsPaths.LEVERS.at(settings), lever.label())
                        .pointer()))
                .ifPresent(lever -> findings.add(Finding.warn(Step.RATE, DIFFERS + lever.kind(), lever.args(number))
                        .from(lever.kind().source())
                        .at(lever.field())));
    }

    private void pto(
            EntryPath<SettingsEntries> settings, FinalSettings card, List<Finding> findings, List<Arg> assumed) {
        EntryPath<EnteredQuantity> path = SettingsPaths.PTO_SPEED.at(settings);
        Double then = read.number(path);
        Double now = card.ptoRpm();
        if (now != null && blank(path)) {
            assumed.add(Arg.word(SettingsPaths.PTO_SPEED.labelKey()));
        }
        if (then != null && now != null && !ConditionRules.samePto(then, now)) {
            findings.add(Finding.warn(
                            Step.RATE,
                            DIFFERS + ConditionKind.PTO_SPEED,
                            Arg.count(number),
                            Arg.number(then, 0, Unit.RPM),
                            Arg.number(now, 0, Unit.RPM))
                    .from(ConditionKind.PTO_SPEED.source())
                    .at(path.pointer()));
        }
    }

    private boolean blank(EntryPath<EnteredQuantity> path) {
        return path.get(read.setup()).isBlank();
    }
}
