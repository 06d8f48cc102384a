package org.evenfall.setup;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.evenfall.finding.Finding;
import org.evenfall.quantity.EnteredQuantity;
import org.evenfall.setup.entry.AmountKind;
import org.evenfall.setup.path.EntryPath;
import org.evenfall.setup.path.QuantityList;
import org.evenfall.setup.path.TrayPaths;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A catch as grams: at 0.8 kg/L 15 ml are 12 g; in a tube of 20 mm 50 mm are π/4 × 20 ml × 0.8 = 12.566 371 g. */
class CatchReaderTest {

    private static final EntryPath<EnteredQuantity> SECOND_TRAY =
            QuantityList.item(TrayPaths.TEST_CATCHES.at(TrayPaths.TESTS.item(0)), 1);

    @ParameterizedTest
    @CsvSource(
            nullValues = "-",
            value = {
                "MASS, '12,5 g', '', -, 12.5, -",
                "MASS, 1 + 2.5 g, 20 mm, 0.8, 3.5, -",
                "UNANSWERED, 12.5 g, 20 mm, 0.8, 12.5, -",
                "PERCENT, 12.5 g, 20 mm, 0.8, 12.5, -",
                "MASS, '', 20 mm, 0.8, -, -",
                "MASS, x, 20 mm, 0.8, -, -",
                "VOLUME, 15 ml, '', 0.8, 12, -",
                "VOLUME, 0.015 L, 20 mm, 0.8, 12, -",
                "VOLUME, 15 ml, 20 mm, -, -, trays.needsDensity at /trays/tests/0/catches/1",
                "VOLUME, '', 20 mm, -, -, -",
                "HEIGHT, 50 mm, 20 mm, 0.8, 12.566371, -",
                "HEIGHT, 5 cm, 2 cm, 0.8, 12.566371, -",
                "HEIGHT, 50 mm, '', 0.8, -, trays.needsBore at /trays/tubeBore",
                "HEIGHT, 50 mm, 20 mm, -, -, trays.needsBore at /trays/tubeBore",
                "HEIGHT, '', '', -, -, -"
            })
    void aCatchIsTurnedIntoGrams(AmountKind kind, String typed, String bore, Double kgPerL, Double grams, String note) {
        ReadSetup read = TypedSetup.blank()
                .choose(TrayPaths.CATCH_KIND, kind)
                .type(TrayPaths.TUBE_BORE, bore)
                .type(TrayPaths.TEST_CATCHES, TrayPaths.TESTS.item(0), "7", typed)
                .read();
        List<Finding> findings = new ArrayList<>();
        Double gramsRead = new CatchReader(read, TypedSetup.product(kgPerL, 46.0), findings).grams(SECOND_TRAY);
        if (grams == null) {
            assertThat(gramsRead).isNull();
        } else {
            assertThat(gramsRead).isEqualTo(grams, within(1e-6));
        }
        assertThat(TypedSetup.lines(findings)).isEqualTo(note == null ? List.of() : List.of("NOTE TRAYS " + note));
    }
}
