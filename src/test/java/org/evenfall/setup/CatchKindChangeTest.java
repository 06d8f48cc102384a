package org.evenfall.setup;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.evenfall.quantity.EnteredQuantity;
import org.evenfall.quantity.Unit;
import org.evenfall.setup.entry.AmountKind;
import org.evenfall.setup.entry.SinglePassTrayEntry;
import org.evenfall.setup.entry.TrayEntries;
import org.evenfall.setup.entry.TrayTestEntry;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Another way of reading keeps every number. */
class CatchKindChangeTest {

    private static final TrayEntries GRAMS = TrayEntries.EMPTY
            .withCatchKind(AmountKind.MASS)
            .withReadingStep(new EnteredQuantity("0.1", Unit.G))
            .withLine(List.of(SinglePassTrayEntry.EMPTY
                    .withPosition(new EnteredQuantity("-3", Unit.M))
                    .withAmount(new EnteredQuantity("8", Unit.G))))
            .withTests(List.of(
                    TrayTestEntry.EMPTY.withCatches(
                            List.of(new EnteredQuantity("12.9", Unit.G), new EnteredQuantity("abc", Unit.G))),
                    TrayTestEntry.EMPTY.withCatches(List.of(new EnteredQuantity("0.016", Unit.KG)))));

    @ParameterizedTest
    @CsvSource({"VOLUME, ML", "HEIGHT, MM"})
    void numbersStayAndAUnitThatNoLongerFitsIsReplaced(AmountKind kind, Unit unit) {
        TrayEntries changed = CatchKindChange.to(GRAMS, kind);
        assertThat(changed.catchKind()).isEqualTo(kind);
        assertThat(changed.tests().get(0).catches())
                .containsExactly(new EnteredQuantity("12.9", unit), new EnteredQuantity("abc", unit));
        assertThat(changed.tests().get(1).catches()).containsExactly(new EnteredQuantity("0.016", unit));
        assertThat(changed.line().get(0).amount()).isEqualTo(new EnteredQuantity("8", unit));
        assertThat(changed.line().get(0).position()).isEqualTo(new EnteredQuantity("-3", Unit.M));
        assertThat(changed.readingStep()).isEqualTo(new EnteredQuantity("0.1", unit));
    }

    @Test
    void aUnitThatStillFitsStays() {
        assertThat(CatchKindChange.to(GRAMS, AmountKind.MASS)).isEqualTo(GRAMS);
    }

    @Test
    void aValueWithoutUnitGetsTheUsualOne() {
        TrayEntries bare = GRAMS.withReadingStep(new EnteredQuantity("2", Unit.NONE));
        assertThat(CatchKindChange.to(bare, AmountKind.HEIGHT).readingStep())
                .isEqualTo(new EnteredQuantity("2", Unit.MM));
    }
}
