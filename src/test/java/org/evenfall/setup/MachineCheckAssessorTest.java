package org.evenfall.setup;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.evenfall.setup.Entered.lines;

import java.util.Arrays;
import java.util.List;
import org.evenfall.machine.CheckAnswer;
import org.evenfall.machine.CheckItem;
import org.evenfall.machine.MachineCheckResult;
import org.evenfall.machine.MachineProfile;
import org.evenfall.machine.Side;
import org.evenfall.setup.entry.CheckEntry;
import org.evenfall.setup.entry.UnknownKeys;
import org.evenfall.setup.entry.VaneEntry;
import org.evenfall.setup.path.EntryPath;
import org.evenfall.setup.path.MachineCheckPaths;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The machine check: a good one, in which left and right differ within the limits, and one thing changed at a time. */
class MachineCheckAssessorTest {

    private static final MachineProfile MACHINE =
            new MachineProfile("", List.of(), null, 960.0, 480.0, 560.0, 2, null, List.of(), List.of(), null);

    private static Entered good() {
        Entered entered = Entered.inEmpty()
                .with(MachineCheckPaths.CHECKS, checks(CheckItem.GUARDS, CheckAnswer.GOOD, ""))
                .with(MachineCheckPaths.HEIGHT_LEFT, "82 cm")
                .with(MachineCheckPaths.HEIGHT_RIGHT, "81 cm")
                .with(MachineCheckPaths.TYRE_LEFT, "1.7 bar")
                .with(MachineCheckPaths.TYRE_RIGHT, "1.6 bar")
                .with(MachineCheckPaths.PTO_MEASURED, "531 rpm");
        return vane(vane(entered, 0, Side.LEFT, "long", "331 mm"), 1, Side.RIGHT, "short", "330 mm");
    }

    /** Each item good but one. */
    private static List<CheckEntry> checks(CheckItem item, CheckAnswer answer, String reason) {
        return Arrays.stream(CheckItem.values())
                .map(each -> each == item
                        ? new CheckEntry(each, answer, reason, UnknownKeys.NONE)
                        : new CheckEntry(each, CheckAnswer.GOOD, "", UnknownKeys.NONE))
                .toList();
    }

    /** New it was 333 mm. */
    private static Entered vane(Entered entered, int index, Side side, String label, String length) {
        EntryPath<VaneEntry> at = MachineCheckPaths.VANES.item(index);
        return entered.with(MachineCheckPaths.VANE_DISC, at, side)
                .with(MachineCheckPaths.VANE_LABEL, at, label)
                .with(MachineCheckPaths.VANE_LENGTH, at, length)
                .with(MachineCheckPaths.VANE_LENGTH_NEW, at, "333 mm")
                .with(MachineCheckPaths.VANE_STRAIGHT_SMOOTH_UNHOLED, at, CheckAnswer.GOOD);
    }

    private static Assessed<MachineCheckResult> assess(Entered entered) {
        return MachineCheckAssessor.assess(entered.read(), MACHINE, 540.0);
    }

    private static List<String> findings(Entered entered) {
        return lines(assess(entered).findings());
    }

    private static List<String> when(boolean reported, String line) {
        return reported ? List.of(line) : List.of();
    }

    /** 82 − 81 = 1 cm; 1.7 − 1.6 = 0.1 bar; 960 × 531 / 540 = 944 rpm; wear 2 mm left, 3 mm right. */
    @Test
    void everyEntryIsInItsOwnPlace() {
        Assessed<MachineCheckResult> assessed = assess(good());
        MachineCheckResult result = assessed.present();
        assertThat(assessed.findings()).isEmpty();
        assertThat(result.blocksFieldTest()).isFalse();
        assertThat(result.levelDifferenceM()).isCloseTo(0.01, within(1e-9));
        assertThat(result.tyreDifferenceBar()).isCloseTo(0.1, within(1e-9));
        assertThat(result.ptoRpm()).isEqualTo(531);
        assertThat(result.discRpm()).isCloseTo(944, within(1e-9));
        assertThat(result.vanes()).extracting(vane -> vane.side()).containsExactly(Side.LEFT, Side.RIGHT);
        assertThat(result.vanes()).extracting(vane -> vane.label()).containsExactly("long", "short");
        assertThat(result.vanes().get(0).wearM()).isCloseTo(0.002, within(1e-9));
        assertThat(result.vanes().get(1).wearM()).isCloseTo(0.003, within(1e-9));
    }

