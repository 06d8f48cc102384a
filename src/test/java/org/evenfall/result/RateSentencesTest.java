package org.evenfall.result;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.ResourceBundle;
import org.evenfall.finding.Sentences;
import org.evenfall.machine.RateSetting;
import org.evenfall.rate.BucketResult;
import org.evenfall.rate.BucketWeight;
import org.evenfall.rate.HopperCheck;
import org.evenfall.rate.RatePlan;
import org.evenfall.rate.SpeedCheck;
import org.evenfall.setup.Assessment;
import org.evenfall.setup.Assessor;
import org.evenfall.setup.BucketFacts;
import org.evenfall.setup.path.RatePaths;
import org.evenfall.store.SetupJson;
import org.junit.jupiter.api.Test;

/** Step 5 in sentences; figures of the demo of an invented farm and made up for the purpose. */
class RateSentencesTest {

    private static final Sentences WORDS =
            new Sentences(ResourceBundle.getBundle("org.evenfall.words", Locale.ENGLISH), Locale.UK);

    private static Assessment demo() throws Exception {
        return Assessor.assess(new SetupJson().read(Files.readString(Path.of("demo", "setup.json")), "demo"));
    }

    private static String plain(String text) {
        return text.replace('\u00a0', ' ');
    }

    @Test
    void thePlanOfTheDemo() throws Exception {
        Assessment demo = demo();
        RatePlan plan = demo.rate().plan();
        assertThat(plain(RateSentences.amount(WORDS, plan)))
                .isEqualTo("Spread 174 kg/ha of product: it carries 80 kg/ha of nitrogen.");
        assertThat(plain(RateSentences.season(WORDS, demo.rate().nitrogenSplits())))
                .isEqualTo("The 3 passes of the season give 170 kg/ha of nitrogen. This is pass 2.");
        assertThat(plain(RateSentences.flow(WORDS, plan)))
                .isEqualTo("All outlets together give 97 kg/min, one outlet 48.7 kg/min.");
        assertThat(plain(RateSentences.goods(WORDS, plan)))
                .isEqualTo("You need 10.8 t of product. Order 22 bags; 21.6 are used. That is 5.9 hopper loads.");
        assertThat(plain(RateSentences.bucket(WORDS, plan, BucketFacts.plannedScalesKg(demo, 0))))
                .isEqualTo("In 20 s one outlet gives about 16.2 kg; good is 15.4 to 17.0 kg. "
                        + "With the bucket the scales read 16.5 to 18.1 kg.");
        assertThat(plain(RateSentences.money(WORDS, plan)))
                .isEqualTo("One kilogram of nitrogen costs 1.22; with the product before, 1.46. "
                        + "Both cost the same when a tonne of this product costs 673. On this area you save 1218.");
    }

    @Test
    void withoutAPlanThereIsNoSentence() {
        assertThat(List.of(
                        RateSentences.amount(WORDS, null),
                        RateSentences.season(WORDS, null),
                        RateSentences.flow(WORDS, null),
                        RateSentences.goods(WORDS, null),
                        RateSentences.bucket(WORDS, null, null),
                        RateSentences.money(WORDS, null),
                        RateSentences.speed(WORDS, null),
                        RateSentences.hopper(WORDS, null)))
                .containsOnly("");
    }

    /** The limit is written out in the cautions: it is the one that a catch is held against. */
    @Test
    void theCautionsNameTheHeaviestBucket() {
        String most = (int) BucketWeight.HEAVIEST_KG + " kg";
        assertThat(WORDS.text("step.rate.caution")).contains(most);
        assertThat(WORDS.text("step.rate.cautionLine")).contains(most);
    }

    @Test
    void theSpeedAgainstThePlan() {
        assertThat(plain(RateSentences.speed(WORDS, new SpeedCheck(12.4, 1.6, 3.4, 2, 0.1))))
                .isEqualTo("You drove 12.4 km/h, 3 % faster than planned. The runs differ by 2 %.");
        assertThat(plain(RateSentences.speed(WORDS, new SpeedCheck(11.6, 0, -3.4, 1, 0.1))))
                .isEqualTo("You drove 11.6 km/h, 3 % slower than planned.");
        assertThat(plain(RateSentences.speed(WORDS, new SpeedCheck(12, 0, 0.4, 1, 0.1))))
                .isEqualTo("You drove 12.0 km/h, as planned.");
    }

    @Test
    void theHopperAgainstThePlan() {
        assertThat(plain(RateSentences.hopper(WORDS, new HopperCheck(180, 3.6))))
                .isEqualTo("By the hopper you spread 180 kg/ha, 4 % too much.");
        assertThat(plain(RateSentences.hopper(WORDS, new HopperCheck(168, -3.6))))
                .isEqualTo("By the hopper you spread 168 kg/ha, 4 % too little.");
        assertThat(plain(RateSentences.hopper(WORDS, new HopperCheck(174, 0.4))))
                .isEqualTo("By the hopper you spread 174 kg/ha, as planned.");
    }

    @Test
    void theBucketTestsOfTheDemo() throws Exception {
        Assessment demo = demo();
        assertThat(plain(BucketLines.outcome(WORDS, BucketFacts.of(demo, 0), RateSetting.OPENING)))
                .isEqualTo("153 kg/ha: 12 % too little, give or take 1.2 %. Left \u221212 %, right \u221212 %.");
        assertThat(plain(BucketLines.outcome(WORDS, BucketFacts.of(demo, 1), RateSetting.OPENING)))
                .isEqualTo("172 kg/ha: 1 % too little, give or take 1.4 %. Left \u22121 %, right \u22121 %. "
                        + "Within the allowed band: keep this opening.");
        assertThat(plain(BucketLines.timing(WORDS, BucketFacts.of(demo, 0))))
                .isEqualTo("Timing by hand is off by 0.4 s: 2.0 % of 20 s.");
        assertThat(plain(BucketLines.conditions(WORDS, demo.read(), RatePaths.BUCKET_TESTS.item(0))))
                .isEqualTo("Done with 0.76 kg/L · long vane 9 · drop point 5 · 540 rpm.");
        BucketFacts next = BucketFacts.of(demo, 9);
        assertThat(plain(BucketLines.outcome(WORDS, next, RateSetting.OPENING)))
                .startsWith("In 20 s one outlet gives about 16.3 kg");
    }

    @Test
    void theNextTestIsNamedByItsSetting() {
        assertThat(BucketLines.nextTest(WORDS, null, RateSetting.OPENING)).isEqualTo("Another test");
        assertThat(next(26, 26, RateSetting.OPENING)).isEqualTo("Next test with opening 26");
        assertThat(next(26, 27.5, RateSetting.OPENING)).isEqualTo("Next test: left 26, right 27.5");
        assertThat(next(1.125, 1.125, RateSetting.FACTOR)).isEqualTo("Next test with factor 1.125");
    }

    private static String next(double left, double right, RateSetting setting) {
        return BucketLines.nextTest(
                WORDS,
                new BucketResult(
                        25,
                        25,
                        new BucketResult.Flow(40.0, 40.0, 80),
                        null,
                        null,
                        new BucketResult.Agreement(-9.0, 0.0, null, false, -9.0, -9.0),
                        new BucketResult.Next(left, right, null),
                        null),
                setting);
    }
}
