package org.evenfall.setup.entry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.Map;
import org.evenfall.machine.CheckItem;
import org.evenfall.machine.Side;
import org.evenfall.quantity.EnteredQuantity;
import org.evenfall.quantity.Unit;
import org.junit.jupiter.api.Test;

class BlankTest {

    @Test
    void everyTypeHasItsBlankValue() {
        assertThat(Blank.value(EnteredQuantity.class)).isEqualTo(EnteredQuantity.EMPTY);
        assertThat(Blank.value(String.class)).isEqualTo("");
        assertThat(Blank.value(int.class)).isEqualTo(0);
        assertThat(Blank.value(List.class)).isEqualTo(List.of());
        assertThat(Blank.value(Map.class)).isEqualTo(Map.of());
        assertThat(Blank.value(Side.class)).isEqualTo(Side.UNANSWERED);
        assertThat(Blank.value(Paper.class)).isEqualTo(Paper.A5_LANDSCAPE);
        assertThat(Blank.value(UnknownKeys.class)).isEqualTo(UnknownKeys.NONE);
        assertThat(Blank.value(WheelEntries.class)).isEqualTo(WheelEntries.EMPTY);
    }

    @Test
    void aChoiceThatMustBeGivenHasNone() {
        assertThat(Blank.value(CheckItem.class)).isNull();
        assertThatThrownBy(() -> Blank.of(CheckEntry.class)).hasRootCauseMessage("item");
        assertThatThrownBy(() -> Blank.value(Double.class)).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void blankIsWhereNothingIsTyped() {
        assertThat(Blank.isBlank(new EnteredQuantity("", Unit.KG))).isTrue();
        assertThat(Blank.isBlank(new EnteredQuantity("0", Unit.KG))).isFalse();
        assertThat(Blank.isBlank("")).isTrue();
        assertThat(Blank.isBlank(" ")).isFalse();
        assertThat(Blank.isBlank(0)).isTrue();
        assertThat(Blank.isBlank(1)).isFalse();
        assertThat(Blank.isBlank(YesNo.UNANSWERED)).isTrue();
        assertThat(Blank.isBlank(YesNo.NO)).isFalse();
        assertThat(Blank.isBlank(Paper.A5_LANDSCAPE)).isFalse();
        assertThat(Blank.isBlank(List.of())).isTrue();
        assertThat(Blank.isBlank(List.of(EnteredQuantity.EMPTY))).isFalse();
        assertThat(Blank.isBlank(Map.of("long vane", EnteredQuantity.EMPTY))).isTrue();
        assertThat(Blank.isBlank(Map.of("long vane", new EnteredQuantity("9", Unit.NONE))))
                .isFalse();
    }

    @Test
    void aRecordIsBlankWhenEveryPartIs() {
        assertThat(Blank.isBlank(RateEntries.EMPTY)).isTrue();
        assertThat(Blank.isBlank(RateEntries.EMPTY.withPlan(
                        PlanEntries.EMPTY.withSpeed(new EnteredQuantity("", Unit.KM_PER_H)))))
                .isTrue();
        assertThat(Blank.isBlank(RateEntries.EMPTY.withPlan(
                        PlanEntries.EMPTY.withSpeed(new EnteredQuantity("12", Unit.KM_PER_H)))))
                .isFalse();
        assertThat(Blank.isBlank(RateEntries.EMPTY.withPlan(
                        PlanEntries.EMPTY.withUnknownKeys(new UnknownKeys(Map.of("a", "null"))))))
                .isFalse();
        assertThat(Blank.isBlank(CardEntries.EMPTY)).as("a paper is chosen").isFalse();
    }
}
