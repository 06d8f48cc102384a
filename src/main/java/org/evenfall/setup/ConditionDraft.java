package org.evenfall.setup;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.evenfall.flight.DrivingPattern;
import org.evenfall.quantity.EnteredQuantity;
import org.evenfall.quantity.Unit;
import org.evenfall.rate.BucketResult;
import org.evenfall.setup.entry.BucketEntry;
import org.evenfall.setup.entry.SettingsEntries;
import org.evenfall.setup.entry.Setup;
import org.evenfall.setup.entry.TestConditionEntries;
import org.evenfall.setup.entry.TrayTestEntry;
import org.jspecify.annotations.Nullable;

/**
 * Writes what is set now into a test as its conditions: when the test is begun, and when a person confirms an older test
 * that does not state them. What a test states stays.
 */
public final class ConditionDraft {

    /** Four decimals: a text that no reader takes for a thousand. */
    private static final int DECIMALS = 4;

    private final Setup setup;
    private final Assessment assessment;
    private final NumberWriter numbers;

    private ConditionDraft(Setup setup, Assessment assessment, NumberWriter numbers) {
        this.setup = setup;
        this.assessment = assessment;
        this.numbers = numbers;
    }

    /**
     * A tray test with the conditions it does not state filled in.
     *
     * @param assessment assessment of the setup
     * @param numbers writes the numbers
     */
    static TrayTestEntry stated(TrayTestEntry test, Setup setup, Assessment assessment, NumberWriter numbers) {
        return new ConditionDraft(setup, assessment, numbers).stated(test);
    }

    /** A bucket test with the conditions it does not state filled in. */
    static BucketEntry stated(BucketEntry test, Setup setup, Assessment assessment, NumberWriter numbers) {
        return new ConditionDraft(setup, assessment, numbers).stated(test);
    }

    /**
     * The setup with the conditions of a bucket test that was begun by typing into its blank fields; every other change
     * stays as it is.
     *
     * @param next the setup as changed
     * @param before the setup before
     * @param assessment assessment of the setup before
     * @param numbers writes the numbers
     */
    public static Setup begun(Setup next, Setup before, Assessment assessment, NumberWriter numbers) {
        List<BucketEntry> tests = next.rate().bucketTests();
        int count = before.rate().bucketTests().size();
        boolean one = tests.size() == count + 1
                && tests.subList(0, count).equals(before.rate().bucketTests());
        BucketEntry begun = one ? tests.get(count) : BucketEntry.EMPTY;
        if (!one || !begun.delivery().isBlank() || !begun.settings().equals(SettingsEntries.EMPTY)) {
            return next;
        }
        List<BucketEntry> stated = new ArrayList<>(tests);
        stated.set(
                count,
                stated(
                        begun.withDate(either(begun.date(), next.card().date()))
                                .withSettings(BucketTestDraft.machineSettings(next)),
                        next,
                        assessment,
                        numbers));
        return next.withRate(next.rate().withBucketTests(stated));
    }

    /**
     * The setup with every test given the conditions that it does not state: a person confirms that they were as they are
     * now.
     *
     * @param assessment assessment of the setup
     * @param numbers writes the numbers
     */
    public static Setup confirmed(Setup setup, Assessment assessment, NumberWriter numbers) {
        ConditionDraft draft = new ConditionDraft(setup, assessment, numbers);
        return setup.withTrays(setup.trays()
                        .withTests(setup.trays().tests().stream()
                                .map(draft::stated)
                                .toList()))
                .withRate(setup.rate()
                        .withBucketTests(setup.rate().bucketTests().stream()
                                .map(draft::stated)
                                .toList()));
    }

    private TrayTestEntry stated(TrayTestEntry test) {
        EnteredQuantity left = either(test.openingLeft(), test.openingRight());
        BucketResult bucket = assessment.rate().lastBucket();
        return test.withSettings(settings(test.settings()))
                .withOpeningLeft(left.isBlank() ? opening(bucket == null ? null : bucket.openingLeft()) : left)
                .withOpeningRight(right(test, left, bucket))
                .withWind(either(test.wind(), setup.trays().wind()))
                .withConditions(conditions(test.conditions(), test.settings()));
    }

