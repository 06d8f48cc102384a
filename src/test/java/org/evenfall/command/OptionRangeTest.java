package org.evenfall.command;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.ResourceBundle;
import org.evenfall.finding.Sentences;
import org.evenfall.store.SetupJson;
import org.evenfall.store.UserFolder;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import picocli.CommandLine;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;

/** Ranges of the options of the flight commands: at the limits and just outside. */
class OptionRangeTest {

    private static final CommandSpec SPEC = new CommandLine(CommandSpec.create()).getCommandSpec();

    private static final String FLIGHT =
            "flight --diameter-mm 3 --density-kg-m3 1300 --speed-m-s 30 --angle-deg 5 --height-m 1";
    private static final String VANE = "flight vane --rpm 800 --radius-m 0.4 --drop-radius-m 0.12 --friction 0.2";

    @Test
    void withinTheLimitsTheValueItself() {
        for (double value : new double[] {2, Math.nextUp(2.0), 3.5, Math.nextDown(5.0), 5}) {
            assertThat(OptionRange.within(SPEC, "--x", value, 2, 5)).isEqualTo(value);
        }
        for (double value : new double[] {Math.nextDown(2.0), Math.nextUp(5.0), Double.NaN}) {
            assertThatThrownBy(() -> OptionRange.within(SPEC, "--x", value, 2, 5))
                    .isInstanceOf(ParameterException.class)
                    .hasMessage("--x: " + value + "; allowed is 2 to 5");
        }
        assertThatThrownBy(() -> OptionRange.within(SPEC, "--x", null, 0.001, 200000))
                .isInstanceOf(ParameterException.class)
                .hasMessage("--x: is missing; allowed is 0.001 to 200000");
    }

    @ParameterizedTest
    @CsvSource({
        "--diameter-mm, 0.1, 20",
        "--density-kg-m3, 200, 5000",
        "--speed-m-s, 0, 200",
        "--angle-deg, -90, 90",
        "--height-m, 0, 1000",
        "--wind-m-s, -40, 40",
        "--wind-across-m-s, -40, 40",
        "--shape-factor, 0.5, 5",
        "--gravity-m-s2, 0.1, 30"
    })
    void flight(String option, double low, double high) {
        limits(FLIGHT, option, low, high);
    }

    @Test
    void constantDrag() {
        limits("flight --drag-per-m 0.1 --speed-m-s 30 --angle-deg 5 --height-m 1", "--drag-per-m", 0, 100);
    }

    @ParameterizedTest
    @CsvSource({
        "--rpm, 100, 5000, 0.999, 5000.1",
        "--radius-m, 0.1202, 2, 0.0099, 2.001",
        "--drop-radius-m, 0.02, 0.3996, 0.00009, 0.39961",
        "--friction, 0, 1.5, -0.001, 1.501",
        "--gravity-m-s2, 0, 30, -0.001, 30.001"
    })
    void vane(String option, double low, double high, double below, double above) {
        allowed(VANE, option, low);
        allowed(VANE, option, high);
        refused(VANE, option, below);
        refused(VANE, option, above);
    }

    /** Up to 0.999 of the drop radius; without friction the granule moves on any vane. */
    @Test
    void offsetOfTheVane() {
        String smooth = VANE.replace("--friction 0.2", "--friction 0");
        allowed(smooth, "--offset-m", -0.1198);
        allowed(smooth, "--offset-m", 0.1198);
        refused(smooth, "--offset-m", -0.119881);
        refused(smooth, "--offset-m", 0.119881);
    }

    @Test
    void drag() {
        limits("flight drag --reynolds 200", "--reynolds", 0.0001, 200_000);
    }

    @Test
    void withoutWindAcrossNothingIsReportedOfIt() {
        assertThat(run(FLIGHT + " --json", new StringWriter())).isZero();
        StringWriter calm = new StringWriter();
        run(FLIGHT, calm);
        assertThat(calm.toString()).contains("landingM  ").doesNotContain("acrossM");
        StringWriter windy = new StringWriter();
        run(FLIGHT + " --wind-across-m-s 3", windy);
        assertThat(windy.toString()).contains("acrossM  1.0721").contains("timeS  ");
    }

    @Test
    void eitherDragOrGranule() {
        for (String call : List.of(
                FLIGHT + " --drag-per-m 0.1",
                "flight --speed-m-s 30 --angle-deg 5 --height-m 1",
                "flight --drag-per-m 0.1 --density-kg-m3 1300 --speed-m-s 30 --angle-deg 5 --height-m 1")) {
            assertThat(run(call, new StringWriter())).as(call).isEqualTo(2);
        }
    }

    @Test
    void aDiscThatTurnsTooSlowlyIsRefused() {
        assertThat(run(VANE.replace("800", "20"), new StringWriter())).isEqualTo(2);
    }

    private static void limits(String call, String option, double low, double high) {
        allowed(call, option, low);
        allowed(call, option, high);
        refused(call, option, Math.nextDown(low));
        refused(call, option, Math.nextUp(high));
    }

    private static void allowed(String call, String option, double value) {
        assertThat(run(with(call, option, value), new StringWriter()))
                .as(option + " " + value)
                .isZero();
    }

    private static void refused(String call, String option, double value) {
        assertThat(run(with(call, option, value), new StringWriter()))
                .as(option + " " + value)
                .isEqualTo(2);
    }

    /** The call with the option at a value, in place of the one it has. */
    private static String with(String call, String option, double value) {
        List<String> words = new ArrayList<>(List.of(call.split(" ")));
        int at = words.indexOf(option);
        if (at >= 0) {
            words.set(at + 1, Double.toString(value));
        } else {
            words.add(option + "=" + value);
        }
        return String.join(" ", words);
    }

    private static int run(String call, StringWriter out) {
        Path folder = Path.of("target");
        CommandContext context = new CommandContext(
                System.in,
                new PrintWriter(out),
                new PrintWriter(new StringWriter()),
                folder,
                new UserFolder(folder.resolve("home")),
                Clock.fixed(Instant.parse("2027-03-18T09:00:00Z"), ZoneOffset.UTC),
                () -> new Sentences(ResourceBundle.getBundle("org.evenfall.words", Locale.ENGLISH), Locale.UK),
                new SetupJson(),
                file -> Optional.of("No window here."));
        return CommandFace.run(context, List.of(call.split(" ")));
    }
}
