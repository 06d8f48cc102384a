package org.evenfall.wizard;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.ResourceBundle;
import org.evenfall.finding.Finding;
import org.evenfall.finding.Sentences;
import org.evenfall.finding.Severity;
import org.evenfall.finding.Step;
import org.evenfall.quantity.EnteredQuantity;
import org.evenfall.quantity.Unit;
import org.evenfall.setup.Assessment;
import org.evenfall.setup.Assessor;
import org.evenfall.setup.entry.AmountKind;
import org.evenfall.setup.entry.Setup;
import org.evenfall.setup.entry.TrayEntries;
import org.evenfall.store.SetupJson;
import org.junit.jupiter.api.Test;

/** What steps 4 to 7 say and prefill, without a window. */
class LaterStepsWordsTest {

    private static final Sentences WORDS =
            new Sentences(ResourceBundle.getBundle("org.evenfall.words", Locale.ENGLISH), Locale.ENGLISH);
    private static final Sentences GERMAN_NUMBERS =
            new Sentences(ResourceBundle.getBundle("org.evenfall.words", Locale.ENGLISH), Locale.GERMANY);

    private static Setup demo() throws Exception {
        return new SetupJson()
                .read(Files.readString(Path.of("demo", "setup.json")), "demo")
                .setup();
    }

    @Test
    void aNewTrayTestBeginsWithTheAdvisedLeverAndKeepsTheRest() throws Exception {
        Setup uneven =
                demo().withTrays(demo().trays().withTests(demo().trays().tests().subList(0, 1)));
        Assessment assessment = Assessor.assess(uneven);
        double advised = assessment.trays().advice().moves().get(0).to();
        Setup next = TrayTestDraft.added(uneven, assessment, Locale.GERMANY);
        var test = next.trays().tests().get(1);
        assertThat(test.settings().levers().get("long vane").text())
                .isEqualTo(GERMAN_NUMBERS.number(advised, advised == Math.rint(advised) ? 0 : 1, Unit.NONE));
        assertThat(test.settings().levers().get("drop point"))
                .isEqualTo(uneven.trays().tests().get(0).settings().levers().get("drop point"));
        assertThat(test.openingLeft()).isEqualTo(new EnteredQuantity("27,5", Unit.NONE));
        assertThat(test.catches()).isEmpty();
        assertThat(next.trays().tests().get(0)).isEqualTo(uneven.trays().tests().get(0));
        // what is prefilled can be read again
        assertThat(Assessor.assess(next).findings())
                .noneMatch(finding ->
                        finding.severity() == Severity.STOP && finding.field().startsWith("/trays/tests/1"));
    }

    @Test
    void theFirstTrayTestBeginsWithTheSettingsOfTheMatch() throws Exception {
        Setup blank = demo().withTrays(TrayEntries.EMPTY);
        Setup next = TrayTestDraft.added(blank, Assessor.assess(blank), Locale.ENGLISH);
        assertThat(next.trays().tests().get(0).settings())
                .isEqualTo(blank.match().settings());
        assertThat(next.trays().tests().get(0).runs().isBlank()).isFalse();
    }

    @Test
    void theFirstBucketTestBeginsWithTheHandbooksOpening() throws Exception {
        Setup blank = demo().withRate(demo().rate().withBucketTests(List.of()));
        Assessment assessment = Assessor.assess(blank);
        Setup next = BucketTestDraft.added(blank, assessment, Locale.ENGLISH);
        var test = next.rate().bucketTests().get(0);
        assertThat(test.openingLeft().text())
                .isEqualTo(WORDS.number(assessment.rate().plan().flow().firstOpening(), 1, Unit.NONE));
        assertThat(test.time()).isEqualTo(new EnteredQuantity("20", Unit.S));
    }

