package org.evenfall.result;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.ResourceBundle;
import java.util.Set;
import org.evenfall.finding.Sentences;
import org.evenfall.finding.Step;
import org.evenfall.quantity.NumberFormats;
import org.evenfall.setup.Assessor;
import org.evenfall.setup.Revisions;
import org.evenfall.setup.entry.Setup;
import org.evenfall.store.SetupJson;
import org.junit.jupiter.api.Test;

/** In the report: what was checked again since the card before. */
class RecheckedPartTest {

    private static final Sentences WORDS =
            new Sentences(ResourceBundle.getBundle("org.evenfall.words", Locale.ENGLISH), Locale.UK);

    private static Setup revised(String previous) throws Exception {
        Setup demo = new SetupJson().read(Files.readString(Path.of("demo", "setup.json")), "demo");
        return demo.withCard(demo.card().withRevision(2).withPreviousDate(previous));
    }

    private static Optional<ResultPart> since(Setup setup) {
        return StepParts.of(Step.CARD, setup, Assessor.assess(setup), WORDS).stream()
                .filter(part -> part.title().startsWith("Since the card of"))
                .findFirst();
    }

    private static List<String> lines(Setup setup) {
        return since(setup).orElseThrow().results().stream()
                .map(line -> line.label() + ": " + line.value())
                .toList();
    }

    @Test
    void eachPartHasItsLine() throws Exception {
        assertThat(since(revised("2027-03-17")).orElseThrow().title()).isEqualTo("Since the card of 2027-03-17");
        assertThat(lines(revised("2027-03-17")))
                .containsExactly(
                        "Density and sieves: still holds",
                        "Machine check: still holds",
                        "Height over the crop: still holds",
                        "Rate by bucket: checked again on 2027-03-18",
                        "Tray test: checked again on 2027-03-18");
        assertThat(lines(revised("2027-03-18")))
                .contains("Rate by bucket: holds since 2027-03-18", "Tray test: holds since 2027-03-18");
    }

    @Test
    void whatHoldsNoLonger() throws Exception {
        Setup revised = revised("2027-03-18");
        Setup changed = Revisions.reopen(
                revised,
                Assessor.assess(revised),
                Set.of(Revisions.Change.MACHINE_PART),
                (value, decimals) -> NumberFormats.decimals(value, decimals, Locale.ROOT));
        assertThat(lines(changed))
                .contains(
                        "Machine check: holds no longer",
                        "Tray test: holds no longer",
                        "Rate by bucket: holds since 2027-03-18");
    }

    @Test
    void theFirstCardHasNone() throws Exception {
        assertThat(since(revised(""))).isEmpty();
    }
}
