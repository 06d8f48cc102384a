package org.evenfall.result;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.ResourceBundle;
import org.evenfall.finding.Finding;
import org.evenfall.finding.FindingKind;
import org.evenfall.finding.Sentences;
import org.evenfall.granule.Sieves;
import org.evenfall.machine.CheckAnswer;
import org.evenfall.machine.CheckItem;
import org.evenfall.machine.HeightResult;
import org.evenfall.machine.RateSetting;
import org.evenfall.quantity.EnteredQuantity;
import org.evenfall.quantity.Unit;
import org.evenfall.rate.BucketResult;
import org.evenfall.rate.OpeningSource;
import org.evenfall.setup.Assessment;
import org.evenfall.setup.Assessor;
import org.evenfall.setup.CheckAnswers;
import org.evenfall.setup.entry.CardLanguage;
import org.evenfall.setup.entry.CheckEntry;
import org.evenfall.setup.entry.Setup;
import org.evenfall.setup.entry.UnknownKeys;
import org.evenfall.store.SetupJson;
import org.evenfall.trays.Advice;
import org.evenfall.trays.AdviceKind;
import org.evenfall.trays.AdviceReason;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Labels, words and rounding of results, at the limits where they change. */
class ResultLinesTest {

    private static final Sentences WORDS =
            new Sentences(ResourceBundle.getBundle("org.evenfall.words", Locale.ENGLISH), Locale.UK);

    private static Setup demo() throws Exception {
        return new SetupJson().read(Files.readString(Path.of("demo", "setup.json")), "demo");
    }

    private static String plain(String text) {
        return text.replace('\u00a0', ' ');
    }

    private static String value(List<ResultLine> lines, String label) {
        return lines.stream()
                .filter(line -> line.label().equals(label))
                .map(line -> plain(line.value()))
                .findFirst()
                .orElse("");
    }

    @ParameterizedTest
    @CsvSource({
        "0.00499, leave it",
        "-0.00499, leave it",
        "0.005, raise 1 cm",
        "0.0249, raise 2 cm",
        "-0.0251, lower 3 cm"
    })
    void aCorrectionUnderHalfACentimetreIsNone(double correctionM, String expected) {
        assertThat(value(HeightLines.figures(WORDS, height(correctionM, null, null)), "To do"))
                .isEqualTo(expected);
    }

    @ParameterizedTest
    @CsvSource({"0.00049, even", "0.0005, left 0.1 cm higher", "-0.013, right 1.3 cm higher"})
    void underHalfAMillimetreIsEven(double leftRightM, String expected) {
        assertThat(value(HeightLines.figures(WORDS, height(null, leftRightM, null)), "Side to side"))
                .isEqualTo(expected);
        assertThat(value(HeightLines.figures(WORDS, height(null, null, leftRightM)), "Front to rear"))
                .isEqualTo(expected.replace("left", "front").replace("right", "rear"));
    }

    private static HeightResult height(Double correctionM, Double leftRightM, Double foreAftM) {
        return new HeightResult(
                new HeightResult.Crop(0.3, 0.02, 0.3),
                0.75,
                1.05,
                new HeightResult.Now(leftRightM, foreAftM, null, correctionM),
                0.65,
                null,
                null);
    }

    @Test
    void withoutAHeightThereIsNothing() {
        assertThat(HeightLines.figures(WORDS, null)).isEmpty();
        assertThat(HeightLines.tenCentimetres(WORDS, null)).isEmpty();
        assertThat(HeightLines.tenCentimetres(WORDS, height(null, null, null))).isEmpty();
        assertThat(HeightLines.figures(WORDS, height(null, null, null))).hasSize(2);
    }

    @ParameterizedTest
    @CsvSource({
        "0.49, -0.49, as planned · left and right alike",
        "0.5, -0.5, 1 % too much · left gives 1 % less",
        "-12.4, 3.6, 12 % too little · left gives 4 % more"
    })
    void aDeviationThatRoundsToNothingIsNone(double off, double leftRight, String expected) {
        assertThat(plain(RateCheckLines.attempt(WORDS, 3, bucket(off, leftRight, false, null), RateSetting.OPENING)))
                .isEqualTo("Test 3: 90.0 kg/min from all outlets · 170 kg/ha · " + expected);
    }