    /** A factor is one number, typed once. */
    private EnteredQuantity right(TrayTestEntry test, EnteredQuantity left, @Nullable BucketResult bucket) {
        if (assessment.machine().rateSetting().byFactor()) {
            return test.openingRight();
        }
        return left.isBlank()
                ? opening(bucket == null ? null : bucket.openingRight())
                : either(test.openingRight(), left);
    }

    private BucketEntry stated(BucketEntry test) {
        return test.withBulkDensity(either(test.bulkDensity(), density()))
                .withDelivery(either(test.delivery(), setup.product().delivery()))
                .withSettings(bucketSettings(test.settings()));
    }

    private TestConditionEntries conditions(TestConditionEntries stated, SettingsEntries settings) {
        TestConditions now = assessment.now();
        boolean driving = stated.drivingPattern() != DrivingPattern.UNANSWERED;
        EnteredQuantity height = either(stated.heightOverRim(), settings.heightOverCrop());
        return stated.withTramlineWidth(
                        either(stated.tramlineWidth(), setup.start().tramlineWidth()))
                .withDrivingPattern(
                        driving ? stated.drivingPattern() : setup.start().drivingPattern())
                .withHeightOverRim(either(
                        height,
                        now == null || now.heightOverRimM() == null
                                ? EnteredQuantity.EMPTY
                                : number(Unit.M.to(Unit.CM, now.heightOverRimM()), 0, Unit.CM)))
                .withSpeed(either(stated.speed(), number(now == null ? null : now.speedKmPerH(), 1, Unit.KM_PER_H)))
                .withProductRate(either(
                        stated.productRate(), number(now == null ? null : now.productKgPerHa(), 1, Unit.KG_PER_HA)))
                .withProduct(either(stated.product(), setup.product().name()))
                .withDelivery(either(stated.delivery(), setup.product().delivery()))
                .withBulkDensity(either(stated.bulkDensity(), density()))
                .withMedianSize(
                        either(stated.medianSize(), number(now == null ? null : now.medianMm(), DECIMALS, Unit.MM)));
    }

    private SettingsEntries settings(SettingsEntries stated) {
        SettingsEntries start = setup.match().settings();
        Map<String, EnteredQuantity> levers =
                stated.levers().values().stream().allMatch(EnteredQuantity::isBlank) ? start.levers() : stated.levers();
        return stated.withLevers(levers)
                .withPtoSpeed(
                        either(stated.ptoSpeed(), either(setup.machineCheck().ptoMeasured(), start.ptoSpeed())));
    }

    /** Levers and PTO speed as they go on the card. */
    private SettingsEntries bucketSettings(SettingsEntries stated) {
        FinalSettings card = assessment.card().settings();
        Map<String, EnteredQuantity> levers = new LinkedHashMap<>(stated.levers());
        card.levers().forEach((label, value) -> {
            if (levers.getOrDefault(label, EnteredQuantity.EMPTY).isBlank()) {
                levers.put(label, ExactNumber.of(value, numbers));
            }
        });
        return stated.withLevers(levers).withPtoSpeed(either(stated.ptoSpeed(), number(card.ptoRpm(), 0, Unit.RPM)));
    }

    private EnteredQuantity density() {
        TestConditions now = assessment.now();
        return number(now == null ? null : now.bulkDensityKgPerL(), DECIMALS, Unit.KG_PER_L);
    }

    private EnteredQuantity opening(@Nullable Double value) {
        return value == null ? EnteredQuantity.EMPTY : ExactNumber.of(value, numbers);
    }

    private EnteredQuantity number(@Nullable Double value, int decimals, Unit unit) {
        return value == null ? EnteredQuantity.EMPTY : new EnteredQuantity(numbers.write(value, decimals), unit);
    }

    private static EnteredQuantity either(EnteredQuantity stated, EnteredQuantity now) {
        return stated.isBlank() ? now : stated;
    }

    private static String either(String stated, String now) {
        return stated.isBlank() ? now : stated;
    }
}
