package org.evenfall.setup;

import java.util.ArrayList;
import java.util.List;
import org.evenfall.finding.Arg;
import org.evenfall.machine.Lever;
import org.evenfall.quantity.Unit;
import org.evenfall.setup.entry.SettingsEntries;
import org.evenfall.setup.entry.TestConditionEntries;
import org.evenfall.setup.entry.TrayTestEntry;
import org.evenfall.setup.path.Entry;
import org.evenfall.setup.path.EntryPath;
import org.evenfall.setup.path.QuantityMap;
import org.evenfall.setup.path.SettingsPaths;
import org.evenfall.setup.path.TestConditionPaths;
import org.evenfall.setup.path.TrayPaths;
import org.evenfall.trays.WindLimits;
import org.jspecify.annotations.Nullable;

/** What of a tray test's conditions has changed by more than {@link ConditionRules} allow. */
final class TestDifferences {

    private final List<Lever> levers;
    private final ProductResult product;
    private final FlowChange flow;
    private final WindLimits wind;

    /**
     * Rules for the tests of one setup.
     *
     * @param levers levers of the machine
     * @param product the product as measured now
     * @param flow what another opening does to the flow
     * @param wind limits for the wind
     */
    TestDifferences(List<Lever> levers, ProductResult product, FlowChange flow, WindLimits wind) {
        this.levers = levers;
        this.product = product;
        this.flow = flow;
        this.wind = wind;
    }

    /** Whether a test is about the same field and product, so that it may be compared and learnt from. */
    static boolean comparable(TestConditions then, TestConditions now) {
        return ConditionRules.sameTramlines(then.tramlines(), now.tramlines())
                && sameOrOpen(then.product(), now.product());
    }

    /** What is not typed now is missing, not different. */
    private static boolean sameOrOpen(String then, String now) {
        return now.isEmpty() || ConditionRules.sameName(then, now);
    }

    /**
     * Everything that keeps a test from proving the present settings; empty where it proves them.
     *
     * @param at place of the test
     * @param windMPerS wind in the test, m/s; null where not known
     */
    List<ConditionDifference> of(
            EntryPath<TrayTestEntry> at, MachineSet then, MachineSet now, @Nullable Double windMPerS) {
        Differences found = new Differences(at);
        job(found, then.conditions(), now.conditions());
        LeverDifference.first(levers, then.settings(), now.settings())
                .ifPresent(lever -> found.all.add(
                        lever.at(QuantityMap.item(SettingsPaths.LEVERS.at(found.settings()), lever.label())
                                .pointer())));
        if (!ConditionRules.sameFlow(flow.percent(then.openings(), now.openings()))) {
            found.add(
                    ConditionKind.OPENING,
                    opening(then.openings()),
                    opening(now.openings()),
                    TrayPaths.TEST_OPENING_LEFT.at(at).pointer());
        }
        if (!ConditionRules.samePto(then.settings().ptoRpm(), now.settings().ptoRpm())) {
            found.add(
                    ConditionKind.PTO_SPEED,
                    number(then.settings().ptoRpm(), 0, Unit.RPM),
                    number(now.settings().ptoRpm(), 0, Unit.RPM),
                    SettingsPaths.PTO_SPEED.at(found.settings()).pointer());
        }
        if (windMPerS != null && wind.classify(windMPerS) == WindLimits.Strength.STOP) {
            found.add(
                    ConditionKind.WIND,
                    number(windMPerS, 1, Unit.M_PER_S),
                    number(wind.stopMPerS(), 1, Unit.M_PER_S),
                    TrayPaths.TEST_WIND.at(at).pointer());
        }
        return found.all;
    }

