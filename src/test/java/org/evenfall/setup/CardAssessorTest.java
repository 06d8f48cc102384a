package org.evenfall.setup;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import org.evenfall.finding.Finding;
import org.evenfall.finding.Step;
import org.evenfall.flight.DrivingPattern;
import org.evenfall.machine.HeightResult;
import org.evenfall.machine.MachineCheckResult;
import org.evenfall.machine.MachineProfile;
import org.evenfall.rate.BucketResult;
import org.evenfall.rate.PlanInput;
import org.evenfall.rate.Plans;
import org.evenfall.reference.Direction;
import org.evenfall.reference.MatchResult;
import org.evenfall.reference.Reachability;
import org.evenfall.reference.Verdict;
import org.evenfall.setup.entry.YesNo;
import org.evenfall.setup.path.CardPaths;
import org.evenfall.setup.path.MatchPaths;
import org.evenfall.trays.TrayCatches;
import org.evenfall.trays.UniformityCalculator;
import org.evenfall.trays.WindLimits;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Whether a card may be made, and which of several settings goes on it: all differ here. */
class CardAssessorTest {

    private static final FinalSettings NONE = new FinalSettings(Map.of(), null, null, null, null, null, null);

    private static MatchResult match(boolean outOfReach) {
        return new MatchResult(
                List.of(),
                null,
                Verdict.NO_REFERENCE,
                Direction.AS_IT_IS,
                null,
                Direction.AS_IT_IS,
                null,
                null,
                null,
                outOfReach ? Reachability.PROBABLY_NOT : Reachability.DOUBTFUL,
                null,
                null,
                0);
    }

    private static CardResult card(MatchResult match, YesNo trayTestOnly, Finding... findings) {
        ReadSetup read = TypedSetup.blank()
                .choose(MatchPaths.TRAY_TEST_ONLY, trayTestOnly)
                .choose(CardPaths.SIGNED_BY, "A. Marlow")
                .read();
        return CardAssessor.assess(read, match, NO_TEST, NONE, List.of(findings))
                .present();
    }

    @Test
    void aCardNeedsEverything() {
        Finding warning = Finding.warn(Step.RATE, "rate.tooMuch");
        Finding note = Finding.note(Step.RATE, "rate.noBucket");
        CardResult allowed = card(match(false), YesNo.UNANSWERED, warning, note);
        assertThat(allowed).isEqualTo(new CardResult(true, false, List.of(), NONE, null, ""));
        assertThat(card(null, YesNo.UNANSWERED).cardAllowed()).isTrue();
        CardResult missing = card(
                match(false),
                YesNo.UNANSWERED,
                Finding.missing(Step.MACHINE, "missing.pto"),
                warning,
                Finding.missing(Step.CARD, "missing.date").at("/card/date"),
                Finding.missing(Step.CARD, "missing.pto").at("/elsewhere"));
        assertThat(missing)
                .isEqualTo(new CardResult(false, false, List.of("missing.pto", "missing.date"), NONE, null, ""));
        CardResult stopped = card(match(false), YesNo.UNANSWERED, note, Finding.stop(Step.TRAYS, "trays.count"));
        assertThat(stopped).isEqualTo(new CardResult(false, false, List.of(), NONE, null, ""));
    }

    @ParameterizedTest
    @CsvSource({
        "true, UNANSWERED, true, false",
        "true, NO, false, true",
        "true, YES, true, false",
        "false, NO, true, false",
        "false, YES, true, false"
    })
    void outOfReachThereIsAFindingInsteadOnlyWhereNoTrayTestIsWanted(
            boolean outOfReach, YesNo trayTestOnly, boolean allowed, boolean findingOnly) {
        assertThat(card(match(outOfReach), trayTestOnly))
                .isEqualTo(new CardResult(allowed, findingOnly, List.of(), NONE, null, ""));
    }

    private static final MachineProfile MACHINE = TypedSetup.machine(0.71);

    private static final ReadSettings START = new ReadSettings(Map.of("long vane", 27.0), 540.0, 0.72, 1.0);

    private static final ReadSettings TESTED = new ReadSettings(Map.of("long vane", 30.5), 537.0, 0.76, 1.5);

    private static final ReadSettings BLANK = new ReadSettings(Map.of(), null, null, null);

    private static final RateResult NO_RATE = new RateResult(null, null, List.of(), null);

    private static final TraysResult NO_TEST =
            new TraysResult(null, null, null, List.of(), List.of(), List.of(), null, null, null, WindLimits.USUAL);

    private static MachineCheckResult check(Double ptoRpm) {
        return new MachineCheckResult(List.of(), List.of(), List.of(), List.of(), null, null, ptoRpm, null, false);
    }

