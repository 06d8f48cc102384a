package org.evenfall.setup;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.EnumSet;
import java.util.Set;
import org.evenfall.finding.Step;
import org.evenfall.setup.Revisions.Change;
import org.evenfall.setup.entry.Setup;
import org.evenfall.store.SetupJson;
import org.junit.jupiter.api.Test;

class RevisionsTest {

    private static Setup demo() throws Exception {
        return new SetupJson().read(Files.readString(Path.of("demo", "setup.json")), "demo");
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
}