    @Test
    void whatIsMissing() {
        String guards = "MISSING MACHINE missing.guards /yard/checks []";
        String checks = "NOTE MACHINE missing.checks /yard/checks []";
        String pto = "MISSING MACHINE missing.pto /yard/ptoMeasured []";
        String vanes = "MISSING MACHINE missing.vanes /yard/vanes []";
        String level = "NOTE MACHINE missing.level /yard/heightLeft []";
        assertThat(findings(Entered.inEmpty())).containsExactly(guards, checks, pto, vanes, level);
        assertThat(findings(good().with(MachineCheckPaths.HEIGHT_RIGHT, ""))).containsExactly(level);
        assertThat(findings(good().with(MachineCheckPaths.PTO_MEASURED, ""))).containsExactly(pto);
        assertThat(findings(good().with(MachineCheckPaths.VANES, List.of()))).containsExactly(vanes);
        List<CheckEntry> open = checks(CheckItem.TILT, CheckAnswer.UNANSWERED, "");
        assertThat(findings(good().with(MachineCheckPaths.CHECKS, open))).containsExactly(checks);
        assertThat(findings(good().with(MachineCheckPaths.TYRE_LEFT, ""))).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({
        "GUARDS, FAILED, '', STOP MACHINE yard.guards /yard/checks [choice.CheckItem.GUARDS]",
        "GUARDS, FAILED, why not, STOP MACHINE yard.guards /yard/checks [choice.CheckItem.GUARDS]",
        "DISCS, FAILED, ' ', STOP MACHINE yard.failed /yard/checks [choice.CheckItem.DISCS]",
        "DISCS, FAILED, new ones come, 'WARNING MACHINE yard.overridden /yard/checks [choice.CheckItem.DISCS, new ones come]'",
        "AGITATOR, FAILED, '', WARNING MACHINE yard.failedFlow /yard/checks [choice.CheckItem.AGITATOR]",
        "AGITATOR, NOT_FITTED, '', ''",
        "DISCS, GOOD, a reason, ''"
    })
    void aPartThatFailed(CheckItem item, CheckAnswer answer, String reason, String line) {
        Assessed<MachineCheckResult> assessed =
                assess(good().with(MachineCheckPaths.CHECKS, checks(item, answer, reason)));
        assertThat(lines(assessed.findings())).isEqualTo(when(!line.isEmpty(), line));
        assertThat(assessed.present().blocksFieldTest()).isEqualTo(line.startsWith("STOP"));
    }

    /** 333 mm when new: worn by 4.9, 5 and 5.1 mm. */
    @ParameterizedTest
    @CsvSource({"328.1, false", "328, false", "327.9, true"})
    void aWornVaneFails(String length, boolean failed) {
        Entered entered = vane(good(), 1, Side.RIGHT, "short", length + " mm");
        assertThat(findings(entered))
                .isEqualTo(when(failed, "STOP MACHINE yard.vane /yard/vanes [short, choice.Side.RIGHT, 5.1:0 mm]"));
        assertThat(assess(entered).present().blocksFieldTest()).isEqualTo(failed);
        Entered overridden = entered.with(MachineCheckPaths.VANE_OVERRIDE_REASON, "new set ordered");
        assertThat(findings(overridden))
                .isEqualTo(when(
                        failed,
                        "WARNING MACHINE yard.vaneOverridden /yard/vanes [short, choice.Side.RIGHT, new set ordered]"));
        assertThat(assess(overridden).present().blocksFieldTest()).isFalse();
    }

    /** 331 of 333 mm: worn by 2 mm, but bent. */
    @Test
    void aBentVaneFails() {
        Entered entered = good().with(
                        MachineCheckPaths.VANE_STRAIGHT_SMOOTH_UNHOLED,
                        MachineCheckPaths.VANES.item(0),
                        CheckAnswer.FAILED);
        assertThat(findings(entered))
                .containsExactly("STOP MACHINE yard.vane /yard/vanes [long, choice.Side.LEFT, 2:0 mm]");
        Entered notMeasured = entered.with(MachineCheckPaths.VANE_LENGTH, MachineCheckPaths.VANES.item(0), "");
        assertThat(findings(notMeasured)).singleElement().asString().startsWith("STOP MACHINE yard.vane /yard/vanes");
    }

    /**
     * Source (from memory): ISO 500-1, PTO type 1, 540 rpm. Limits 2 cm, 0.2 bar, 3 % of 540 rpm = 16.2 rpm: 523.8 to 556.2;
     * 0.1 rpm beyond is 16.3 / 5.4 = 3.018519 %.
     */
    @ParameterizedTest
    @CsvSource({
        "level, heightLeft, 83 cm, ''", "level, heightLeft, 83.1 cm, '2.1:1 cm, 2:1 cm'",
        "level, heightLeft, 79 cm, ''", "level, heightLeft, 78.9 cm, '2.1:1 cm, 2:1 cm'",
        "tyres, tyreLeft, 1.8 bar, ''", "tyres, tyreLeft, 1.81 bar, '0.21:1 bar, 0.2:1 bar'",
        "tyres, tyreLeft, 1.4 bar, ''", "tyres, tyreLeft, 1.39 bar, '0.21:1 bar, 0.2:1 bar'",
        "pto, ptoMeasured, 556.2 rpm, ''", "pto, ptoMeasured, 556.3 rpm, '3.018519:1 %, 3:1 %'",
        "pto, ptoMeasured, 523.8 rpm, ''", "pto, ptoMeasured, 523.7 rpm, '3.018519:1 %, 3:1 %'"
    })
    void aDifferenceBeyondItsLimit(String key, String name, String typed, String args) {
        Entered entered = good().with(
                        switch (key) {
                            case "level" -> MachineCheckPaths.HEIGHT_LEFT;
                            case "tyres" -> MachineCheckPaths.TYRE_LEFT;
                            default -> MachineCheckPaths.PTO_MEASURED;
                        },
                        typed);
        boolean beyond = !args.isEmpty();
        assertThat(findings(entered))
                .isEqualTo(when(beyond, "STOP MACHINE yard." + key + " /yard/" + name + " [" + args + "]"));
        assertThat(assess(entered).present().blocksFieldTest()).isEqualTo(beyond);
        Entered overridden = entered.with(MachineCheckPaths.LEVEL_OVERRIDE_REASON, "soft ground");
        assertThat(findings(overridden))
                .isEqualTo(when(
                        beyond,
                        "WARNING MACHINE yard." + key + "Overridden /yard/" + name + " [" + args + ", soft ground]"));
        assertThat(assess(overridden).present().blocksFieldTest()).isFalse();
    }

    /** The handbook allows 480 to 560 rpm; without a wanted speed there is no deviation. */
    @ParameterizedTest
    @CsvSource({"479, true", "480, false", "560, false", "561, true"})
    void aPtoSpeedOutsideTheHandbook(int rpm, boolean reported) {
        ReadSetup read =
                good().with(MachineCheckPaths.PTO_MEASURED, rpm + " rpm").read();
        assertThat(lines(MachineCheckAssessor.assess(read, MACHINE, null).findings()))
                .isEqualTo(when(reported, "STOP MACHINE settings.ptoBeyond /yard/ptoMeasured [" + rpm + " rpm]"));
    }
}