    @Test
    void theNextOpeningOfABucketTest() {
        assertThat(RateCheckLines.nextOpening(WORDS, null, RateSetting.OPENING)).isEmpty();
        assertThat(RateCheckLines.nextOpening(WORDS, bucket(0.1, 0.0, true, null), RateSetting.OPENING))
                .isEqualTo(WORDS.text("rate.within"));
        assertThat(RateCheckLines.nextOpening(WORDS, bucket(9.0, 0.0, false, null), RateSetting.OPENING))
                .isEqualTo(WORDS.text("rate.noOpening"));
        assertThat(RateCheckLines.nextOpening(WORDS, bucket(null, 0.0, false, null), RateSetting.OPENING))
                .isEmpty();
        assertThat(RateCheckLines.nextOpening(WORDS, bucket(9.0, 0.0, false, 27.25), RateSetting.OPENING))
                .isEqualTo("Next opening: left 27.3, right 28.3 (between your own tests).");
    }

    private static BucketResult bucket(Double off, Double leftRight, boolean within, Double next) {
        return new BucketResult(
                25,
                26,
                new BucketResult.Flow(45.0, 45.0, 90),
                170.0,
                1.0,
                new BucketResult.Agreement(off, leftRight, null, within, off, off),
                new BucketResult.Next(
                        next == null && within ? Double.valueOf(25) : next,
                        next == null ? within ? Double.valueOf(26) : null : Double.valueOf(next + 1),
                        next == null ? null : OpeningSource.BETWEEN_MEASURED),
                null);
    }

    @Test
    void theDemoInWords() throws Exception {
        Assessment demo = Assessor.assess(demo());
        assertThat(plain(ProductLines.density(WORDS, demo.product().density()))).startsWith("Density 0.76 kg/L");
        assertThat(plain(ProductLines.sieve(WORDS, demo.product().sieve())))
                .isEqualTo("Median 3.1 mm (between 3.0 and 3.3 mm), size guide number 314 (from the sieves)."
                        + " Spread index 29 % (from the sieves); uniformity index d5/d90 47 (from the sieves)."
                        + " Finer than 2 mm 4 % (from the sieves).");
        assertThat(plain(ProductLines.sieve(
                        WORDS, Sieves.analyse(List.of(2.0, 3.15, 4.5), List.of(List.of(20.0, 45.0, 30.0, 5.0))))))
                .contains("(from the sieves). Spread index", "% (from the fitted curve); uniformity index")
                .contains("(from the fitted curve). Finer than 2 mm 20 % (from the sieves).");
        assertThat(ProductLines.density(WORDS, null)).isEmpty();
        assertThat(ProductLines.sieve(WORDS, null)).isEmpty();
        assertThat(MatchLines.repeats(WORDS, null)).isEmpty();
        assertThat(MatchLines.figures(WORDS, demo.match().ranked().get(0)))
                .hasSameSizeAs(MatchLines.headers(WORDS))
                .startsWith("84\u00a0%", "28\u00a0m");
        assertThat(value(MachineCheckLines.parts(WORDS, demo()), "Good")).contains("guards", "tyres");
        assertThat(value(MachineCheckLines.measured(WORDS, demo.machineCheck()), "Each vane"))
                .contains("left long: worn 1 mm");
        assertThat(value(TrayPlanLines.runs(WORDS, demo.trays().plan()), "In a tray, each run"))
                .isEqualTo("4.3 g");
        assertThat(TrayPlanLines.runs(WORDS, null)).isEmpty();
        assertThat(SinglePassLines.figures(WORDS, null)).isEmpty();
        assertThat(TrayTestLines.loss(WORDS, demo.trays())).isEmpty();
        assertThat(AdviceLines.headline(WORDS, demo.trays().advice())).isEqualTo("Keep the settings");
    }

    /** The first test of the demo alone is uneven: it costs something, and a lever is to be moved. */
    @Test
    void anUnevenTestInWords() throws Exception {
        Setup uneven =
                demo().withTrays(demo().trays().withTests(demo().trays().tests().subList(0, 1)));
        var trays = Assessor.assess(uneven).trays();
        assertThat(plain(TrayTestLines.loss(WORDS, trays))).contains("costs about ", " kg/ha of grain.");
        assertThat(AdviceLines.headline(WORDS, trays.advice()))
                .startsWith("Turn “long vane” from 9 to ")
                .endsWith("wider.");
        assertThat(AdviceLines.expected(WORDS, trays.advice()))
                .startsWith("Expected then: a field CV of about ")
                .contains("; the next test reads about ");
    }

