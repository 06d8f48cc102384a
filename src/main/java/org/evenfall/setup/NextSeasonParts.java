package org.evenfall.setup;

import java.util.List;
import java.util.function.Function;
import java.util.stream.Stream;
import org.evenfall.setup.entry.Blank;
import org.evenfall.setup.entry.Setup;

/** What of a setup is kept by {@link NextSeason}, and what is open again, for the one that shows it. */
public final class NextSeasonParts {

    /** What is kept. */
    public enum Kept {
        /** Farm and field. */
        FARM(setup -> List.of(setup.start().farm(), setup.start().field())),
        /** Tramline width and driving pattern. */
        TRAMLINES(setup -> List.of(setup.start().tramlineWidth(), setup.start().drivingPattern())),
        /** The machine with its levers and its opening table. */
        MACHINE(setup -> List.of(setup.machine())),
        /** Tested products, that of the earlier season among them where its test passed. */
        TESTED_PRODUCTS(setup -> List.of(setup.match().library())),
        /** Plan of the rate. */
        PLAN(setup -> List.of(setup.rate().plan())),
        /** Trays, scale, container and sieves. */
        EQUIPMENT(setup -> List.of(setup.trays(), setup.product())),
        /** Who measured and who signs. */
        PEOPLE(setup -> List.of(
                setup.card().measuredBy(), setup.card().signedBy(), setup.card().role()));

        private final Function<Setup, List<Object>> entries;

        Kept(Function<Setup, List<Object>> entries) {
            this.entries = entries;
        }
    }

    /** What is answered or measured again. */
    public enum Open {
        /** Crop. */
        CROP,
        /** Product: name, delivery, density, sieves, condition. */
        PRODUCT,
        /** Settings to start from. */
        START_SETTINGS,
        /** Machine check. */
        MACHINE_CHECK,
        /** Height over the crop. */
        HEIGHT,
        /** Speed and rate by bucket. */
        RATE_CHECK,
        /** Tray test. */
        TRAY_TEST,
        /** Date, signature and file of the card. */
        CARD
    }

    private NextSeasonParts() {}

    /** What is kept of which the setup has something. */
    public static List<Kept> kept(Setup next) {
        return Stream.of(Kept.values())
                .filter(kept -> !kept.entries.apply(next).stream().allMatch(Blank::isBlank))
                .toList();
    }

    /** All that is open again. */
    public static List<Open> open() {
        return List.of(Open.values());
    }
}
