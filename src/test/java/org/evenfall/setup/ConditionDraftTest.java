package org.evenfall.setup;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.evenfall.quantity.EnteredQuantity;
import org.evenfall.setup.entry.BucketEntry;
import org.evenfall.setup.entry.SettingsEntries;
import org.evenfall.setup.entry.Setup;
import org.evenfall.setup.entry.TestConditionEntries;
import org.evenfall.setup.entry.TrayTestEntry;
import org.junit.jupiter.api.Test;

/** Conditions are filled in when a test is begun or confirmed; what a test states stays. */
class ConditionDraftTest {

    private static final Setup DEMO = TypedSetup.demo().setup();

    private static Setup buckets(Setup setup, List<BucketEntry> tests) {
        return setup.withRate(setup.rate().withBucketTests(tests));
    }

    private static Setup begun(Setup next, Setup before) {
        return ConditionDraft.begun(next, before, Assessor.assess(before), TestNumbers.ENGLISH);
    }

    @Test
    void aBucketTestTypedIntoBlankFieldsIsGivenItsConditions() {
        Setup before = buckets(DEMO, List.of());
        BucketEntry typed = BucketEntry.EMPTY.withOpeningLeft(EnteredQuantity.parse("26"));
        BucketEntry filled = begun(buckets(before, List.of(typed)), before)
                .rate()
                .bucketTests()
                .get(0);
        assertThat(filled)
                .isEqualTo(typed.withBulkDensity(EnteredQuantity.parse("0.7572 kg/L"))
                        .withDelivery("S-1042")
                        .withDate("2027-03-18")
                        .withSettings(SettingsEntries.EMPTY
                                .withLevers(
                                        DEMO.trays().tests().get(1).settings().levers())
                                .withPtoSpeed(EnteredQuantity.parse("540 rpm"))));
    }

    /** A further value in a test, a removed test, two tests at once from another setup, a test with its own conditions. */
    @Test
    void everyOtherChangeStaysAsItIs() {
        List<BucketEntry> tests = DEMO.rate().bucketTests();
        Setup changed = buckets(DEMO, List.of(tests.get(0).withDelivery(""), tests.get(1), tests.get(2)));
        assertThat(begun(changed, DEMO)).isSameAs(changed);
        Setup removed = buckets(DEMO, tests.subList(0, 2));
        assertThat(begun(removed, DEMO)).isSameAs(removed);
        Setup none = buckets(DEMO, List.of());
        BucketEntry blank = BucketEntry.EMPTY.withTime(EnteredQuantity.parse("20 s"));
        Setup two = buckets(DEMO, List.of(blank, blank));
        assertThat(begun(two, none)).isSameAs(two);
        List<BucketEntry> stated = new ArrayList<>(tests);
        stated.add(blank.withDelivery("other"));
        Setup own = buckets(DEMO, stated);
        assertThat(begun(own, DEMO)).isSameAs(own);
    }

    @Test
    void whatATestStatesStays() {
        assertThat(ConditionDraft.confirmed(DEMO, Assessor.assess(DEMO), TestNumbers.ENGLISH))
                .isEqualTo(DEMO);
    }

    @Test
    void onlyWhatIsNotStatedIsFilledIn() {
        TrayTestEntry last = DEMO.trays().tests().get(1);
        TrayTestEntry little = last.withConditions(
                        TestConditionEntries.EMPTY.withSpeed(EnteredQuantity.parse("11 km/h")))
                .withSettings(SettingsEntries.EMPTY)
                .withOpeningLeft(EnteredQuantity.EMPTY)
                .withWind(EnteredQuantity.EMPTY);
        Setup old = DEMO.withTrays(DEMO.trays().withTests(List.of(little)));
        TrayTestEntry filled = ConditionDraft.confirmed(old, Assessor.assess(old), TestNumbers.ENGLISH)
                .trays()
                .tests()
                .get(0);
        assertThat(filled.conditions().speed()).isEqualTo(EnteredQuantity.parse("11 km/h"));
        assertThat(filled.conditions().tramlineWidth()).isEqualTo(EnteredQuantity.parse("28 m"));
        assertThat(filled.conditions().heightOverRim()).isEqualTo(EnteredQuantity.parse("75 cm"));
        assertThat(filled.conditions().productRate()).isEqualTo(EnteredQuantity.parse("173.9 kg/ha"));
        // the settings to start from, and the PTO speed as measured
        assertThat(filled.settings().levers()).isEqualTo(DEMO.match().settings().levers());
        assertThat(filled.settings().ptoSpeed()).isEqualTo(EnteredQuantity.parse("538 rpm"));
        // an opening of one side counts for both
        assertThat(filled.openingLeft()).isEqualTo(EnteredQuantity.parse("27.5"));
        assertThat(filled.openingRight()).isEqualTo(EnteredQuantity.parse("27.5"));
        assertThat(filled.wind()).isEqualTo(EnteredQuantity.parse("1.2 m/s"));
        assertThat(filled.catches()).isEqualTo(last.catches());
    }

    /** Levers and PTO speed of an older bucket test count as on the card: those of the test that proves it. */
    @Test
    void anOlderBucketTestIsGivenTheSettingsOfTheCard() {
        Setup old = buckets(DEMO, List.of(DEMO.rate().bucketTests().get(1).withSettings(SettingsEntries.EMPTY)));
        SettingsEntries filled = ConditionDraft.confirmed(old, Assessor.assess(old), TestNumbers.ENGLISH)
                .rate()
                .bucketTests()
                .get(0)
                .settings();
        assertThat(filled.levers())
                .isEqualTo(
                        Map.of("long vane", EnteredQuantity.parse("10.5"), "drop point", EnteredQuantity.parse("5")));
        assertThat(filled.ptoSpeed()).isEqualTo(EnteredQuantity.parse("540 rpm"));
    }
}
