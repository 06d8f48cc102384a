package org.evenfall.setup;

import static org.assertj.core.api.Assertions.assertThat;
import static org.evenfall.setup.TypedSetup.lines;

import java.util.List;
import java.util.Map;
import org.evenfall.granule.BulkDensity;
import org.evenfall.machine.Lever;
import org.evenfall.machine.MachineProfile;
import org.evenfall.machine.Widening;
import org.evenfall.quantity.EnteredQuantity;
import org.evenfall.setup.entry.BucketEntry;
import org.evenfall.setup.entry.SettingsEntries;
import org.evenfall.setup.entry.Setup;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What a bucket test does not state, and what was set otherwise than on the card. */
class BucketConditionsTest {

    private static final MachineProfile MACHINE = TypedSetup.machine(
            0.75,
            new Lever("long vane", "", 1, 12, 0.5, Widening.HIGHER),
            new Lever("drop point", "", 0, 8, 1, Widening.HIGHER));

    private static final FinalSettings CARD =
            new FinalSettings(Map.of("long vane", 9.0, "drop point", 5.0), 540.0, 25.0, 25.0, 0.75, 0.0, 12.0);

    private static final FinalSettings NOTHING_SET = new FinalSettings(Map.of(), null, null, null, null, null, null);

    private static final BulkDensity DENSITY = TypedSetup.product(0.75, 46.0).density();

    private static BucketEntry stated(String vane, String drop, String pto) {
        return BucketEntry.EMPTY
                .withBulkDensity(EnteredQuantity.parse("0.75 kg/L"))
                .withDelivery("A")
                .withSettings(SettingsEntries.EMPTY
                        .withLevers(Map.of(
                                "long vane", EnteredQuantity.parse(vane), "drop point", EnteredQuantity.parse(drop)))
                        .withPtoSpeed(EnteredQuantity.parse(pto)));
    }

    private static List<String> found(BucketEntry test, FinalSettings card, BulkDensity density) {
        Setup setup = Setup.EMPTY.withProduct(Setup.EMPTY.product().withDelivery("A"));
        setup = setup.withRate(setup.rate().withBucketTests(List.of(BucketEntry.EMPTY, test)));
        return lines(new BucketConditions(ReadingPass.read(setup), 1).settings(MACHINE, card, density));
    }

    @Test
    void whatIsStatedAndAsOnTheCardIsNotReported() {
        assertThat(found(stated("9", "5", "540 rpm"), CARD, DENSITY)).isEmpty();
    }

    @Test
    void whatIsNotStatedIsListed() {
        BucketEntry all = stated("9", "5", "540 rpm");
        String assumed = "WARNING RATE rate.assumed at /rate/bucketTests/1 2~0 ";
        assertThat(found(all.withDelivery(" "), CARD, DENSITY)).containsExactly(assumed + "[test.delivery]");
        assertThat(found(all.withBulkDensity(EnteredQuantity.EMPTY), CARD, DENSITY))
                .containsExactly(assumed + "[field.bulkDensity]");
        assertThat(found(all.withBulkDensity(EnteredQuantity.EMPTY), CARD, null))
                .isEmpty();
        assertThat(found(all.withSettings(all.settings().withPtoSpeed(EnteredQuantity.EMPTY)), CARD, DENSITY))
                .containsExactly(assumed + "[field.ptoSpeed]");
        assertThat(found(all.withSettings(all.settings().withLevers(Map.of())), CARD, DENSITY))
                .containsExactly(assumed + "[field.leverValue]");
        assertThat(found(BucketEntry.EMPTY, CARD, DENSITY))
                .containsExactly(assumed + "[test.delivery,field.bulkDensity,field.leverValue,field.ptoSpeed]");
        assertThat(found(BucketEntry.EMPTY.withDelivery("A"), NOTHING_SET, null))
                .isEmpty();
    }

    /** 3 % of 540 rpm are 16.2. */
    @ParameterizedTest
    @CsvSource({"523 rpm, true", "524 rpm, false", "556 rpm, false", "557 rpm, true"})
    void ptoSpeed(String pto, boolean reported) {
        assertThat(found(stated("9", "5", pto), CARD, DENSITY))
                .isEqualTo(
                        reported
                                ? List.of("WARNING RATE rate.differs.PTO_SPEED"
                                        + " at /rate/bucketTests/1/settings/ptoSpeed 2~0 "
                                        + pto.replace(" ", "") + "~0 540rpm~0")
                                : List.of());
    }

    @Test
    void theFirstLeverThatDiffersIsNamed() {
        assertThat(found(stated("9", "6", "540 rpm"), CARD, DENSITY))
                .containsExactly(
                        "WARNING RATE rate.differs.LEVERS"
                                + " at /rate/bucketTests/1/settings/levers/drop point 2~0 ['drop point',6~1] ['drop point',5~1]");
        assertThat(found(stated("8.5", "6", "540 rpm"), CARD, DENSITY))
                .singleElement()
                .asString()
                .contains("'long vane',8.5~1");
    }
}
