package org.evenfall.wizard;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.ResourceBundle;
import org.evenfall.finding.Finding;
import org.evenfall.finding.FindingKind;
import org.evenfall.finding.Sentences;
import org.evenfall.finding.Step;
import org.evenfall.machine.FactorRule;
import org.evenfall.machine.RateSetting;
import org.evenfall.quantity.EnteredQuantity;
import org.evenfall.quantity.Unit;
import org.evenfall.rate.AgainstOther;
import org.evenfall.rate.NitrogenSplits;
import org.evenfall.result.AdviceLines;
import org.evenfall.result.CardLines;
import org.evenfall.result.RateCheckLines;
import org.evenfall.result.RatePlanLines;
import org.evenfall.result.ResultLine;
import org.evenfall.result.TrayTestLines;
import org.evenfall.setup.Assessor;
import org.evenfall.setup.entry.BucketEntry;
import org.evenfall.setup.entry.Setup;
import org.evenfall.store.SetupJson;
import org.evenfall.trays.Contrast;
import org.evenfall.trays.RegionContrasts;
import org.junit.jupiter.api.Test;

/** What steps 4 to 7 say and prefill, without a window. */
class LaterStepsWordsTest {

    private static final Sentences WORDS =
            new Sentences(ResourceBundle.getBundle("org.evenfall.words", Locale.ENGLISH), Locale.ENGLISH);

    private static Setup demo() throws Exception {
        return new SetupJson().read(Files.readString(Path.of("demo", "setup.json")), "demo");
    }

    @Test
    void everyAttemptIsOneLine() throws Exception {
        List<String> lines = Assessor.assess(demo()).rate().bucketTests().stream()
                .map(test -> RateCheckLines.attempt(WORDS, 1, test, RateSetting.OPENING)
                        .replace('\u00a0', ' '))
                .toList();
        assertThat(lines.get(0))
                .startsWith("Test 1: 86.0 kg/min from all outlets")
                .contains("12 % too little", "left and right alike", "repeats within 1.4 %");
    }

    @Test
    void theNextOpeningIsGivenWithItsOrigin() throws Exception {
        var tests = Assessor.assess(demo()).rate().bucketTests();
        assertThat(RateCheckLines.nextOpening(WORDS, null, RateSetting.OPENING)).isEmpty();
        assertThat(RateCheckLines.nextOpening(WORDS, tests.get(0), RateSetting.OPENING))
                .startsWith("Next opening: left ")
                .contains(WORDS.choice(tests.get(0).next().source()));
        assertThat(RateCheckLines.nextOpening(WORDS, tests.get(1), RateSetting.OPENING))
                .isEqualTo(WORDS.text("rate.within"));
    }

    /** The demo, its scale read as a factor: at 25 it gave 85.95 of 97.391 kg/min at the planned 12 km/h. */
    @Test
    void aFactorIsCalledSoWithThreeDecimals() throws Exception {
        Setup demo = demo();
        Setup factor = demo.withMachine(
                demo.machine().withRateSetting(RateSetting.FACTOR).withFactorRule(FactorRule.CAUGHT_OVER_SHOWN));
        var tests = Assessor.assess(factor).rate().bucketTests();
        Sentences german =
                new Sentences(ResourceBundle.getBundle("org.evenfall.words", Locale.ENGLISH), Locale.GERMANY);
        assertThat(RateCheckLines.nextOpening(german, tests.get(0), RateSetting.FACTOR))
                .isEqualTo("Next factor: 22,063 (by the rule of the terminal’s handbook).");
        assertThat(RateCheckLines.nextOpening(WORDS, tests.get(1), RateSetting.FACTOR))
                .isEqualTo("Within the allowed band: keep this factor.");
        assertThat(RateCheckLines.attempt(WORDS, 2, tests.get(1), RateSetting.FACTOR))
                .startsWith("Test 2 with factor 27.5: ");
        var noRule = Assessor.assess(demo.withMachine(demo.machine().withRateSetting(RateSetting.WEIGHING)))
                .rate()
                .bucketTests();
        assertThat(RateCheckLines.nextOpening(WORDS, noRule.get(0), RateSetting.WEIGHING))
                .isEqualTo("First answer, at the start, how the handbook computes the next factor.");
    }

    @Test
    void aSideNeverCaughtIsCaughtAtTheSameSetting() throws Exception {
        Setup demo = demo();
        List<BucketEntry> tests = demo.rate().bucketTests();
        Setup left =
                demo.withRate(demo.rate().withBucketTests(List.of(tests.get(1).withRight(List.of()))));
        assertThat(RateCheckLines.nextOpening(
                        WORDS, Assessor.assess(left).rate().lastBucket(), RateSetting.OPENING))
                .isEqualTo("Within the allowed band so far: keep the setting and catch again.");
    }

    @Test
    void thePlanIsGivenAsFarAsItIsKnown() throws Exception {
        assertThat(RatePlanLines.figures(WORDS, null)).isEmpty();
        Setup bare = demo().withRate(demo().rate()
                .withPlan(
                        demo().rate().plan().withArea(EnteredQuantity.EMPTY).withHopperVolume(EnteredQuantity.EMPTY)));
        assertThat(RatePlanLines.figures(WORDS, Assessor.assess(bare).rate().plan()))
                .extracting(ResultLine::label)
                .contains("Product", "Nitrogen", "One outlet")
                .doesNotContain("Bags", "In all", "Hopper loads");
        assertThat(RatePlanLines.money(WORDS, Assessor.assess(demo()).rate().plan()))
                .extracting(ResultLine::label)
                .contains("Break-even price", "Saved on the area");
    }

