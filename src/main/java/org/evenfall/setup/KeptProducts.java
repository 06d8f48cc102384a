package org.evenfall.setup;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import org.evenfall.granule.SieveResult;
import org.evenfall.quantity.EnteredQuantity;
import org.evenfall.quantity.NumberFormats;
import org.evenfall.quantity.Unit;
import org.evenfall.setup.entry.Setup;
import org.evenfall.setup.entry.TestedProductEntry;
import org.evenfall.setup.entry.TrayTestEntry;
import org.evenfall.setup.entry.UnknownKeys;
import org.evenfall.trays.EvennessVerdict;
import org.evenfall.trays.Uniformity;

/** A product whose last tray test passed becomes a tested product of this machine. */
public final class KeptProducts {

    private static final int DECIMALS = 4;

    private KeptProducts() {}

    /**
     * The tested product that this setup proves: its density, sieve classes, width and the settings of the tray test.
     * Empty while the product is not measured, no test proves the present settings or it has not passed, or the same is in the library already.
     */
    public static Optional<TestedProductEntry> of(Setup setup, Assessment assessment) {
        TrayTestResult last = assessment.trays().proof();
        ProductResult product = assessment.product();
        if (last == null
                || product.density() == null
                || setup.start().tramlineWidth().isBlank()) {
            return Optional.empty();
        }
        Uniformity evenness = last.evenness();
        if (evenness.verdict() != EvennessVerdict.EVEN && evenness.verdict() != EvennessVerdict.PROBABLY_EVEN) {
            return Optional.empty();
        }
        TrayTestEntry test = setup.trays().tests().get(last.index());
        SieveResult sieve = product.sieve();
        TestedProductEntry kept = new TestedProductEntry(
                freeId(setup.match().library()),
                (setup.product().name() + " " + setup.product().delivery()).strip(),
                setup.product().form(),
                setup.start().tramlineWidth(),
                setup.product().nitrogen(),
                typed(product.density().meanKgPerL(), Unit.KG_PER_L),
                sieve == null
                        ? List.of()
                        : sieve.aperturesMm().stream()
                                .map(mm -> typed(mm, Unit.MM))
                                .toList(),
                sieve == null
                        ? List.of()
                        : sieve.sharesPercent().stream()
                                .map(share -> typed(share, Unit.PERCENT))
                                .toList(),
                sieve == null ? setup.product().medianSize() : EnteredQuantity.EMPTY,
                typed(evenness.cvPercent(), Unit.PERCENT),
                test.settings().withUnknownKeys(UnknownKeys.NONE),
                (OWN_TEST + " " + last.date()).strip(),
                UnknownKeys.NONE);
        boolean there = setup.match().library().stream()
                .anyMatch(entry -> entry.withId(kept.id())
                        .withUnknownKeys(UnknownKeys.NONE)
                        .withSettings(entry.settings().withUnknownKeys(UnknownKeys.NONE))
                        .equals(kept));
        return there ? Optional.empty() : Optional.of(kept);
    }

    /** How a product's source is written that was kept from its own tray test; in the file, so in one language. */
    public static final String OWN_TEST = "own tray test";

    /** More entries joined to a library; whose short name is taken gets a free one, none is lost. */
    public static List<TestedProductEntry> join(List<TestedProductEntry> library, List<TestedProductEntry> more) {
        List<TestedProductEntry> all = new ArrayList<>(library);
        for (TestedProductEntry entry : more) {
            boolean same = all.contains(entry);
            boolean taken = all.stream().anyMatch(other -> other.id().equals(entry.id()));
            if (!same) {
                all.add(taken || entry.id().isBlank() ? entry.withId(freeId(all)) : entry);
            }
        }
        return all;
    }

    private static String freeId(List<TestedProductEntry> library) {
        Set<String> ids = new HashSet<>();
        library.forEach(entry -> ids.add(entry.id()));
        int number = 1;
        while (ids.contains("own-" + number)) {
            number++;
        }
        return "own-" + number;
    }

    /** Four decimals: a text that no reader takes for a thousand. */
    private static EnteredQuantity typed(double value, Unit unit) {
        return new EnteredQuantity(NumberFormats.decimals(value, DECIMALS, Locale.ROOT), unit);
    }
}
