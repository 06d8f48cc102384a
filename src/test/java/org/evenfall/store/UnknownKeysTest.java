package org.evenfall.store;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.function.UnaryOperator;
import org.evenfall.quantity.EnteredQuantity;
import org.evenfall.setup.KeptProducts;
import org.evenfall.setup.entry.Setup;
import org.evenfall.setup.entry.TestedProductEntry;
import org.evenfall.setup.entry.UnknownKeys;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Keys that this version does not know stay with their object whatever happens to the objects around it. */
class UnknownKeysTest {

    private static final String TEXT = """
            {"evenfall": 1, "$schema": "s", "colour": "blue",
             "start": {"farm": "Thornmarsh Farm", "hill": [1, 2]},
             "machine": {"levers": [{"label": "long vane", "paint": "red"}, {"label": "tilt"}]},
             "match": {"library": [
                {"id": "a"},
                {"id": "b", "tester": {"name": "x"}, "settings": {"levers": {"long vane": "9"}, "gear": 3}},
                {"id": "c"}]},
             "product": {"sievings": [{"amounts": ["1", "2"]}, {"amounts": ["3", "4"], "lab": "y"}]},
             "trays": {"wheels": {"pattern": null},
                "tests": [{"settings": {"note": ""}}, {"remark": "dry", "settings": {"tilt": "1", "camera": []}}]}}""";

    private final SetupJson json = new SetupJson();

    private JsonNode changed(UnaryOperator<Setup> change) throws Exception {
        Setup setup = json.read(TEXT, "x");
        return new ObjectMapper().readTree(json.write(change.apply(setup)));
    }

    private JsonNode changedLibrary(UnaryOperator<List<TestedProductEntry>> change) throws Exception {
        JsonNode library = changed(setup -> setup.withMatch(setup.match()
                        .withLibrary(change.apply(new ArrayList<>(setup.match().library())))))
                .at("/match/library");
        for (JsonNode item : library) {
            boolean isB = item.path("id").asText().startsWith("b");
            assertThat(item.has("tester")).as(item.toString()).isEqualTo(isB);
            assertThat(item.at("/settings/gear").isMissingNode()).isEqualTo(!isB);
        }
        return library;
    }

    @Test
    void theyComeBackAtEveryLevelWithTheirValues() throws Exception {
        JsonNode before = new ObjectMapper().readTree(TEXT);
        JsonNode again = changed(setup -> setup);
        for (String place : List.of(
                "/$schema",
                "/colour",
                "/start/hill",
                "/machine/levers/0/paint",
                "/match/library/1/tester",
                "/match/library/1/settings/gear",
                "/product/sievings/1/lab",
                "/trays/wheels/pattern",
                "/trays/tests/0/settings/note",
                "/trays/tests/1/settings/camera")) {
            assertThat(before.at(place).isMissingNode()).isFalse();
            assertThat(again.at(place)).as(place).isEqualTo(before.at(place));
        }
        assertThat(again.at("/machine/levers/1").has("paint")).isFalse();
    }

    @Test
    void anItemBeforeItIsDeleted() throws Exception {
        JsonNode library = changedLibrary(items -> items.subList(1, 3));
        assertThat(library.at("/0/tester/name").textValue()).isEqualTo("x");
        assertThat(library.at("/0/settings/gear").intValue()).isEqualTo(3);
    }

    @Test
    void itsItemIsDeleted() throws Exception {
        assertThat(changedLibrary(items -> List.of(items.get(0), items.get(2)))).hasSize(2);
    }

    @Test
    void anItemIsAddedBeforeItAndAfterIt() throws Exception {
        JsonNode library = changedLibrary(items -> {
            items.add(0, TestedProductEntry.EMPTY.withId("new"));
            items.add(TestedProductEntry.EMPTY.withId("last"));
            return items;
        });
        assertThat(library).hasSize(5);
        assertThat(library.at("/2").has("tester")).isTrue();
    }

    @Test
    void itemsAreReordered() throws Exception {
        JsonNode library = changedLibrary(items -> {
            Collections.reverse(items);
            Collections.swap(items, 0, 1);
            return items;
        });
        assertThat(library.at("/0").has("tester")).isTrue();
    }

    @Test
    void itsItemIsEdited() throws Exception {
        JsonNode library = changedLibrary(items -> {
            TestedProductEntry b = items.get(1);
            items.set(
                    1,
                    b.withId("b2").withSettings(b.settings().withLevers(Map.of("tilt", EnteredQuantity.parse("1")))));
            return items;
        });
        assertThat(library.at("/1/id").textValue()).isEqualTo("b2");
        assertThat(library.at("/1/settings/levers/tilt").textValue()).isEqualTo("1");
    }

    /** An undo goes back to the setup before the change. */
    @Test
    void aDeletionIsUndone() throws Exception {
        Setup before = json.read(TEXT, "x");
        Setup deleted = before.withMatch(before.match().withLibrary(List.of()));
        assertThat(json.write(deleted)).doesNotContain("tester").contains("colour");
        assertThat(changed(setup -> before).at("/match/library/1").has("tester"))
                .isTrue();
    }

    @Test
    void aListWithinTheItemOfAListIsChanged() throws Exception {
        JsonNode again = changed(setup ->
                setup.withTrays(setup.trays().withTests(setup.trays().tests().subList(1, 2))));
        assertThat(again.at("/trays/tests")).hasSize(1);
        assertThat(again.at("/trays/tests/0/settings").has("camera")).isTrue();
        assertThat(again.at("/trays/tests/0/settings").has("note")).isFalse();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"null", "0", "\"\"", "[]", "{}", "\"UNANSWERED\"", "0.10", "1e400", "123456789012345678901"})
    void aValueThatWouldBeBlankIsKeptToo(String value) throws Exception {
        String text = "{\"evenfall\":1,\"rate\":{\"plan\":{\"extra\":" + value + "}}}";
        JsonNode kept = json.mapper().readTree(json.write(json.read(text, "x")));
        assertThat(kept.at("/rate/plan/extra")).isEqualTo(json.mapper().readTree(value));
    }

    @Test
    void twoEntriesThatDifferInThemAloneAreDifferent() throws Exception {
        List<TestedProductEntry> library = json.read(TEXT, "x").match().library();
        TestedProductEntry b = library.get(1);
        TestedProductEntry bare = b.withUnknownKeys(UnknownKeys.NONE);
        assertThat(bare).isNotEqualTo(b);
        assertThat(KeptProducts.join(library, List.of(b))).isEqualTo(library);
        assertThat(KeptProducts.join(library, List.of(bare)))
                .as("none is lost: it gets an id of its own")
                .hasSize(4)
                .contains(b, bare.withId("own-1"));
    }

    @Test
    void aKeyNamedLikeTheComponentThatKeepsThemIsUnknownToo() throws Exception {
        String text = "{\"evenfall\":1,\"unknownKeys\":{\"a\":1},\"machineCheck\":{\"tilt\":\"1\"}}";
        JsonNode again = json.mapper().readTree(json.write(json.read(text, "x")));
        assertThat(again.at("/unknownKeys/a").intValue()).isEqualTo(1);
        assertThat(again.at("/machineCheck/tilt").textValue()).isEqualTo("1");
        assertThat(again.has("yard")).isFalse();
    }
}
