package org.evenfall.setup;

import static org.assertj.core.api.Assertions.assertThat;
import static org.evenfall.setup.TypedSetup.lines;

import java.util.List;
import org.evenfall.setup.entry.YesNo;
import org.evenfall.setup.path.TrayPaths;
import org.evenfall.trays.Surface;
import org.evenfall.trays.WindLimits;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** Wind, ground and trays at the test place. */
class TestWeatherTest {

    private static TypedSetup limits(TypedSetup typed, String note, String warn, String stop) {
        return typed.type(TrayPaths.WIND_NOTE, note)
                .type(TrayPaths.WIND_WARN, warn)
                .type(TrayPaths.WIND_STOP, stop);
    }

    private static TypedSetup driven(TypedSetup typed) {
        return typed.type(TrayPaths.TEST_CATCHES, TrayPaths.TESTS.item(0), "", "12 g");
    }

    private static List<String> found(TypedSetup typed) {
        return lines(TestWeather.assess(typed.read()).findings());
    }

    private static String expected(String severity, String key, String metresPerSecond) {
        return severity + " TRAYS trays." + key + " at /trays/wind " + metresPerSecond + "m/s~1";
    }

    /** Usual limits 2, 3 and 4 m/s; 1 m/s = 3.6 km/h. */
    @ParameterizedTest
    @CsvSource({
        "1.9 m/s, 1.9, '', ''",
        "2 m/s, 2, '', ''",
        "2.1 m/s, 2.1, NOTE, windNote",
        "3 m/s, 3, NOTE, windNote",
        "3.1 m/s, 3.1, WARNING, windWarn",
        "4 m/s, 4, WARNING, windWarn",
        "4.1 m/s, 4.1, STOP, windStop",
        "7.2 km/h, 2, '', ''",
        "10.8 km/h, 3, NOTE, windNote",
        "14.4 km/h, 4, WARNING, windWarn",
        "'14,76 km/h', 4.1, STOP, windStop"
    })
    void windBeforeATest(String typed, String metresPerSecond, String severity, String key) {
        assertThat(found(TypedSetup.blank().type(TrayPaths.WIND, typed)))
                .isEqualTo(key.isEmpty() ? List.of() : List.of(expected(severity, key, metresPerSecond)));
    }

    @ParameterizedTest
    @CsvSource({"2.1, windNote", "3.1, windWarn", "4, windWarn", "4.1, windStop"})
    void windAfterATestIsNoMoreThanANote(String metresPerSecond, String key) {
        assertThat(found(driven(TypedSetup.blank().type(TrayPaths.WIND, metresPerSecond + " m/s"))))
                .containsExactly(expected("NOTE", key, metresPerSecond));
    }

    @Test
    void aTestWithoutCatchesIsNotDriven() {
        TypedSetup typed = TypedSetup.blank()
                .type(TrayPaths.WIND, "4.1 m/s")
                .type(TrayPaths.TEST_RUNS, TrayPaths.TESTS.item(0), "2")
                .type(TrayPaths.TEST_CATCHES, TrayPaths.TESTS.item(1), "", " ");
        assertThat(found(typed)).containsExactly(expected("STOP", "windStop", "4.1"));
    }

    @ParameterizedTest
    @CsvSource({
        "1.2, '', ''",
        "1.3, NOTE, windNote",
        "2.6, NOTE, windNote",
        "2.7, WARNING, windWarn",
        "5.1, WARNING, windWarn",
        "5.2, STOP, windStop"
    })
    void theOwnersLimitsCount(String metresPerSecond, String severity, String key) {
        TypedSetup typed = limits(
                TypedSetup.blank().type(TrayPaths.WIND, metresPerSecond + " m/s"), "1.2 m/s", "2.6 m/s", "5.1 m/s");
        assertThat(found(typed))
                .isEqualTo(key.isEmpty() ? List.of() : List.of(expected(severity, key, metresPerSecond)));
        assertThat(TestWeather.assess(typed.read()).present()).isEqualTo(new WindLimits(1.2, 2.6, 5.1));
    }

