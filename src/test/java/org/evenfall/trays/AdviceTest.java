package org.evenfall.trays;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Arrays;
import java.util.List;
import org.evenfall.trays.AdviceReason.Kind;
import org.junit.jupiter.api.Test;

class AdviceTest {

    private static Kind decisive(AdviceKind kind, Kind... reasons) {
        return new Advice(kind, Arrays.stream(reasons).map(AdviceTest::reason).toList())
                .decisive()
                .kind();
    }

    private static AdviceReason reason(Kind kind) {
        return AdviceReason.of(kind, new double[kind.count()]);
    }

    @Test
    void theReasonThatDecides() {
        assertThat(decisive(AdviceKind.MOVE_LEVER, Kind.POOLED, Kind.CENTRE_HEAVY, Kind.ONE_LEVER, Kind.THEN_AGAIN))
                .isEqualTo(Kind.CENTRE_HEAVY);
        assertThat(decisive(AdviceKind.MOVE_LEVER, Kind.CENTRE_HEAVY, Kind.PROBE, Kind.ONE_LEVER))
                .isEqualTo(Kind.PROBE);
        assertThat(decisive(AdviceKind.MOVE_LEVER, Kind.OVERLAP_HEAVY, Kind.BACK))
                .isEqualTo(Kind.BACK);
        assertThat(decisive(AdviceKind.MOVE_LEVER, Kind.STILL_ONE_SIDE, Kind.BETTER_EXPECTED, Kind.ONE_LEVER))
                .isEqualTo(Kind.BETTER_EXPECTED);
        assertThat(decisive(AdviceKind.KEEP, Kind.POOLED, Kind.KEEP, Kind.ONE_SIDE))
                .isEqualTo(Kind.KEEP);
        assertThat(decisive(AdviceKind.CANNOT_TELL_BETTER, Kind.OVERLAP_HEAVY, Kind.NO_BETTER))
                .isEqualTo(Kind.NO_BETTER);
        assertThat(decisive(AdviceKind.CONFIRM_DIRECTION, Kind.CENTRE_HEAVY, Kind.DIRECTION))
                .isEqualTo(Kind.DIRECTION);
        assertThat(decisive(AdviceKind.OUTLETS_AND_VANES, Kind.JUST_UNDER, Kind.ONE_SIDE, Kind.VANES_AGAIN))
                .isEqualTo(Kind.ONE_SIDE);
        // where none decides, the first
        assertThat(decisive(AdviceKind.MOVE_LEVER, Kind.THEN_AGAIN, Kind.ONE_LEVER))
                .isEqualTo(Kind.THEN_AGAIN);
    }

    @Test
    void anAdviceHasAReason() {
        assertThatThrownBy(() -> new Advice(AdviceKind.KEEP, List.of())).isInstanceOf(IllegalArgumentException.class);
    }
}
