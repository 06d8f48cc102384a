package org.evenfall.setup;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.evenfall.finding.Step;
import org.evenfall.quantity.EnteredQuantity;
import org.evenfall.setup.Revisions.Change;
import org.evenfall.setup.entry.Condition;
import org.evenfall.setup.entry.Setup;
import org.evenfall.setup.entry.TestConditionEntries;
import org.evenfall.setup.entry.YesNo;
import org.evenfall.store.SetupJson;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class RevisionsTest {

    private static Setup demo() throws Exception {
        return new SetupJson().read(Files.readString(Path.of("demo", "setup.json")), "demo");
    }

    private static Setup reopen(Setup setup, Set<Change> changes) {
        return Revisions.reopen(setup, Assessor.assess(setup), changes, TestNumbers.ENGLISH);
    }

    private static Set<Step> reopened(Change change) throws Exception {
        Set<Step> open = EnumSet.noneOf(Step.class);
        Assessor.assess(reopen(demo(), Set.of(change))).states().forEach((step, state) -> {
            if (state == StepState.OPEN) {
                open.add(step);
            }
        });
        open.remove(Step.CARD);
        return open;
    }

    @Test
    void aChangeReopensExactlyWhatItMakesWorthless() throws Exception {
        assertThat(reopened(Change.DELIVERY)).containsExactly(Step.PRODUCT, Step.MATCH);
        assertThat(reopened(Change.MACHINE_PART)).containsExactly(Step.MACHINE, Step.TRAYS);
        assertThat(reopened(Change.CROP_TALLER)).containsExactly(Step.HEIGHT);
        assertThat(reopened(Change.RATE_OR_SPEED)).containsExactly(Step.RATE);
        assertThat(reopened(Change.WIDTH)).contains(Step.START, Step.TRAYS);
    }

    @Test
    void theNextRevisionKeepsEverythingButTheDate() throws Exception {
        Setup next = Revisions.next(demo());
        assertThat(next.card().revision()).isEqualTo(2);
        assertThat(next.card().date()).isEmpty();
        assertThat(next.card().previousDate()).isEqualTo("2027-03-18");
        assertThat(next.withCard(demo().card())).isEqualTo(demo());
        assertThat(reopen(demo(), Set.of())).isEqualTo(demo());
    }

    /** What each change takes out, and that all else stays as it was typed. */
    @Test
    void aChangeTakesOutNothingElse() throws Exception {
        Setup demo = demo();
        assertThat(reopen(demo, Set.of(Change.WIDTH)))
                .isEqualTo(demo.withStart(demo.start().withTramlineWidth(EnteredQuantity.EMPTY)));
        assertThat(reopen(demo, Set.of(Change.RATE_OR_SPEED)))
                .isEqualTo(demo.withRate(demo.rate()
                        .withPlan(demo.rate()
                                .plan()
                                .withNitrogenRate(EnteredQuantity.EMPTY)
                                .withSpeed(EnteredQuantity.EMPTY))
                        .withSpeedRuns(List.of())));
        assertThat(reopen(demo, Set.of(Change.DELIVERY)))
                .isEqualTo(demo.withProduct(demo.product()
                        .withDelivery("")
                        .withUseBy("")
                        .withCondition(Condition.UNANSWERED)
                        .withBagsDelivered(EnteredQuantity.EMPTY)
                        .withContainerFull(List.of())
                        .withSievings(List.of())
                        .withBagsSampled(EnteredQuantity.EMPTY)));
        assertThat(reopen(demo, Set.of(Change.MACHINE_PART)))
                .isEqualTo(demo.withMachineCheck(
                                demo.machineCheck().withVanes(List.of()).withChecks(List.of()))
                        .withTrays(demo.trays()
                                .withTests(demo.trays().tests().stream()
                                        .map(test -> test.withConditions(
                                                test.conditions().withPartChanged(YesNo.YES)))
                                        .toList())));
        assertThat(reopen(demo, Set.of(Change.CROP_TALLER)))
                .isEqualTo(demo.withHeight(demo.height().withCropHeights(List.of())));
    }

    /** An older test does not count as driven at the width that is typed afterwards. */
    @Test
    void aTestWithoutConditionsIsGivenThemBeforeSomethingChanges() throws Exception {
        Setup old = demo().withTrays(demo().trays()
                .withTests(demo().trays().tests().stream()
                        .map(test -> test.withConditions(TestConditionEntries.EMPTY))
                        .toList()));
        Setup wider = reopen(old, Set.of(Change.WIDTH));
        wider = wider.withStart(wider.start().withTramlineWidth(EnteredQuantity.parse("36 m")));
        assertThat(wider.trays().tests().get(1).conditions().tramlineWidth()).isEqualTo(EnteredQuantity.parse("28 m"));
        assertThat(Assessor.assess(wider).trays().proof()).isNull();
        assertThat(Assessor.assess(wider).card().missing()).contains("trays.differs.TRAMLINE_WIDTH");
    }

    @Test
    void severalChangesAddUp() throws Exception {
        Setup demo = demo();
        Setup one = reopen(
                reopen(reopen(demo, Set.of(Change.MACHINE_PART)), Set.of(Change.CROP_TALLER)), Set.of(Change.DELIVERY));
        assertThat(reopen(demo, Set.of(Change.DELIVERY, Change.MACHINE_PART, Change.CROP_TALLER)))
                .isEqualTo(one);
        assertThat(reopen(demo, EnumSet.allOf(Change.class)))
                .isEqualTo(reopen(reopen(one, Set.of(Change.WIDTH)), Set.of(Change.RATE_OR_SPEED)));
    }

    /** A setup that was never numbered counts as the first. */
    @ParameterizedTest
    @CsvSource({"-3, 2", "0, 2", "1, 2", "2, 3", "7, 8"})
    void theRevisionRisesByOne(int revision, int next) throws Exception {
        Setup demo = demo();
        Setup numbered = demo.withCard(demo.card().withRevision(revision).withDate("30.3.2028"));
        Setup revised = Revisions.next(numbered);
        assertThat(revised)
                .isEqualTo(demo.withCard(demo.card()
                        .withRevision(next)
                        .withPreviousDate("2028-03-30")
                        .withDate("")));
        assertThat(Revisions.next(revised).card().previousDate())
                .as("a revision that was never dated has no card")
                .isEqualTo("2028-03-30");
    }
}
