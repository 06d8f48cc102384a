package org.evenfall.setup;

import static org.assertj.core.api.Assertions.assertThat;
import static org.evenfall.setup.TypedSetup.lines;

import java.util.List;
import org.evenfall.flight.DrivingPattern;
import org.evenfall.trays.CatchPlan;
import org.evenfall.trays.CatchPlans;
import org.evenfall.trays.StripLoad;
import org.evenfall.trays.TrayLayout;
import org.evenfall.trays.TrayLayouts;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What is to know before a tray test is driven. */
class TrayPlanFindingsTest {

    private static TrayLayout layout(double widthM, int trays) {
        return TrayLayouts.of(widthM, trays, 0.25, DrivingPattern.BACK_AND_FORTH);
    }

    private static List<String> of(TrayLayout layout, CatchPlan plan, StripLoad strip) {
        return lines(TrayPlanFindings.of(layout, plan, strip));
    }

    @ParameterizedTest
    @CsvSource(
            nullValues = "-",
            value = {
                "27.9, 5, -",
                "27.9, 7, -",
                "28, 7, 7~0 4.6667m~1 9~0",
                "28, 8, 8~0 4m~1 9~0",
                "28, 9, -",
                "28, 10, -",
                "31.9, 9, -",
                "32, 9, 9~0 5.5m~1 11~0",
                "32, 11, -",
                "35.9, 11, -",
                "36, 7, 7~0 6m~1 13~0",
                "36, 12, 12~0 3.2727m~1 13~0",
                "36, 13, -",
                "36, 33, -"
            })
    void fewerTraysThanProposedAtWidth(double widthM, int trays, String args) {
        assertThat(of(layout(widthM, trays), null, null))
                .isEqualTo(
                        args == null
                                ? List.of()
                                : List.of("NOTE TRAYS trays.sevenAtWidth at /trays/trayCount " + args + ""));
    }

    /** 400 kg/ha on 0.25 m² are 10 g a run; granules of 0.025 g times a number need 10 g times that number. */
    @ParameterizedTest
    @CsvSource(
            nullValues = "-",
            value = {
                "1, -",
                "3.24, NOTE TRAYS trays.largerTrays at /trays 0.9m~2 4~0 1~0",
                "6, NOTE TRAYS trays.largerTraysRuns at /trays 0.71m~2 2~0 3~0"
            })
    void largerTraysBeforeMoreRuns(double times, String line) {
        assertThat(of(layout(24, 7), CatchPlans.of(400, 0.25, 0.025 * times, 0), null))
                .isEqualTo(line == null ? List.of() : List.of(line));
    }

    @Test
    void whatTheRunsAddToTheStrip() {
        assertThat(of(layout(24, 7), null, StripLoad.of(174, 80.0, 3, 24)))
                .containsExactly("NOTE TRAYS trays.stripNitrogen at /trays 80kg/ha~0 3~0 240kg/ha~0 375.84kg~0 100m~0");
        assertThat(of(layout(24, 7), null, StripLoad.of(174, 80.0, 1, 24)))
                .containsExactly(
                        "NOTE TRAYS trays.stripNitrogenOnce at /trays 80kg/ha~0 1~0 80kg/ha~0 125.28kg~0 100m~0");
        assertThat(of(layout(24, 7), null, StripLoad.of(174, null, 3, 24)))
                .containsExactly("NOTE TRAYS trays.stripProduct at /trays 174kg/ha~0 3~0 522kg/ha~0 375.84kg~0 100m~0");
        assertThat(of(layout(24, 7), null, StripLoad.of(174, null, 1, 24)))
                .containsExactly(
                        "NOTE TRAYS trays.stripProductOnce at /trays 174kg/ha~0 1~0 174kg/ha~0 125.28kg~0 100m~0");
    }

    /** Gaps first, then larger trays, then the strip. */
    @Test
    void inTheOrderInWhichTheyAreRead() {
        assertThat(TrayPlanFindings.of(
                        layout(28, 7), CatchPlans.of(400, 0.25, 0.05, 0), StripLoad.of(400, 184.0, 2, 28)))
                .extracting(finding -> finding.key())
                .containsExactly("trays.sevenAtWidth", "trays.largerTrays", "trays.stripNitrogen");
    }
}