    /** Limits that fall are not taken: all three are the usual ones then. */
    @ParameterizedTest
    @CsvSource({
        "2.5, '', '', true, 2.5, 3, 4",
        "3, 3, 3, true, 3, 3, 3",
        "3.1, '', '', false, 3.1, 3, 4",
        "2.5, 2.4, 4.5, false, 2.5, 2.4, 4.5",
        "'', 3.5, 3.4, false, 2, 3.5, 3.4",
        "'', '', 2.9, false, 2, 3, 2.9",
        "'', '', 3, true, 2, 3, 3"
    })
    void limitsMustNotFall(
            String note, String warn, String stop, boolean taken, double low, double middle, double high) {
        Assessed<WindLimits> weather =
                TestWeather.assess(limits(TypedSetup.blank(), note, warn, stop).read());
        assertThat(weather.present()).isEqualTo(taken ? new WindLimits(low, middle, high) : new WindLimits(2, 3, 4));
        String found = "STOP TRAYS trays.windLimitsRise at /trays/windLimits";
        if (taken) {
            assertThat(weather.findings()).isEmpty();
        } else {
            assertThat(lines(weather.findings())).singleElement().asString().startsWith(found + " " + plain(low));
            assertThat(lines(weather.findings()))
                    .containsExactly(found + " " + plain(low) + " " + plain(middle) + " " + plain(high));
        }
    }

    private static String plain(double metresPerSecond) {
        return (metresPerSecond == Math.rint(metresPerSecond) ? "" + (int) metresPerSecond : "" + metresPerSecond)
                + "m/s~1";
    }

    /** Above the warning limit it is named; above the highest limit it proves nothing, which the conditions report. */
    @ParameterizedTest
    @CsvSource({"2.9, false", "3, false", "3.1, true", "4, true", "4.1, false"})
    void aTestDrivenAboveTheWarningLimitIsNamed(double windMPerS, boolean named) {
        assertThat(lines(TestWeather.duringTest(WindLimits.USUAL, 2, windMPerS, "/here")))
                .isEqualTo(
                        named
                                ? List.of(
                                        "WARNING TRAYS trays.drivenInWind at /here 2~0 " + plain(windMPerS) + " 3m/s~1")
                                : List.of());
        assertThat(TestWeather.duringTest(WindLimits.USUAL, 2, null, "/here")).isEmpty();
        assertThat(TestWeather.duringTest(new WindLimits(1, 2, 2.5), 1, 2.4, "/here"))
                .hasSize(1);
    }

    @ParameterizedTest
    @EnumSource(YesNo.class)
    void anAnswerNoIsAWarningAtItsQuestion(YesNo answer) {
        boolean no = answer == YesNo.NO;
        assertThat(found(TypedSetup.blank().choose(TrayPaths.TUBES_DRY, answer)))
                .isEqualTo(no ? List.of("WARNING TRAYS trays.wet at /trays/tubesDry") : List.of());
        assertThat(found(TypedSetup.blank().choose(TrayPaths.TRAYS_LEVEL, answer)))
                .isEqualTo(no ? List.of("WARNING TRAYS trays.notLevel at /trays/traysLevel") : List.of());
        assertThat(found(TypedSetup.blank().choose(TrayPaths.CLEAR_OF_WHEELMARKS, answer)))
                .isEqualTo(no ? List.of("WARNING TRAYS trays.wheelmarks at /trays/clearOfWheelmarks") : List.of());
    }

    @ParameterizedTest
    @EnumSource(Surface.class)
    void onlyAHardFloorMakesGranulesBounce(Surface surface) {
        assertThat(found(TypedSetup.blank().choose(TrayPaths.SURFACE, surface)))
                .isEqualTo(
                        surface == Surface.HARD_FLOOR
                                ? List.of("WARNING TRAYS trays.bounce at /trays/surface")
                                : List.of());
    }
}
