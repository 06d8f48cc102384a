package org.evenfall.setup;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.fasterxml.jackson.databind.node.TextNode;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.ResourceBundle;
import org.evenfall.finding.Finding;
import org.evenfall.finding.FindingKind;
import org.evenfall.finding.Step;
import org.evenfall.quantity.EnteredQuantity;
import org.evenfall.quantity.Unit;
import org.evenfall.setup.entry.Condition;
import org.evenfall.setup.entry.Setup;
import org.evenfall.setup.entry.YesNo;
import org.evenfall.store.InputFileException;
import org.evenfall.store.SetupJson;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

class AssessorTest {

    private static final SetupJson JSON = new SetupJson();

    private static Setup demo() throws Exception {
        return JSON.read(Files.readString(Path.of("demo", "setup.json")), "demo");
    }

    private static List<String> keys(Setup setup) {
        return Assessor.assess(setup).findings().stream().map(Finding::key).toList();
    }

    @Test
    void nothingTypedIsOpenAndNothingElse() {
        Assessment assessment = Assessor.assess(Setup.EMPTY);
        assertThat(assessment.findings())
                .isNotEmpty()
                .allMatch(finding -> finding.kind() == FindingKind.MISSING
                        || (finding.kind() == FindingKind.NOTE && finding.key().startsWith("missing.")));
        assertThat(assessment.states())
                .containsEntry(Step.START, StepState.OPEN)
                .containsEntry(Step.CARD, StepState.OPEN);
        assertThat(assessment.card().cardAllowed()).isFalse();
    }

    @Test
    void theDemoGivesACard() throws Exception {
        Assessment assessment = Assessor.assess(demo());
        assertThat(assessment.findings()).noneMatch(finding -> finding.kind() == FindingKind.STOP);
        assertThat(assessment.card().missing()).isEmpty();
        assertThat(assessment.card().cardAllowed()).isTrue();
        assertThat(assessment.trays().tests()).hasSize(2);
        assertThat(assessment.trays().tests().get(0).evenness().cvPercent()).isGreaterThan(15);
        assertThat(assessment.trays().tests().get(1).evenness().cvPercent()).isLessThan(10);
        assertThat(assessment).isEqualTo(Assessor.assess(demo()));
    }

    @Test
    void swappedDigitsAndAWrongOrderOfMagnitudeAreAskedBackAndCounted() throws Exception {
        Setup demo = demo();
        assertThat(keys(demo)).doesNotContain("trays.swapped", "trays.slip");
        Setup swapped = caught(demo, "16", "17", "81", "18", "16", "17", "15");
        assertThat(keys(swapped)).contains("trays.swapped").doesNotContain("trays.slip");
        assertThat(Assessor.assess(swapped).trays().tests()).hasSize(2);
        Setup slipped = caught(demo, "16", "170", "18", "18", "16", "17", "15");
        assertThat(keys(slipped)).contains("trays.slip").doesNotContain("trays.swapped");
        // far off, but no swap explains it
        assertThat(keys(caught(demo, "16", "17", "33", "18", "16", "17", "15")))
                .doesNotContain("trays.slip", "trays.swapped");
    }

    @Test
    void catchesOfSeveralRunsMayBeTypedWithAPlus() throws Exception {
        Setup demo = demo();
        Setup summed = caught(demo, "16", "17", "18", "18", "16", "17", "15");
        Setup apart = caught(demo, "5 + 6+5", "5,5+5.5+6", "6+6+6", "18", "16", "8+9", "15");
        assertThat(Assessor.assess(apart).trays().tests().get(1).evenness().cvPercent())
                .isEqualTo(Assessor.assess(summed)
                        .trays()
                        .tests()
                        .get(1)
                        .evenness()
                        .cvPercent());
        // a slip among them is reported at its place and nothing is guessed
        Assessment slip = Assessor.assess(caught(demo, "5+x", "17", "18", "18", "16", "17", "15"));
        assertThat(slip.findings()).anyMatch(finding -> finding.field().endsWith("/catches/0"));
    }

    private static Setup caught(Setup setup, String... grams) {
        List<org.evenfall.setup.entry.TrayTestEntry> tests =
                new ArrayList<>(setup.trays().tests());
        int last = tests.size() - 1;
        tests.set(
                last,
                tests.get(last)
                        .withCatches(java.util.Arrays.stream(grams)
                                .map(one -> new EnteredQuantity(one, Unit.G))
                                .toList()));
        return setup.withTrays(setup.trays().withTests(tests));
    }