    private static HeightResult height(double wantedM) {
        return new HeightResult(
                new HeightResult.Crop(0.3, 0.02, 0.32),
                wantedM,
                1.1,
                new HeightResult.Now(null, null, null, null),
                0.4,
                null,
                null);
    }

    private static TraysResult trays(ReadSettings settings, Double left, Double right) {
        var evenness = UniformityCalculator.of(new TrayCatches(
                List.of(-12.0, -6.0, 0.0, 6.0, 12.0),
                List.of(110.0, 90.0, 110.0, 90.0, 101.0),
                24,
                DrivingPattern.BACK_AND_FORTH,
                0.25,
                1,
                0.04,
                0));
        TrayTestResult earlier = new TrayTestResult(
                0, "", evenness, START, 1.0, 2.0, null, TestResults.conditions(24), TestResults.PROVES);
        TrayTestResult last = new TrayTestResult(
                1, "", evenness, settings, left, right, null, TestResults.conditions(24), TestResults.PROVES);
        return new TraysResult(
                null, null, null, List.of(), List.of(earlier, last), List.of(), null, null, null, WindLimits.USUAL);
    }

    private static BucketResult bucket(double left, double right) {
        return new BucketResult(
                left,
                right,
                new BucketResult.Flow(15.0, 14.5, 29.5),
                150.0,
                1.0,
                new BucketResult.Agreement(1.0, 3.4, 0.5, true, null, null),
                new BucketResult.Next(99.0, 98.0, null),
                null);
    }

    private static RateResult rate(BucketResult... tests) {
        return new RateResult(null, null, List.of(tests), null);
    }

    private static FinalSettings settings(Double ptoRpm, HeightResult height, RateResult rate, TraysResult trays) {
        return CardAssessor.settings(MACHINE, START, check(ptoRpm), height, rate, trays);
    }

    @Test
    void whatWasTestedComesFirst() {
        FinalSettings settings =
                settings(531.0, height(0.74), rate(bucket(19, 20.5), bucket(22, 23.5)), trays(TESTED, 25.0, 26.5));
        // the last bucket test sets the openings, step 4 the height
        assertThat(settings)
                .isEqualTo(new FinalSettings(Map.of("long vane", 30.5), 537.0, 22.0, 23.5, 0.74, 1.5, null));
    }

    @Test
    void whatWasMeasuredComesBeforeTheStart() {
        FinalSettings settings = settings(531.0, height(0.74), NO_RATE, trays(BLANK, 25.0, 26.5));
        assertThat(settings)
                .isEqualTo(new FinalSettings(Map.of("long vane", 27.0), 531.0, 25.0, 26.5, 0.74, 1.0, null));
    }

    @Test
    void theSettingsToStartFromComeLast() {
        assertThat(settings(null, null, NO_RATE, NO_TEST))
                .isEqualTo(new FinalSettings(Map.of("long vane", 27.0), 540.0, null, null, 0.72, 1.0, null));
        assertThat(settings(null, null, rate(bucket(22, 23.5)), NO_TEST).openingLeft())
                .isEqualTo(22);
        assertThat(settings(null, null, rate(bucket(22, 23.5)), NO_TEST).openingRight())
                .isEqualTo(23.5);
    }

    @Test
    void anOpeningTypedForOneSideStaysOnItsSide() {
        FinalSettings settings = settings(null, null, NO_RATE, trays(BLANK, 25.0, null));
        assertThat(settings.openingLeft()).isEqualTo(25);
        assertThat(settings.openingRight()).isNull();
    }

    @Test
    void theHeightOfTheHandbookIsTheLastResort() {
        ReadSettings noHeight = new ReadSettings(Map.of(), null, null, null);
        FinalSettings settings = CardAssessor.settings(MACHINE, noHeight, check(null), null, NO_RATE, NO_TEST);
        assertThat(settings).isEqualTo(new FinalSettings(Map.of(), null, null, null, 0.71, null, null));
        assertThat(CardAssessor.settings(MACHINE, START, check(null), null, NO_RATE, NO_TEST)
                        .heightOverCropM())
                .isEqualTo(0.72);
    }

    @Test
    void theSpeedIsThePlannedOne() {
        var plan = Plans.of(new PlanInput(
                new PlanInput.Rate(200, 46),
                new PlanInput.Field(24.0, 11.5, null),
                new PlanInput.Containers(null, null, null),
                null,
                new PlanInput.Outlets(2, null),
                5,
                new PlanInput.Prices(null, null, null, 100)));
        RateResult rate = new RateResult(plan, null, List.of(), null);
        assertThat(settings(null, null, rate, NO_TEST).speedKmPerH()).isEqualTo(11.5);
    }
}