    /** The demo: 27 % before, 0.7572 kg/L now; with a measured 0.8 kg/L before, 62 % of the volume. */
    @Test
    void theProductBeforeIsComparedInWords() throws Exception {
        assertThat(RatePlanLines.against(WORDS, null)).isEmpty();
        assertThat(RatePlanLines.against(WORDS, AgainstOther.of(46, null, 27, null))
                        .replace('\u00a0', ' '))
                .isEqualTo("The same nitrogen as before needs about 59 % of the weight."
                        + " Type both bulk densities to see the volume.");
        assertThat(RatePlanLines.against(WORDS, Assessor.assess(demo()).rate().againstOther())
                        .replace('\u00a0', ' '))
                .isEqualTo("The same nitrogen as before needs about 59 % of the weight and 78 % of the volume."
                        + " So the opening does not shrink by the ratio of the weights."
                        + " The product before is taken as 1.0 kg/L: common practice, not measured.");
        Setup typed = demo().withRate(demo().rate()
                .withPlan(demo().rate().plan().withOtherDensity(EnteredQuantity.parse("0.8 kg/L"))));
        assertThat(RatePlanLines.against(WORDS, Assessor.assess(typed).rate().againstOther())
                        .replace('\u00a0', ' '))
                .contains("59 % of the weight and 62 % of the volume")
                .doesNotContain("common practice");
    }

    /** Each difference only where it is above twice its noise. */
    @Test
    void differencesAreGivenOnlyBeyondTheirNoise() {
        Contrast flat = new Contrast(3.9, 2);
        RegionContrasts none = new RegionContrasts(flat, flat, flat);
        assertThat(TrayTestLines.differences(WORDS, none)).isEmpty();
        assertThat(TrayTestLines.noDifference(WORDS, none))
                .isEqualTo(
                        "No difference between parts of the width is larger than the noise of counting and reading.");
        RegionContrasts all = new RegionContrasts(new Contrast(-4.1, 2), new Contrast(12, 2), new Contrast(-7.6, 2));
        assertThat(TrayTestLines.differences(WORDS, all))
                .containsExactly(
                        new ResultLine("Left and right", "right 4\u00a0% more"),
                        new ResultLine("Tramline and midway", "tramline 12\u00a0% more"),
                        new ResultLine("Quarter points", "8\u00a0% less"));
        assertThat(TrayTestLines.noDifference(WORDS, all)).isEmpty();
        RegionContrasts quarter = new RegionContrasts(flat, flat, new Contrast(5, 2));
        assertThat(TrayTestLines.differences(WORDS, quarter))
                .containsExactly(new ResultLine("Quarter points", "5\u00a0% more"));
        assertThat(TrayTestLines.noDifference(WORDS, quarter)).isEmpty();
    }

    @Test
    void adviceIsGivenInWords() throws Exception {
        Setup uneven =
                demo().withTrays(demo().trays().withTests(demo().trays().tests().subList(0, 1)));
        var trays = Assessor.assess(uneven).trays();
        assertThat(AdviceLines.headline(WORDS, trays.advice()))
                .startsWith("Turn “long vane” from 9 to ")
                .endsWith("wider.");
        assertThat(AdviceLines.expected(WORDS, trays.advice()))
                .startsWith("Expected then: a field CV of about ")
                .contains("; the next test reads about ");
        assertThat(AdviceLines.headline(WORDS, null)).isEqualTo("Do the tray test");
        var good = Assessor.assess(demo()).trays();
        assertThat(AdviceLines.headline(WORDS, good.advice())).isEqualTo("Keep the settings");
        assertThat(AdviceLines.expected(WORDS, good.advice())).isEmpty();
    }

    @Test
    void whatStopsACardComesBeforeWhatIsMissing() throws Exception {
        Setup bad = demo().withCard(demo().card().withSignedBy(""))
                .withRate(demo().rate()
                        .withPlan(demo().rate().plan().withSpeed(new EnteredQuantity("300", Unit.KM_PER_H))));
        List<Finding> open = CardLines.open(Assessor.assess(bad));
        assertThat(open.get(0).kind()).isEqualTo(FindingKind.STOP);
        assertThat(open.get(0).step()).isEqualTo(Step.RATE);
        assertThat(open).extracting(Finding::key).contains("missing.signedBy");
        assertThat(CardLines.open(Assessor.assess(demo()))).isEmpty();
    }

    @Test
    void theSeasonsPassesAreAddedUpAndThisOneIsNamed() {
        assertThat(RatePlanLines.season(WORDS, null)).isEmpty();
        assertThat(words(NitrogenSplits.of(List.of(50.0, 80.0, 40.0), 80.0)))
                .containsExactly("All 3 passes: 170 kg/ha", "This pass is no.: 2");
        assertThat(words(NitrogenSplits.of(List.of(60.0, 60.0), 60.0)).get(1)).isEqualTo("This pass is no.: 1, 2");
        assertThat(words(NitrogenSplits.of(List.of(60.0, 60.0), 90.0))).hasSize(1);
    }

    private static List<String> words(NitrogenSplits splits) {
        return RatePlanLines.season(WORDS, splits).stream()
                .map(line -> (line.label() + ": " + line.value()).replace('\u00a0', ' '))
                .toList();
    }

    /** Common practice: spilt product is picked up where it can be spilt, and no stock gets at it. */
    @Test
    void spillsArePickedUp() {
        for (String step : List.of("step.rate.caution", "step.trays.caution")) {
            assertThat(WORDS.text(step)).as(step).contains("spilt", "keep stock off");
        }
    }
}
