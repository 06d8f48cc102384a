package org.evenfall.setup.path;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.evenfall.setup.entry.Setup;
import org.evenfall.store.SetupJson;
import org.evenfall.store.SetupStore;
import org.junit.jupiter.api.Test;

class PrivateEntriesTest {

    private static Setup demo() throws Exception {
        return new SetupStore(new SetupJson()).read(Path.of("demo", "setup.json"));
    }

    @Test
    void namesAndPricesArePrivateAndNothingElse() {
        assertThat(Entries.ALL.stream().filter(Entry::isPrivate).flatMap(entry -> entry.patterns().stream()))
                .containsExactlyInAnyOrder(
                        "/start/farm",
                        "/start/field",
                        "/rate/plan/price",
                        "/rate/plan/otherPrice",
                        "/card/measuredBy",
                        "/card/signedBy",
                        "/log/passes/*/field",
                        "/log/passes/*/note");
        assertThat(PrivateEntries.at("/start/farm")).isTrue();
        assertThat(PrivateEntries.at("/start/crop")).isFalse();
        assertThat(PrivateEntries.at("/trays/tests/0/remark")).isFalse();
    }

    @Test
    void aNeedStaysWhatItIs() {
        assertThat(CardPaths.SIGNED_BY.neededForCard()).isTrue();
        assertThat(CardPaths.SIGNED_BY.missingKey()).isEqualTo("missing.signedBy");
        assertThat(StartPaths.FARM.missingKey()).isEqualTo("missing.farm");
    }

    @Test
    void aHiddenSetupHasDotsForNamesNoPricesAndAllElse() throws Exception {
        Setup setup = CardPaths.MEASURED_BY.path().set(demo(), "");
        Setup hidden = PrivateEntries.hidden(setup);
        assertThat(StartPaths.FARM.get(hidden)).isEqualTo(PrivateEntries.DOTS);
        assertThat(CardPaths.MEASURED_BY.get(hidden))
                .as("nothing typed, nothing to hide")
                .isEmpty();
        assertThat(RatePaths.PRICE.get(setup).isBlank()).isFalse();
        assertThat(RatePaths.PRICE.get(hidden).isBlank()).isTrue();
        assertThat(hidden.trays()).isEqualTo(setup.trays());
        assertThat(hidden.start().crop()).isEqualTo(setup.start().crop());
        assertThat(PrivateEntries.withoutPrices(setup).start()).isEqualTo(setup.start());
    }

    @Test
    void namesAreMaskedInASentence() throws Exception {
        Setup setup = StartPaths.FIELD.path().set(demo(), "A");
        String farm = StartPaths.FARM.get(setup);
        assertThat(PrivateEntries.masked(setup, farm + " is An example"))
                .isEqualTo(PrivateEntries.DOTS + " is An example");
    }
}