    @Test
    void everyAttemptIsToldInOneLine() throws Exception {
        List<String> lines = Assessor.assess(demo()).rate().bucketTests().stream()
                .map(test -> RateCheckForm.attempt(WORDS, 1, test).replace('\u00a0', ' '))
                .toList();
        assertThat(lines.get(0))
                .startsWith("Test 1: 86.0 kg/min from all outlets")
                .contains("12 % too little", "left and right alike", "repeats within 1.4 %");
    }

    @Test
    void theNextOpeningIsToldWithWhereItComesFrom() throws Exception {
        var tests = Assessor.assess(demo()).rate().bucketTests();
        assertThat(RateCheckForm.nextOpening(WORDS, null)).isEmpty();
        assertThat(RateCheckForm.nextOpening(WORDS, tests.get(0)))
                .startsWith("Next opening: left ")
                .contains(WORDS.choice(tests.get(0).next().source()));
        assertThat(RateCheckForm.nextOpening(WORDS, tests.get(1))).isEqualTo(WORDS.text("rate.within"));
    }

    @Test
    void thePlanIsToldOnlyAsFarAsItIsKnown() throws Exception {
        assertThat(RatePlanForm.figures(WORDS, null)).isEmpty();
        Setup bare = demo().withRate(demo().rate()
                .withPlan(
                        demo().rate().plan().withArea(EnteredQuantity.EMPTY).withHopperVolume(EnteredQuantity.EMPTY)));
        assertThat(RatePlanForm.figures(WORDS, Assessor.assess(bare).rate().plan()))
                .extracting(FigureRow.Figure::name)
                .contains("Product", "Nitrogen", "One outlet")
                .doesNotContain("Bags", "In all", "Hopper loads");
        assertThat(RatePlanForm.money(WORDS, Assessor.assess(demo()).rate().plan()))
                .extracting(FigureRow.Figure::name)
                .contains("Would cost the same at", "Saved on the area");
    }

    @Test
    void anotherWayOfReadingTurnsTheUnitsAndNothingElse() throws Exception {
        TrayEntries volumes = TraysBeforeForm.withKind(demo().trays(), AmountKind.VOLUME);
        assertThat(volumes.tests().get(0).catches().get(0)).isEqualTo(new EnteredQuantity("12.9", Unit.ML));
        assertThat(TraysBeforeForm.withKind(volumes, AmountKind.MASS))
                .isEqualTo(demo().trays().withCatchKind(AmountKind.MASS));
    }

    @Test
    void adviceIsToldInWords() throws Exception {
        Setup uneven =
                demo().withTrays(demo().trays().withTests(demo().trays().tests().subList(0, 1)));
        var trays = Assessor.assess(uneven).trays();
        assertThat(TraysOutcome.headline(WORDS, trays.advice()))
                .startsWith("Turn “long vane” from 9 to ")
                .endsWith("wider.");
        assertThat(TraysOutcome.expected(WORDS, trays.advice())).startsWith("CV to expect then: about ");
        assertThat(TraysOutcome.headline(WORDS, null)).isEqualTo("Do the tray test");
        var good = Assessor.assess(demo()).trays();
        assertThat(TraysOutcome.headline(WORDS, good.advice())).isEqualTo("Keep the settings");
        assertThat(TraysOutcome.expected(WORDS, good.advice())).isEmpty();
    }

    @Test
    void whatStopsACardComesBeforeWhatIsMissing() throws Exception {
        Setup bad = demo().withCard(demo().card().withMeasuredBy(""))
                .withRate(demo().rate()
                        .withPlan(demo().rate().plan().withSpeed(new EnteredQuantity("300", Unit.KM_PER_H))));
        List<Finding> open = CardStep.open(Assessor.assess(bad));
        assertThat(open.get(0).severity()).isEqualTo(Severity.STOP);
        assertThat(open.get(0).step()).isEqualTo(Step.RATE);
        assertThat(open).extracting(Finding::key).contains("missing.measuredBy");
        assertThat(CardStep.open(Assessor.assess(demo()))).isEmpty();
    }
}
