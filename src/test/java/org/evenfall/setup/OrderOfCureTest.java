package org.evenfall.setup;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.evenfall.machine.MachineCheckResult;
import org.evenfall.machine.MachineProfile;
import org.evenfall.machine.Side;
import org.evenfall.machine.VaneCheck;
import org.evenfall.rate.BucketResult;
import org.evenfall.trays.MachineOrder;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What counts as in order before a lever is moved: measured, and within its limit. */
class OrderOfCureTest {

    private static final RateResult NO_BUCKET = new RateResult(null, null, List.of(), null);

    private static MachineCheckResult check(Double levelM, Double tyreBar, Double ptoRpm, boolean... vanesFailed) {
        List<VaneCheck> vanes = new java.util.ArrayList<>();
        for (boolean failed : vanesFailed) {
            vanes.add(new VaneCheck(Side.RIGHT, "long", 0.002, 0.6, failed));
        }
        return new MachineCheckResult(vanes, List.of(), List.of(), List.of(), levelM, tyreBar, ptoRpm, null, false);
    }

    private static BucketResult bucket(Double leftRightPercent) {
        return new BucketResult(
                20,
                21.5,
                new BucketResult.Flow(15.0, 14.5, 29.5),
                150.0,
                1.0,
                new BucketResult.Agreement(1.0, leftRightPercent, 0.5, true, null, null),
                new BucketResult.Next(20.0, 21.5, null),
                null);
    }

    private static RateResult rate(BucketResult... tests) {
        return new RateResult(null, null, List.of(tests), null);
    }

    private static MachineOrder order(MachineProfile machine, MachineCheckResult check, RateResult rate, Double pto) {
        return OrderOfCure.of(machine, check, rate, pto);
    }

    private static MachineProfile machine(int outlets) {
        return TypedSetup.machine(480.0, 580.0, outlets);
    }

    /** Level within 2 cm and measured; tyres within 0.2 bar where they were measured. */
    @ParameterizedTest
    @CsvSource(
            nullValues = "-",
            value = {
                "0, 0, true",
                "-, -, false",
                "-, 0, false",
                "0.02, -, true",
                "-0.02, -, true",
                "0.0201, -, false",
                "-0.0201, -, false",
                "0.05, 0.1, false",
                "0.019, 0.2, true",
                "0.019, -0.2, true",
                "0.019, 0.201, false",
                "0.019, -0.201, false"
            })
    void levelAndTyres(Double levelM, Double tyreBar, boolean inOrder) {
        MachineOrder order = order(machine(2), check(levelM, tyreBar, 540.0), rate(bucket(1.0)), 540.0);
        assertThat(order.level()).isEqualTo(inOrder);
        assertThat(order.pto()).isTrue();
        assertThat(order.outlets()).isTrue();
    }

    /** 3 % of 540 rpm are 16.2; the handbook allows what the last two columns say. */
    @ParameterizedTest
    @CsvSource(
            nullValues = "-",
            value = {
                "538, 540, 480, 580, true",
                "420, 540, 480, 580, false",
                "420, 540, -, -, false",
                "-, 540, 480, 580, false",
                "-, -, -, -, false",
                "523.8, 540, 480, 580, true",
                "523.7, 540, 480, 580, false",
                "556.2, 540, 480, 580, true",
                "556.3, 540, 480, 580, false",
                "480, -, 480, 580, true",
                "479.9, -, 480, 580, false",
                "580, -, 480, 580, true",
                "580.1, -, 480, 580, false",
                "530, 540, 535, 580, false",
                "550, 540, 480, 545, false",
                "420, -, -, -, true"
            })
    void shaftSpeed(Double measured, Double wanted, Double lowest, Double highest, boolean inOrder) {
        MachineOrder order =
                order(TypedSetup.machine(lowest, highest, 2), check(0.01, 0.1, measured), rate(bucket(1.0)), wanted);
        assertThat(order.pto()).isEqualTo(inOrder);
        assertThat(order.level()).isTrue();
        assertThat(order.outlets()).isTrue();
    }

    /** Left and right within 5 % in the last bucket test; one outlet has no other to differ from. */
    @ParameterizedTest
    @CsvSource(
            nullValues = "-",
            value = {
                "2, 5, true",
                "2, -5, true",
                "2, 5.01, false",
                "2, -5.01, false",
                "2, -, false",
                "1, -, true",
                "1, 59, true",
                "4, 59, false"
            })
    void outlets(int outlets, Double leftRightPercent, boolean inOrder) {
        MachineOrder order =
                order(machine(outlets), check(0.01, 0.1, 540.0, false), rate(bucket(leftRightPercent)), 540.0);
        assertThat(order.outlets()).isEqualTo(inOrder);
        assertThat(order.level()).isTrue();
        assertThat(order.pto()).isTrue();
    }

    @Test
    void withoutABucketTestTheOutletsAreNotInOrder() {
        assertThat(order(machine(2), check(0.01, null, 540.0), NO_BUCKET, null).outlets())
                .isFalse();
        assertThat(order(machine(1), check(0.01, null, 540.0), NO_BUCKET, null).outlets())
                .isFalse();
    }

    @Test
    void theLastBucketTestCounts() {
        assertThat(order(machine(2), check(0.0, null, 540.0), rate(bucket(9.0), bucket(2.0)), null)
                        .outlets())
                .isTrue();
        assertThat(order(machine(2), check(0.0, null, 540.0), rate(bucket(2.0), bucket(9.0)), null)
                        .outlets())
                .isFalse();
    }

    @Test
    void aVaneThatFailedIsNotInOrder() {
        assertThat(order(machine(2), check(0.0, null, 540.0, false, true), rate(bucket(1.0)), null)
                        .outlets())
                .isFalse();
        assertThat(order(machine(1), check(0.0, null, 540.0, true, false), rate(bucket(null)), null)
                        .outlets())
                .isFalse();
    }
}
