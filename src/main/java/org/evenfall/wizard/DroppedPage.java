package org.evenfall.wizard;

import java.util.List;
import org.evenfall.setup.entry.Setup;
import org.evenfall.setup.path.CardPaths;
import org.evenfall.setup.path.EntryPath;
import org.evenfall.setup.path.HeightPaths;
import org.evenfall.setup.path.LogPaths;
import org.evenfall.setup.path.MachineCheckPaths;
import org.evenfall.setup.path.MachinePaths;
import org.evenfall.setup.path.MatchPaths;
import org.evenfall.setup.path.Part;
import org.evenfall.setup.path.ProductPaths;
import org.evenfall.setup.path.RatePaths;
import org.evenfall.setup.path.StartPaths;
import org.evenfall.setup.path.TrayPaths;

/**
 * What is known of a page whose content was dropped; valid until something changes that its entries depend on.
 *
 * @param setup the setup when the content was dropped
 * @param places pointers of the places that are typed on it
 * @param typed whether something was typed or chosen on it
 */
record DroppedPage(Setup setup, List<String> places, boolean typed) {

    /** Parts that every page may depend on: the tramline width and the machine. */
    private static final List<Part<?>> COMMON = List.of(StartPaths.START, MachinePaths.MACHINE);

    private static final List<Part<?>> OTHERS = List.of(
            ProductPaths.PRODUCT,
            MatchPaths.MATCH,
            MachineCheckPaths.MACHINE_CHECK,
            HeightPaths.HEIGHT,
            RatePaths.RATE,
            TrayPaths.TRAYS,
            CardPaths.CARD,
            LogPaths.LOG);

    DroppedPage {
        places = List.copyOf(places);
    }

    /** Whether it is still valid for a setup. */
    boolean isOf(Setup now) {
        return COMMON.stream().allMatch(part -> isSame(part.only(), now))
                && places.stream().allMatch(place -> isSame(place, now));
    }

    private boolean isSame(String place, Setup now) {
        return COMMON.stream().anyMatch(part -> isIn(part, place))
                || OTHERS.stream().anyMatch(part -> isIn(part, place) && isSame(part.only(), now));
    }

    private boolean isSame(EntryPath<?> part, Setup now) {
        return part.get(setup).equals(part.get(now));
    }

    private static boolean isIn(Part<?> part, String place) {
        String whole = part.only().pointer();
        return place.equals(whole) || place.startsWith(whole + "/");
    }
}
