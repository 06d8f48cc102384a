package org.evenfall.setup.path;

import java.util.Arrays;
import java.util.List;

/**
 * One of a few words. The constant {@code UNANSWERED} of the enum, where it has one, is no answer.
 *
 * @param <R> the record it belongs to
 * @param <E> the words
 */
public final class Choice<R, E extends Enum<E>> extends Entry<R, E> {

    /** Name of the constant for no answer. */
    private static final String UNANSWERED = "UNANSWERED";

    private final List<E> answers;

    Choice(Part<R> part, Component<R, E> component, List<E> answers, Need need) {
        super(part, component, need);
        this.answers = List.copyOf(answers);
    }

    /** All words of an enum but the one for no answer. */
    static <E extends Enum<E>> List<E> answers(Class<E> type) {
        return Arrays.stream(type.getEnumConstants())
                .filter(word -> !word.name().equals(UNANSWERED))
                .toList();
    }

    /** The same entry with some of the words only. */
    public Choice<R, E> only(List<E> some) {
        return new Choice<>(part(), component(), some, new Need(neededForCard(), missingKey()));
    }

    /** The same entry, needed for the card; the finding while nothing is chosen has this key. */
    public Choice<R, E> needed(String missingKey) {
        return new Choice<>(part(), component(), answers, Need.always(missingKey));
    }

    /** The same entry, asked for but not needed for the card; the note while nothing is chosen has this key. */
    public Choice<R, E> asked(String openKey) {
        return new Choice<>(part(), component(), answers, Need.asked(openKey));
    }

    /** The same entry, needed for the card under a condition that the assessment of its step knows. */
    public Choice<R, E> neededByAssessment() {
        return new Choice<>(part(), component(), answers, Need.BY_ASSESSMENT);
    }

    /** The words that may be chosen. */
    public List<E> answers() {
        return answers;
    }

    @Override
    public boolean isBlank(E value) {
        return value.name().equals(UNANSWERED);
    }
}
