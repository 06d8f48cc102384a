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
import org.evenfall.setup.entry.Setup;
import org.evenfall.store.SetupJson;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class RevisionsTest {

    private static Setup demo() throws Exception {
        return new SetupJson()
                .read(Files.readString(Path.of("demo", "setup.json")), "demo")
                .setup();
    }

    private static Set<Step> reopened(Change change) throws Exception {
        Set<Step> open = EnumSet.noneOf(Step.class);
        Assessor.assess(Revisions.reopen(demo(), Set.of(change))).states().forEach((step, state) -> {
            if (state == StepState.OPEN) {
                open.add(step);
            }
        });
        open.remove(Step.CARD);
        return open;
    }

    @Test
    void aChangeReopensExactlyWhatItMakesWorthless() throws Exception {
        assertThat(reopened(Change.DELIVERY)).containsExactly(Step.PRODUCT, Step.MATCH, Step.RATE, Step.TRAYS);
        assertThat(reopened(Change.MACHINE_PART)).containsExactly(Step.MACHINE, Step.TRAYS);
        assertThat(reopened(Change.CROP_TALLER)).containsExactly(Step.HEIGHT);
        assertThat(reopened(Change.RATE_OR_SPEED)).containsExactly(Step.RATE, Step.TRAYS);
        assertThat(reopened(Change.WIDTH)).containsExactly(Step.RATE, Step.TRAYS);
    }

    @Test
    void theNextRevisionKeepsEverythingButTheDate() throws Exception {
        Setup next = Revisions.next(demo());
        assertThat(next.card().revision()).isEqualTo(2);
        assertThat(next.card().date()).isEmpty();
        assertThat(next.withCard(demo().card())).isEqualTo(demo());
        assertThat(Revisions.reopen(demo(), Set.of())).isEqualTo(demo());
    }

    /** What each change takes out, and that all else stays as it was typed. */
    @Test
    void aChangeTakesOutNothingElse() throws Exception {
        Setup demo = demo();
        Setup noBucketNorTest = demo.withRate(demo.rate().withBucketTests(List.of()))
                .withTrays(demo.trays().withTests(List.of()));
        assertThat(Revisions.reopen(demo, Set.of(Change.WIDTH))).isEqualTo(noBucketNorTest);
        assertThat(Revisions.reopen(demo, Set.of(Change.RATE_OR_SPEED))).isEqualTo(noBucketNorTest);
        assertThat(Revisions.reopen(demo, Set.of(Change.DELIVERY)))
                .isEqualTo(noBucketNorTest.withProduct(demo.product()
                        .withDelivery("")
                        .withContainerFull(List.of())
                        .withSievings(List.of())
                        .withBagsSampled(EnteredQuantity.EMPTY)));
        assertThat(Revisions.reopen(demo, Set.of(Change.MACHINE_PART)))
                .isEqualTo(demo.withMachineCheck(
                                demo.machineCheck().withVanes(List.of()).withChecks(List.of()))
                        .withTrays(demo.trays().withTests(List.of())));
        assertThat(Revisions.reopen(demo, Set.of(Change.CROP_TALLER)))
                .isEqualTo(demo.withHeight(demo.height().withCropHeights(List.of())));
    }

    @Test
    void severalChangesAddUp() throws Exception {
        Setup demo = demo();
        Setup one = Revisions.reopen(
                Revisions.reopen(Revisions.reopen(demo, Set.of(Change.MACHINE_PART)), Set.of(Change.CROP_TALLER)),
                Set.of(Change.DELIVERY));
        assertThat(Revisions.reopen(demo, Set.of(Change.DELIVERY, Change.MACHINE_PART, Change.CROP_TALLER)))
                .isEqualTo(one);
        assertThat(Revisions.reopen(demo, EnumSet.allOf(Change.class))).isEqualTo(one);
    }

    /** A setup that was never numbered counts as the first. */
    @ParameterizedTest
    @CsvSource({"-3, 2", "0, 2", "1, 2", "2, 3", "7, 8"})
    void theRevisionRisesByOne(int revision, int next) throws Exception {
        Setup demo = demo();
        Setup numbered = demo.withCard(demo.card().withRevision(revision).withDate("2028-03-30"));
        Setup revised = Revisions.next(numbered);
        assertThat(revised)
                .isEqualTo(demo.withCard(demo.card().withRevision(next).withDate("")));
    }
}
