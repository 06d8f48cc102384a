package org.evenfall.setup;

import static org.assertj.core.api.Assertions.assertThat;
import static org.evenfall.setup.Entered.lines;

import java.util.List;
import java.util.Objects;
import org.evenfall.finding.Arg;
import org.evenfall.quantity.Interval;
import org.evenfall.setup.path.TrayPaths;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A distance from the headland tramline with a minus says what the minus means. */
class SwitchFindingsTest {

    private static List<String> findings(Entered entered) {
        return lines(SwitchFindings.of(entered.read()));
    }

    @ParameterizedTest
    @CsvSource({"'', false", "12 m, false", "0 m, false", "-0.1 m, true", "-0.5 ft, true", "-60 m, false"})
    void aMinusIsReportedAPlusIsNot(String typed, boolean reported) {
        assertThat(findings(Entered.inEmpty().with(TrayPaths.SWITCH_OFF, typed)))
                .hasSize(reported ? 1 : 0);
    }

    @Test
    void eachWithItsValueAndTheUsualRange() {
        assertThat(findings(
                        Entered.inEmpty().with(TrayPaths.SWITCH_ON, "-3.5 m").with(TrayPaths.SWITCH_OFF, "\u22127 m")))
                .containsExactly(
                        "NOTE TRAYS trays.switchBefore /trays/switchOn [trays.switchOnShort, -3.5:1 m, -20:0, 60:0 m]",
                        "NOTE TRAYS trays.switchBefore /trays/switchOff [trays.switchOffShort, -7:1 m, -20:0, 60:0 m]");
    }

    /** Shorter is reported by its size, with the interval turned round; further likewise; nothing below 0.5 m. */
    @ParameterizedTest
    @CsvSource({
        "-2, -2.6, -1.4, 'NOTE TRAYS trays.switchNearer /trays/switchOn [2:0 m, 1.4:0, 2.6:0 m]'",
        "1.5, -0.2, 3, 'NOTE TRAYS trays.switchFurther /trays/switchOn [1.5:0 m, 0:0, 3:0 m]'",
        "-0.5, -1, 0.2, 'NOTE TRAYS trays.switchNearer /trays/switchOn [0.5:0 m, 0:0, 1:0 m]'",
        "-0.49, -0.9, 0, ",
        "0.49, 0, 0.9, "
    })
    void howMuchNearerThanWithTheDenseProduct(double metres, double low, double high, String finding) {
        assertThat(lines(SwitchFindings.againstDense(metres, new Interval(low, high))))
                .isEqualTo(finding == null ? List.of() : List.of(finding));
    }

    @Test
    void theDemosUreaIsSwitchedNearerByTheModelsDifference() {
        Assessment assessment = Assessor.assess(TypedSetup.demo().setup());
        double shorterM = -Objects.requireNonNull(
                Objects.requireNonNull(assessment.match()).throwAgainstDenseM());
        assertThat(shorterM).isPositive();
        assertThat(assessment.findings())
                .filteredOn(finding -> finding.key().equals("trays.switchNearer"))
                .singleElement()
                .satisfies(finding -> {
                    assertThat(((Arg.Figure) finding.args().get(0)).value()).isEqualTo(shorterM);
                    assertThat(((Arg.Figure) finding.args().get(1)).value()).isLessThan(shorterM);
                    assertThat(((Arg.Figure) finding.args().get(2)).value()).isGreaterThan(shorterM);
                });
        assertThat(SwitchFindings.againstDense(null)).isEmpty();
    }
}