    private void job(Differences found, TestConditions then, TestConditions now) {
        if (!ConditionRules.sameWidth(then.tramlines(), now.tramlines())) {
            found.add(
                    ConditionKind.TRAMLINE_WIDTH,
                    metres(then.tramlines().widthM()),
                    metres(now.tramlines().widthM()),
                    TestConditionPaths.TRAMLINE_WIDTH);
        }
        if (!ConditionRules.sameDriving(then.tramlines(), now.tramlines())) {
            found.add(
                    ConditionKind.DRIVING_PATTERN,
                    Arg.word("choice.DrivingPattern." + then.tramlines().pattern()),
                    Arg.word("choice.DrivingPattern." + now.tramlines().pattern()),
                    TestConditionPaths.DRIVING_PATTERN);
        }
        product(found, then, now);
        if (then.partChanged() && !now.partChanged()) {
            found.add(ConditionKind.MACHINE_PART, Arg.text(""), Arg.text(""), TestConditionPaths.PART_CHANGED);
        }
        if (!ConditionRules.withinPercent(then.productKgPerHa(), now.productKgPerHa(), ConditionRules.RATE_PERCENT)) {
            found.add(
                    ConditionKind.RATE,
                    number(then.productKgPerHa(), 0, Unit.KG_PER_HA),
                    number(now.productKgPerHa(), 0, Unit.KG_PER_HA),
                    TestConditionPaths.PRODUCT_RATE);
        }
        if (!ConditionRules.withinPercent(then.speedKmPerH(), now.speedKmPerH(), ConditionRules.SPEED_PERCENT)) {
            found.add(
                    ConditionKind.SPEED,
                    number(then.speedKmPerH(), 1, Unit.KM_PER_H),
                    number(now.speedKmPerH(), 1, Unit.KM_PER_H),
                    TestConditionPaths.SPEED);
        }
        if (!ConditionRules.sameHeight(then.heightOverRimM(), now.heightOverRimM())) {
            found.add(
                    ConditionKind.HEIGHT,
                    centimetres(then.heightOverRimM()),
                    centimetres(now.heightOverRimM()),
                    TestConditionPaths.HEIGHT_OVER_RIM);
        }
    }

    private void product(Differences found, TestConditions then, TestConditions now) {
        if (!sameOrOpen(then.product(), now.product())) {
            found.add(
                    ConditionKind.PRODUCT,
                    Arg.text(then.product()),
                    Arg.text(now.product()),
                    TestConditionPaths.PRODUCT);
        } else if (!sameOrOpen(then.delivery(), now.delivery())) {
            DeliveryCheck.Answer answer = DeliveryCheck.of(then, product);
            if (answer != DeliveryCheck.Answer.ALIKE) {
                found.add(
                        answer == DeliveryCheck.Answer.DIFFERENT ? ConditionKind.DENSITY : ConditionKind.DELIVERY,
                        Arg.text(then.delivery()),
                        Arg.text(now.delivery()),
                        TestConditionPaths.DELIVERY);
            }
        }
    }

    private static Arg opening(Openings openings) {
        return number(openings.left(), 1, Unit.NONE);
    }

    private static Arg metres(double metres) {
        return Arg.number(metres, 0, Unit.M);
    }

    private static Arg centimetres(@Nullable Double metres) {
        return number(metres == null ? null : Unit.M.to(Unit.CM, metres), 0, Unit.CM);
    }

    private static Arg number(@Nullable Double value, int decimals, Unit unit) {
        return value == null ? Arg.text("") : Arg.number(value, decimals, unit);
    }

    /** What was found of one test. */
    private static final class Differences {
        private final List<ConditionDifference> all = new ArrayList<>();
        private final EntryPath<TrayTestEntry> at;

        Differences(EntryPath<TrayTestEntry> at) {
            this.at = at;
        }

        EntryPath<SettingsEntries> settings() {
            return TrayPaths.TEST_SETTINGS.at(at);
        }

        void add(ConditionKind kind, Arg then, Arg now, Entry<TestConditionEntries, ?> entry) {
            add(kind, then, now, entry.at(TrayPaths.TEST_CONDITIONS.at(at)).pointer());
        }

        void add(ConditionKind kind, Arg then, Arg now, String field) {
            all.add(new ConditionDifference(kind, then, now, field));
        }
    }
}
