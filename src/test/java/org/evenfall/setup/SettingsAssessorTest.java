package org.evenfall.setup;

import static org.assertj.core.api.Assertions.assertThat;
import static org.evenfall.setup.Entered.lines;

import java.util.List;
import java.util.Map;
import org.evenfall.machine.Lever;
import org.evenfall.machine.MachineProfile;
import org.evenfall.machine.Widening;
import org.evenfall.setup.entry.SettingsEntries;
import org.evenfall.setup.entry.TrayTestEntry;
import org.evenfall.setup.path.EntryPath;
import org.evenfall.setup.path.MatchPaths;
import org.evenfall.setup.path.QuantityMap;
import org.evenfall.setup.path.SettingsPaths;
import org.evenfall.setup.path.TrayPaths;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Levers and PTO speed within their limits, at two of the places where a setup has settings. */
class SettingsAssessorTest {

    private static final EntryPath<SettingsEntries> MATCH = MatchPaths.SETTINGS.only();
    private static final EntryPath<SettingsEntries> TRAY_TEST =
            TrayPaths.TESTS.item(1).then("settings", TrayTestEntry::settings, TrayTestEntry::withSettings);

    private static MachineProfile machine(@Nullable Double low, @Nullable Double high) {
        return new MachineProfile(
                "",
                List.of(),
                null,
                null,
                low,
                high,
                2,
                null,
                List.of(
                        new Lever("long", "°", 10, 40, 0.5, Widening.HIGHER),
                        new Lever("short", "", -5, 20, 1, Widening.LOWER)),
                List.of(),
                null);
    }

    private static Entered lever(EntryPath<SettingsEntries> at, String label, String typed) {
        return Entered.inEmpty().with(QuantityMap.item(SettingsPaths.LEVERS.at(at), label), typed);
    }

    private static Assessed<ReadSettings> assess(Entered entered, EntryPath<SettingsEntries> at) {
        return SettingsAssessor.assess(entered.read(), at, machine(480.0, 580.0));
    }

    @Test
    void everyEntryIsInItsOwnPlace() {
        Entered entered = lever(MATCH, "long", "27.5")
                .with(QuantityMap.item(SettingsPaths.LEVERS.at(MATCH), "short"), "-3")
                .with(QuantityMap.item(SettingsPaths.LEVERS.at(MATCH), "no such lever"), "7")
                .with(SettingsPaths.PTO_SPEED, MATCH, "530 rpm")
                .with(SettingsPaths.HEIGHT_OVER_CROP, MATCH, "0.76 m")
                .with(SettingsPaths.TILT, MATCH, "-1.5 °");
        Assessed<ReadSettings> assessed = assess(entered, MATCH);
        assertThat(assessed.present())
                .isEqualTo(new ReadSettings(Map.of("long", 27.5, "short", -3.0), 530.0, 0.76, -1.5));
        assertThat(assessed.findings()).isEmpty();
    }

    @Test
    void whatIsNotTypedIsNoFinding() {
        Assessed<ReadSettings> assessed = assess(Entered.inEmpty(), MATCH);
        assertThat(assessed.present()).isEqualTo(new ReadSettings(Map.of(), null, null, null));
        assertThat(assessed.findings()).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({
        "long, 9.9, '9.9, 10:0, 40:0'",
        "long, 10, ''",
        "long, 40, ''",
        "long, 40.1, '40.1, 10:0, 40:0'",
        "short, -5.1, '-5.1, -5:0, 20:0'",
        "short, -5, ''",
        "short, 20, ''",
        "short, 20.1, '20.1, -5:0, 20:0'"
    })
    void aLeverBeyondItsEndStopsIsLeftOut(String label, String typed, String args) {
        Assessed<ReadSettings> assessed = assess(lever(MATCH, label, typed), MATCH);
        assertThat(lines(assessed.findings()))
                .isEqualTo(
                        args.isEmpty()
                                ? List.of()
                                : List.of("STOP MATCH settings.leverBeyond /match/settings/levers/" + label + " ["
                                        + label + ", " + args + "]"));
        assertThat(assessed.present().levers())
                .isEqualTo(args.isEmpty() ? Map.of(label, Double.valueOf(typed)) : Map.of());
    }

    @Test
    void aFindingIsAtThePlaceOfItsSettings() {
        Entered entered = lever(TRAY_TEST, "short", "21").with(SettingsPaths.PTO_SPEED, TRAY_TEST, "581 rpm");
        assertThat(lines(assess(entered, TRAY_TEST).findings()))
                .containsExactly(
                        "STOP TRAYS settings.leverBeyond /trays/tests/1/settings/levers/short [short, 21, -5:0, 20:0]",
                        "STOP TRAYS settings.ptoBeyond /trays/tests/1/settings/ptoSpeed [581 rpm]");
        assertThat(assess(entered, MATCH).findings()).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({"479, true", "480, false", "481, false", "579, false", "580, false", "581, true"})
    void aPtoSpeedOutsideTheHandbookIsReportedAndKept(double rpm, boolean reported) {
        Entered entered = Entered.inEmpty().with(SettingsPaths.PTO_SPEED, MATCH, (int) rpm + " rpm");
        Assessed<ReadSettings> assessed = assess(entered, MATCH);
        assertThat(lines(assessed.findings()))
                .isEqualTo(
                        reported
                                ? List.of("STOP MATCH settings.ptoBeyond /match/settings/ptoSpeed [" + (int) rpm
                                        + " rpm]")
                                : List.of());
        assertThat(assessed.present().ptoRpm()).isEqualTo(rpm);
        assertThat(SettingsAssessor.beyond(machine(480.0, 580.0), rpm)).isEqualTo(reported);
    }

    @Test
    void aHandbookWithOneLimitHasNoOther() {
        assertThat(SettingsAssessor.beyond(machine(null, 580.0), 200)).isFalse();
        assertThat(SettingsAssessor.beyond(machine(480.0, null), 1200)).isFalse();
        assertThat(SettingsAssessor.beyond(machine(null, 580.0), 581)).isTrue();
        assertThat(SettingsAssessor.beyond(machine(480.0, null), 479)).isTrue();
    }
}
