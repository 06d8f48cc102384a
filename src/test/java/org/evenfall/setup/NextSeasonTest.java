package org.evenfall.setup;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.evenfall.setup.entry.GuideEntries;
import org.evenfall.setup.entry.Setup;
import org.evenfall.setup.entry.TestedProductEntry;
import org.evenfall.setup.entry.UnknownKeys;
import org.evenfall.setup.entry.YesNo;
import org.evenfall.setup.path.Entries;
import org.evenfall.setup.path.Entry;
import org.evenfall.setup.path.EntryPath;
import org.evenfall.setup.path.FullSetup;
import org.evenfall.store.SetupJson;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class NextSeasonTest {

    private static Setup demo() throws Exception {
        return new SetupJson().read(Files.readString(Path.of("demo", "setup.json")), "demo");
    }

    private static Setup next(Setup from) {
        return NextSeason.of(from, Assessor.assess(from), 2028);
    }

    /** What becomes of each entry, by its pattern: kept, emptied or new. */
    private static Map<String, String> declared() throws Exception {
        Map<String, String> declared = new LinkedHashMap<>();
        try (var csv = NextSeasonTest.class.getResourceAsStream("next-season.csv")) {
            new String(csv.readAllBytes(), StandardCharsets.UTF_8)
                    .lines()
                    .skip(1)
                    .map(line -> line.split(","))
                    .forEach(line -> declared.put(line[0], line[1]));
        }
        return declared;
    }

    /** A new entry forces a decision: it has a line in next-season.csv. */
    @Test
    void everyEntryIsKeptOrEmptiedAsDeclared() throws Exception {
        Setup full = FullSetup.make();
        Setup next = next(full);
        Map<String, String> declared = declared();
        Set<String> patterns = new HashSet<>();
        for (Entry<?, ?> entry : Entries.ALL) {
            patterns.addAll(entry.patterns());
            becomesAsDeclared(entry, full, next, declared);
        }
        assertThat(declared.keySet()).isEqualTo(patterns);
    }

    private static <R, T> void becomesAsDeclared(
            Entry<R, T> entry, Setup full, Setup next, Map<String, String> declared) {
        for (EntryPath<T> path : entry.places(full).toList()) {
            String what = String.valueOf(declared.get(pattern(path.pointer())));
            assertThat(entry.isBlank(path.get(full))).as("typed: " + path).isFalse();
            switch (what) {
                case "kept" -> assertThat(path.get(next)).as(path.toString()).isEqualTo(path.get(full));
                case "new" -> assertThat(path.get(next)).as(path.toString()).isNotEqualTo(path.get(full));
                default -> assertThat(what).as(path.toString()).isEqualTo("emptied");
            }
        }
        for (EntryPath<T> path : entry.places(next).toList()) {
            if ("emptied".equals(declared.get(pattern(path.pointer())))) {
                assertThat(entry.isBlank(path.get(next))).as("emptied: " + path).isTrue();
            }
        }
    }

    private static String pattern(String pointer) {
        return pointer.replaceAll("/\\d+", "/*");
    }

    /** What no person types: the revision begins anew, cautions are read again, an example stays one. */
    @Test
    void whatIsNotTyped() {
        Setup full = FullSetup.make();
        Setup next = next(full.withCard(full.card().withRevision(3).withPreviousDate("2027-04-02"))
                .withGuide(full.guide()
                        .withSkipped(List.of("1g"))
                        .withCautionsRead(List.of("3a"))
                        .withInvented(YesNo.YES)));
        assertThat(next.card().revision()).isZero();
        assertThat(next.card().previousDate()).isEmpty();
        assertThat(next.start().season()).isEqualTo("2028");
        assertThat(next.guide())
                .isEqualTo(GuideEntries.EMPTY
                        .withInvented(YesNo.YES)
                        .withUnknownKeys(full.guide().unknownKeys()));
    }

    @Test
    void unknownKeysStayAtWhatIsKept() {
        Setup full = FullSetup.make();
        Setup next = next(full);
        assertThat(next.unknownKeys()).isEqualTo(full.unknownKeys());
        assertThat(next.start().unknownKeys()).isEqualTo(full.start().unknownKeys());
        assertThat(next.machine()).isEqualTo(full.machine());
        assertThat(next.match().unknownKeys()).isEqualTo(full.match().unknownKeys());
        assertThat(next.height().unknownKeys()).isEqualTo(full.height().unknownKeys());
        assertThat(next.rate().unknownKeys()).isEqualTo(full.rate().unknownKeys());
        assertThat(next.rate().plan().unknownKeys())
                .isEqualTo(full.rate().plan().unknownKeys());
        assertThat(next.trays().unknownKeys()).isEqualTo(full.trays().unknownKeys());
        assertThat(next.card().unknownKeys()).isEqualTo(full.card().unknownKeys());
        assertThat(next.product().unknownKeys()).isEqualTo(UnknownKeys.NONE);
        assertThat(next.match().today().unknownKeys()).isEqualTo(UnknownKeys.NONE);
        assertThat(next.machineCheck().unknownKeys()).isEqualTo(UnknownKeys.NONE);
    }

    /** Its tray test passed at long vane 10.5, so the next season has its product to start from. */
    @Test
    void theProductOfTheDemoJoinsTheTestedProducts() throws Exception {
        Setup demo = demo();
        Setup next = next(demo);
        List<TestedProductEntry> library = next.match().library();
        assertThat(library).hasSize(demo.match().library().size() + 1);
        TestedProductEntry own = library.get(library.size() - 1);
        assertThat(own.name()).isEqualTo("Granular urea, treated S-1042");
        assertThat(own.source()).isEqualTo("own tray test 2027-03-18");
        assertThat(own.settings().levers().get("long vane").text()).isEqualTo("10.5");
        assertThat(next(next).match().library()).as("not twice").isEqualTo(library);
    }

    /** A test that proves nothing more gives no tested product. */
    @Test
    void aProductThatIsNotProvedDoesNotJoin() throws Exception {
        Setup demo = demo();
        Setup changed = Revisions.reopen(
                demo, Assessor.assess(demo), Set.of(Revisions.Change.MACHINE_PART), TestNumbers.ENGLISH);
        assertThat(next(changed).match().library()).isEqualTo(demo.match().library());
    }

    /** Everything that a card needs of this year is asked again, and nothing typed is in error. */
    @Test
    void theNextSeasonOfTheDemoHasNoErrorAndNoCard() throws Exception {
        Assessment assessment = Assessor.assess(next(demo()));
        assertThat(assessment.card().cardAllowed()).isFalse();
        assertThat(assessment.card().missing())
                .contains("missing.fillings", "missing.trayTest", "missing.bucketTest", "missing.vanes", "missing.date")
                .doesNotContain("missing.tramlineWidth", "missing.rate", "missing.signedBy");
        assertThat(assessment.findings())
                .extracting(finding -> finding.kind().name())
                .doesNotContain("STOP");
    }

    @ParameterizedTest
    @CsvSource({
        "2027, 2027-03-18, 2028",
        "' 2026 ', '', 2027",
        "'', 2027-03-18, 2028",
        "spring 2031, 18.11.2027, 2029",
        "'', '', 2030",
        "'', 3/4/27, 2030"
    })
    void theSeasonAfter(String season, String card, int after) throws Exception {
        Setup demo = demo();
        Setup from = demo.withStart(demo.start().withSeason(season))
                .withCard(demo.card().withDate(card));
        assertThat(NextSeason.after(from, LocalDate.of(2029, 5, 6))).isEqualTo(after);
    }
}
