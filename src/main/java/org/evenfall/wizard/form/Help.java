package org.evenfall.wizard.form;

import java.util.List;

/**
 * What the help of a prompt lists after why and how.
 *
 * @param sources keys of the sources of its limits, bands and models
 * @param terms names of its terms of the trade; the text of a name is at {@code term.NAME}
 */
public record Help(List<String> sources, List<String> terms) {

    /** No source and no term. */
    public static final Help NONE = new Help(List.of(), List.of());

    /** Copies the lists. */
    public Help {
        sources = List.copyOf(sources);
        terms = List.copyOf(terms);
    }

    /** Terms only. */
    public static Help terms(String... names) {
        return new Help(List.of(), List.of(names));
    }

    /** The same with these sources. */
    public Help from(String... keys) {
        return new Help(List.of(keys), terms);
    }
}