    /** A passed test makes a tested product once; joining never loses one nor gives a short name twice. */
    @Test
    void aPassedTestIsKeptAsATestedProduct() throws Exception {
        Setup demo = demo();
        var kept = KeptProducts.of(demo, Assessor.assess(demo)).orElseThrow();
        assertThat(kept.width()).isEqualTo(demo.start().tramlineWidth());
        assertThat(kept.shares()).hasSize(kept.apertures().size() + 1);
        Setup with = demo.withMatch(demo.match()
                .withLibrary(KeptProducts.join(demo.match().library(), List.of(kept, kept, kept.withName("Other")))));
        assertThat(with.match().library()).hasSize(demo.match().library().size() + 2);
        assertThat(with.match().library().stream().map(entry -> entry.id()).distinct())
                .hasSameSizeAs(with.match().library());
        assertThat(KeptProducts.of(with, Assessor.assess(with))).isEmpty();
        Setup uneven = caught(demo, "26", "17", "8", "18", "6", "17", "25");
        assertThat(KeptProducts.of(uneven, Assessor.assess(uneven))).isEmpty();
        assertThat(KeptProducts.of(Setup.EMPTY, Assessor.assess(Setup.EMPTY))).isEmpty();
    }

    @Test
    void whatMustStopStops() throws Exception {
        Setup demo = demo();
        assertThat(keys(demo.withProduct(demo.product().withCondition(Condition.CAKED))))
                .contains("product.caked");
        assertThat(keys(demo.withProduct(
                        demo.product().withNitrateBefore(YesNo.YES).withCleanAndDry(YesNo.NO))))
                .contains("product.notClean");
        Setup caked = demo.withProduct(demo.product().withCondition(Condition.CAKED));
        assertThat(Assessor.assess(caked).card().cardAllowed()).isFalse();
        assertThat(Assessor.assess(caked).states()).containsEntry(Step.PRODUCT, StepState.STOPPED);
    }

    @Test
    void aMistypedEntryIsAFindingAtItsPlaceWithLimits() throws Exception {
        Setup demo = demo();
        Finding finding = Assessor.assess(
                        demo.withStart(demo.start().withTramlineWidth(new EnteredQuantity("280", Unit.M))))
                .findings()
                .stream()
                .filter(one -> one.key().equals("entry.impossible"))
                .findFirst()
                .orElseThrow();
        assertThat(finding.field()).isEqualTo("/start/tramlineWidth");
        assertThat(finding.kind()).isEqualTo(FindingKind.STOP);
        assertThat(finding.args()).hasSize(4);
        assertThat(keys(demo.withStart(demo.start().withTramlineWidth(new EnteredQuantity("1,250", Unit.M)))))
                .contains("entry.ambiguous");
        assertThat(keys(demo.withStart(demo.start().withTramlineWidth(new EnteredQuantity("wide", Unit.M)))))
                .contains("entry.notANumber");
        assertThat(Assessor.assess(demo.withStart(demo.start().withTramlineWidth(new EnteredQuantity("28 m", Unit.M))))
                        .tramlineWidthM())
                .isEqualTo(28);
    }

    /** Entries dropped, garbled and exaggerated: an assessment never throws, and every finding has its sentence. */
    @Tag("slow")
    @Test
    void neverThrowsWhateverIsTyped() throws Exception {
        JsonNode demo = new ObjectMapper().readTree(Files.readString(Path.of("demo", "setup.json")));
        ResourceBundle words = ResourceBundle.getBundle("org.evenfall.words", Locale.ENGLISH);
        String[] garbage = {
            "", "-1", "0", "1e9", "999999", "1,250", "abc", "12 m", "0,0001", "50 %", "-5 kg", "2.5.1", "7"
        };
        Random random = new Random(2000);
        for (int i = 0; i < 2000; i++) {
            JsonNode changed = demo.deepCopy();
            for (int n = 1 + random.nextInt(6); n > 0; n--) {
                mutate(changed, random, garbage);
            }
            Setup file;
            try {
                file = JSON.read(changed.toString(), "mutated");
            } catch (InputFileException refused) {
                continue;
            }
            String text = changed.toString();
            assertThatCode(() -> {
                        for (Finding finding : Assessor.assess(file).findings()) {
                            assertThat(words.containsKey(finding.key()))
                                    .as(finding.key())
                                    .isTrue();
                        }
                    })
                    .as(text)
                    .doesNotThrowAnyException();
        }
    }

    private static void mutate(JsonNode node, Random random, String[] garbage) {
        List<Runnable> changes = new ArrayList<>();
        collect(node, random, garbage, changes);
        changes.get(random.nextInt(changes.size())).run();
    }

    private static void collect(JsonNode node, Random random, String[] garbage, List<Runnable> changes) {
        if (node instanceof ObjectNode object) {
            object.fieldNames().forEachRemaining(name -> {
                JsonNode value = object.get(name);
                if (!name.equals("evenfall")) {
                    changes.add(() -> object.remove(name));
                }
                if (value.isTextual()) {
                    changes.add(() -> object.put(name, garbage[random.nextInt(garbage.length)]));
                }
                collect(value, random, garbage, changes);
            });
        } else if (node instanceof ArrayNode list) {
            for (int i = 0; i < list.size(); i++) {
                int at = i;
                changes.add(() -> {
                    if (at < list.size()) {
                        list.remove(at);
                    }
                });
                if (list.get(i).isTextual()) {
                    changes.add(() -> {
                        if (at < list.size()) {
                            list.set(at, TextNode.valueOf(garbage[random.nextInt(garbage.length)]));
                        }
                    });
                }
                collect(list.get(i), random, garbage, changes);
            }
        }
    }
}
