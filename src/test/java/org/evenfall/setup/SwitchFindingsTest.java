package org.evenfall.setup;

import static org.assertj.core.api.Assertions.assertThat;
import static org.evenfall.setup.Entered.lines;

import java.util.List;
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
}
