package org.evenfall.setup;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.evenfall.machine.CheckAnswer;
import org.evenfall.machine.CheckItem;
import org.evenfall.setup.entry.CheckEntry;
import org.evenfall.setup.entry.MachineCheckEntries;
import org.evenfall.setup.entry.UnknownKeys;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Answers of the machine check by item. */
class CheckAnswersTest {

    private static final CheckItem FIRST = CheckItem.values()[0];
    private static final CheckItem SECOND = CheckItem.values()[1];

    @Test
    void anItemWithoutAnEntryIsUnanswered() {
        assertThat(CheckAnswers.of(MachineCheckEntries.EMPTY, SECOND))
                .isEqualTo(new CheckEntry(SECOND, CheckAnswer.UNANSWERED, "", UnknownKeys.NONE));
    }

    @Test
    void anAnswerIsAddedOnceAndThenReplacedAtItsPlace() {
        CheckEntry failed = new CheckEntry(FIRST, CheckAnswer.FAILED, "seen to on Monday", UnknownKeys.NONE);
        CheckEntry good = new CheckEntry(SECOND, CheckAnswer.GOOD, "", UnknownKeys.NONE);
        MachineCheckEntries both = CheckAnswers.with(CheckAnswers.with(MachineCheckEntries.EMPTY, failed), good);
        assertThat(both.checks()).containsExactly(failed, good);
        CheckEntry mended = failed.withAnswer(CheckAnswer.GOOD);
        assertThat(CheckAnswers.with(both, mended).checks()).containsExactly(mended, good);
        assertThat(CheckAnswers.of(both, FIRST)).isEqualTo(failed);
    }

    @Test
    void theRestBecomesGoodAndAFailureStays() {
        CheckEntry failed = new CheckEntry(SECOND, CheckAnswer.FAILED, "reason", UnknownKeys.NONE);
        CheckEntry open = new CheckEntry(FIRST, CheckAnswer.UNANSWERED, "", UnknownKeys.NONE);
        MachineCheckEntries all = CheckAnswers.restGood(MachineCheckEntries.EMPTY.withChecks(List.of(failed, open)));
        assertThat(all.checks()).hasSize(CheckItem.values().length);
        assertThat(CheckAnswers.of(all, SECOND)).isEqualTo(failed);
        for (CheckItem item : CheckItem.values()) {
            if (item != SECOND) {
                assertThat(CheckAnswers.of(all, item).answer()).isEqualTo(CheckAnswer.GOOD);
            }
        }
    }

    @ParameterizedTest
    @EnumSource(CheckItem.class)
    void onlyTheAgitatorMayBeNotFitted(CheckItem item) {
        assertThat(CheckAnswers.answers(item).contains(CheckAnswer.NOT_FITTED)).isEqualTo(item == CheckItem.AGITATOR);
        assertThat(CheckAnswers.answers(item)).contains(CheckAnswer.GOOD, CheckAnswer.FAILED);
    }

    @ParameterizedTest
    @EnumSource(CheckItem.class)
    void onlyAMissingGuardIsNeverOverridden(CheckItem item) {
        assertThat(CheckAnswers.mayBeOverridden(item)).isEqualTo(item != CheckItem.GUARDS);
    }
}
