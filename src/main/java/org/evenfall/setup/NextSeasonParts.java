package org.evenfall.setup;

import java.util.List;
import java.util.stream.Stream;
import org.evenfall.setup.entry.Blank;
import org.evenfall.setup.entry.Setup;

/** What of a setup is kept by {@link NextSeason}, and what is open again, for the one that shows it. */
public final class NextSeasonParts {

    /** What is kept. */
    public enum Kept {
        /** Farm and field. */
        FARM,
        /** Tramline width and driving pattern. */
        TRAMLINES,
        /** The machine with its levers and its opening table. */
        MACHINE,
        /** Tested products, that of the earlier season among them where its test passed. */
        TESTED_PRODUCTS,
        /** Plan of the rate. */
        PLAN,
        /** Trays, scale, container and sieves. */
        EQUIPMENT,
        /** Who measured and who signs. */
        PEOPLE
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
                .filter(kept -> !entries(kept, next).stream().allMatch(Blank::isBlank))
                .toList();
    }

    private static List<Object> entries(Kept kept, Setup setup) {
        return switch (kept) {
            case FARM -> List.of(setup.start().farm(), setup.start().field());
            case TRAMLINES ->
                List.of(setup.start().tramlineWidth(), setup.start().drivingPattern());
            case MACHINE -> List.of(setup.machine());
            case TESTED_PRODUCTS -> List.of(setup.match().library());
            case PLAN -> List.of(setup.rate().plan());
            case EQUIPMENT -> List.of(setup.trays(), setup.product());
            case PEOPLE ->
                List.of(
                        setup.card().measuredBy(),
                        setup.card().signedBy(),
                        setup.card().role());
        };
    }

    /** All that is open again. */
    public static List<Open> toDo() {
        return List.of(Open.values());
    }
}
