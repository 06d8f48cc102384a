package org.evenfall.result;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Locale;
import java.util.ResourceBundle;
import org.evenfall.finding.Sentences;
import org.evenfall.flight.WidthScan;
import org.evenfall.setup.SinglePassTest;
import org.evenfall.trays.OverlapResult;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The long pass in words: what is left out where it is not known, and which side has more. */
class SinglePassLinesTest {

    private static final Sentences WORDS =
            new Sentences(ResourceBundle.getBundle("org.evenfall.words", Locale.ENGLISH), Locale.UK);

    private static List<String> lines(
            @Nullable Double cvPercent,
            @Nullable Double halfRateWidthM,
            double leftRightPercent,
            WidthScan.Interval... atMost15) {
        OverlapResult overlap =
                new OverlapResult(28, List.of(0.0), List.of(10.0), 10, cvPercent, halfRateWidthM, leftRightPercent, 1);
        SinglePassTest line = new SinglePassTest(
                overlap, List.of(), List.of(atMost15), List.of(-1.0, 0.0, 1.0), List.of(1.0, 2.0, 1.0));
        return SinglePassLines.figures(WORDS, line).stream()
                .map(each -> (each.label() + ": " + each.value()).replace('\u00a0', ' '))
                .toList();
    }

    @Test
    void allThatIsKnown() {
        assertThat(lines(11.6, 31.7, 2.4, new WidthScan.Interval(12, 20), new WidthScan.Interval(26, 30.4)))
                .containsExactly(
                        "Laid at 28 m: CV 12 %",
                        "Widths up to 10 %: none",
                        "Widths up to 15 %: 12 to 20 m, 26 to 30 m",
                        "Half-rate width: 32 m",
                        "Left and right: left 2 % more");
    }

    @Test
    void aLineThatCaughtNothingHasNoCvAndNoWidthOfHalfTheRate() {
        assertThat(lines(null, null, 0))
                .noneMatch(line -> line.startsWith("Laid at"))
                .noneMatch(line -> line.startsWith("Half-rate width: ") && line.matches(".*\\d.*"))
                .contains("Widths up to 15 %: none", "Left and right: alike");
    }

    @ParameterizedTest
    @CsvSource({"0.4, alike", "-0.4, alike", "0.6, left 1 % more", "-0.6, right 1 % more", "-12, right 12 % more"})
    void theSideThatHasMore(double leftRightPercent, String words) {
        assertThat(lines(11.6, 31.7, leftRightPercent)).contains("Left and right: " + words);
    }
}
