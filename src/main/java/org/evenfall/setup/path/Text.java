package org.evenfall.setup.path;

/**
 * A text in the person's own words, or a date.
 *
 * @param <R> the record it belongs to
 */
public final class Text<R> extends Entry<R, String> {

    private final boolean date;

    Text(Part<R> part, Component<R, String> component, boolean date, Need need) {
        super(part, component, need);
        this.date = date;
    }

    /** The same entry, needed for the card; the finding while nothing is typed has this key. */
    public Text<R> needed(String missingKey) {
        return new Text<>(part(), component(), date, Need.always(missingKey));
    }

    /** The same entry, asked for but not needed for the card; the note while nothing is typed has this key. */
    public Text<R> asked(String openKey) {
        return new Text<>(part(), component(), date, Need.asked(openKey));
    }

    /** The same entry, needed for the card under a condition that the assessment of its step knows. */
    public Text<R> neededByAssessment() {
        return new Text<>(part(), component(), date, Need.BY_ASSESSMENT);
    }

    /** The same entry, hidden with names and prices. */
    public Text<R> keptPrivate() {
        return new Text<>(part(), component().keptPrivate(), date, new Need(neededForCard(), missingKey()));
    }

    /** Whether it must be a date, in a form that {@link org.evenfall.quantity.DateText} reads. */
    public boolean isDate() {
        return date;
    }

    @Override
    public boolean isBlank(String value) {
        return value.isBlank();
    }
}
