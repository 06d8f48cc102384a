package org.evenfall.wizard;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.evenfall.quantity.EnteredQuantity;
import org.evenfall.setup.ReadSetup;
import org.evenfall.setup.ReadingPass;
import org.evenfall.setup.entry.Setup;
import org.evenfall.setup.entry.TestedProductEntry;
import org.evenfall.setup.path.MatchPaths;
import org.junit.jupiter.api.Test;

/** The order of tested products in the library's list. */
class LibraryOrderTest {

    private static TestedProductEntry entry(String name, String width, String density) {
        return TestedProductEntry.EMPTY
                .withId(name)
                .withName(name)
                .withWidth(EnteredQuantity.parse(width))
                .withBulkDensity(EnteredQuantity.parse(density));
    }

    private static final List<TestedProductEntry> LIBRARY = List.of(
            entry("b", "28 m", "0.76 kg/L"),
            entry("a", "92 ft", "740 kg/m³"),
            entry("D", "", "abc"),
            entry("c", "24", "0,75"),
            entry("e", "27,9 m", "7.5 kg/L"));

    private static final ReadSetup READ =
            ReadingPass.read(MatchPaths.LIBRARY.path().set(Setup.EMPTY, LIBRARY));

    private static List<String> names(LibraryOrder order, String search) {
        return order.places(READ, search, entry -> entry.name().equals("b") ? "granular urea" : "prilled urea").stream()
                .map(place -> LIBRARY.get(place).name())
                .toList();
    }

    @Test
    void asEnteredKeepsTheOrder() {
        assertThat(names(LibraryOrder.AS_ENTERED, "")).containsExactly("b", "a", "D", "c", "e");
    }

    @Test
    void namesAreSortedWhateverTheirCase() {
        assertThat(names(LibraryOrder.NAME, "")).containsExactly("a", "b", "c", "D", "e");
    }

    /** 92 ft are 28.04 m, just more than 28 m. */
    @Test
    void widthsAreComparedWhateverTheirUnit() {
        assertThat(names(LibraryOrder.WIDTH, "")).containsExactly("c", "e", "b", "a", "D");
    }

    /** 740 kg/m³ are less than 0.75 kg/L; what cannot be a density comes last, as it was entered. */
    @Test
    void densitiesAreComparedWhateverTheirUnit() {
        assertThat(names(LibraryOrder.DENSITY, "")).containsExactly("a", "c", "b", "D", "e");
    }

    @Test
    void everyWordOfTheSearchHasToBeThere() {
        assertThat(names(LibraryOrder.AS_ENTERED, " UREA  granular ")).containsExactly("b");
        assertThat(names(LibraryOrder.NAME, "prilled")).containsExactly("a", "c", "D", "e");
        assertThat(names(LibraryOrder.NAME, "prilled granular")).isEmpty();
    }
}
