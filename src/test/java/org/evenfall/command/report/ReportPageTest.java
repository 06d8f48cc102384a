package org.evenfall.command.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Locale;
import org.evenfall.result.ResultLine;
import org.junit.jupiter.api.Test;

/** Lines and columns of a page. */
class ReportPageTest {

    private final ReportPage page = new ReportPage(Locale.UK);

    private List<String> lines() {
        return page.text().lines().toList();
    }

    @Test
    void figuresAreUnderEachOther() {
        page.results(List.of(
                new ResultLine("Rate", "1\u00a0kg"),
                ResultLine.sentence("A sentence."),
                new ResultLine("Opening", "27")));
        assertThat(lines()).containsExactly("   Rate     1 kg", "   A sentence.", "   Opening  27");
    }

    @Test
    void aLongFigureGoesOnUnderItself() {
        page.results(List.of(new ResultLine("Rate", "word ".repeat(20).strip())));
        assertThat(lines()).hasSize(2);
        assertThat(lines().get(1)).startsWith("         word").doesNotStartWith("          ");
        assertThat(lines()).allMatch(line -> line.length() <= ReportPage.WIDTH);
    }

    @Test
    void aLabelAboveTheLongestHasItsOwnLine() {
        String longest = "l".repeat(40);
        page.results(List.of(new ResultLine(longest, "1"), new ResultLine(longest + "l", "2")));
        assertThat(lines()).containsExactly("   " + longest + "  1", "   " + longest + "l", "      2");
    }

    @Test
    void theCellsOfATableAreInColumns() {
        page.table(List.of(List.of("Position", "-14\u00a0m", "0\u00a0m"), List.of("Test 1", "9\u00a0%", "101\u00a0%")));
        assertThat(lines()).containsExactly("   Position  -14 m    0 m", "   Test 1      9 %  101 %");
    }

    @Test
    void headingsTitlesAndEmptySentences() {
        page.line("Farm", 0);
        page.heading("1  Product: done");
        page.title("The bucket");
        page.sentence("");
        assertThat(lines()).containsExactly("Farm", "", "1  Product: done", "   The bucket:");
    }

    @Test
    void aPercentSignStaysWithItsNumber() {
        page.sentence("x".repeat(74) + " 15 % more");
        assertThat(lines()).containsExactly("   " + "x".repeat(74), "   15 % more");
    }
}