    private static String heading(AdviceKind kind, Integer moreRuns, AdviceReason.Kind reason, String subject) {
        List<Double> numbers = java.util.Collections.nCopies(reason.count(), 3.0);
        return AdviceLines.headline(
                WORDS,
                new Advice(
                        kind,
                        List.of(),
                        null,
                        null,
                        List.of(new AdviceReason(reason, numbers, subject)),
                        false,
                        false,
                        moreRuns,
                        List.of(),
                        ""));
    }

    /** A kind that covers several causes is headed by the cause. */
    @Test
    void theHeadingNamesTheCause() {
        AdviceKind outlets = AdviceKind.OUTLETS_AND_VANES;
        assertThat(heading(outlets, null, AdviceReason.Kind.VANES_UNSEEN, "")).isEqualTo("Outlets and vanes first");
        assertThat(heading(outlets, null, AdviceReason.Kind.GUARDS_UNSEEN, "")).isEqualTo("Guards first");
        assertThat(heading(outlets, null, AdviceReason.Kind.PART_FAILED, "GUARDS"))
                .isEqualTo("Guards first");
        assertThat(heading(outlets, null, AdviceReason.Kind.PART_FAILED, "DISCS"))
                .isEqualTo("Put the failed part right first");
        assertThat(heading(outlets, null, AdviceReason.Kind.PRODUCT_DAMP, "")).isEqualTo("Dry product first");
        assertThat(heading(outlets, null, AdviceReason.Kind.PRODUCT_CAKED, "")).isEqualTo("Dry product first");
        assertThat(heading(AdviceKind.KEEP, null, AdviceReason.Kind.PRODUCT_DAMP, ""))
                .isEqualTo("Keep the settings");
        AdviceKind repeat = AdviceKind.REPEAT_TEST;
        assertThat(heading(repeat, 1, AdviceReason.Kind.NOISE, "")).isEqualTo("Drive 1 more run into the same trays");
        assertThat(heading(repeat, 2, AdviceReason.Kind.NOISE, "")).isEqualTo("Drive 2 more runs into the same trays");
        assertThat(heading(repeat, null, AdviceReason.Kind.SPOILT_TRAY, "")).isEqualTo("Type tray 3 again");
    }

    @Test
    void nothingAnsweredIsNoLineAndAPartOfItIs() {
        assertThat(MachineCheckLines.parts(WORDS, Setup.EMPTY)).isEmpty();
        Setup one = Setup.EMPTY.withMachineCheck(CheckAnswers.with(
                Setup.EMPTY.machineCheck(), new CheckEntry(CheckItem.GUARDS, CheckAnswer.GOOD, "", UnknownKeys.NONE)));
        assertThat(value(MachineCheckLines.parts(WORDS, one), "Good")).isEqualTo("guards");
        assertThat(value(MachineCheckLines.parts(WORDS, one), "not yet")).contains("discs", "tyres");
    }

    @Test
    void whatStopsACardComesFirstAndNothingTwice() throws Exception {
        Setup bad = demo().withCard(demo().card().withSignedBy(""))
                .withRate(demo().rate()
                        .withPlan(demo().rate().plan().withSpeed(new EnteredQuantity("300", Unit.KM_PER_H))));
        List<Finding> open = CardLines.open(Assessor.assess(bad));
        assertThat(open.get(0).kind()).isEqualTo(FindingKind.STOP);
        assertThat(open).extracting(Finding::key).contains("missing.signedBy").doesNotHaveDuplicates();
        assertThat(CardLines.open(Assessor.assess(demo()))).isEmpty();
    }

    @Test
    void theFiguresOfTheCardAreInTheLanguageOfTheProgram() throws Exception {
        Setup german = demo().withCard(demo().card().withLanguage(CardLanguage.DE));
        assertThat(value(CardLines.figures(WORDS, german, Assessor.assess(german)), "PTO speed"))
                .isEqualTo("540 rpm");
    }

    @Test
    void whatIsTypedKeepsItsUnit() {
        List<ResultLine> lines = new ArrayList<>();
        ResultLine.addTyped(lines, WORDS, "start.farm", " ");
        ResultLine.addTyped(lines, WORDS, "start.farm", EnteredQuantity.EMPTY.withUnit(Unit.M));
        ResultLine.add(lines, WORDS, "start.farm", null, 1, Unit.M);
        ResultLine.addSentence(lines, "");
        assertThat(lines).isEmpty();
        ResultLine.addTyped(lines, WORDS, "start.farm", new EnteredQuantity(" 29,5", Unit.IN));
        assertThat(lines).containsExactly(new ResultLine("Farm", "29,5\u00a0in"));
    }
}
