package org.evenfall.wizard;

import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Stream;
import org.evenfall.setup.entry.Setup;

/**
 * What is known of a page that was taken apart; true until something changes that its entries depend on.
 *
 * @param setup the setup when it was taken apart
 * @param places pointers of the places that are typed on it
 * @param typed whether something was typed or chosen on it
 */
record LeftPage(Setup setup, List<String> places, boolean typed) {

    /** Parts of a setup by their names in a pointer. */
    static final Map<String, Function<Setup, Object>> PARTS = Map.of(
            "start", Setup::start,
            "machine", Setup::machine,
            "product", Setup::product,
            "match", Setup::match,
            "machineCheck", Setup::machineCheck,
            "height", Setup::height,
            "rate", Setup::rate,
            "trays", Setup::trays,
            "card", Setup::card,
            "log", Setup::log);

    /** What every page may depend on: how wide, and with which machine. */
    private static final List<String> COMMON = List.of("start", "machine");

    LeftPage {
        places = List.copyOf(places);
    }

    /** Whether it still holds for a setup. */
    boolean isOf(Setup now) {
        return Stream.concat(COMMON.stream(), places.stream().map(LeftPage::part))
                .distinct()
                .map(PARTS::get)
                .allMatch(part -> part != null && part.apply(now).equals(part.apply(setup)));
    }

    /** Name of the part that a place is in: the first of its pointer. */
    static String part(String pointer) {
        return pointer.split("/", 3)[1];
    }
}
