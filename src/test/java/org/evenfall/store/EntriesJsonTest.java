package org.evenfall.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.lang.reflect.RecordComponent;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.stream.Stream;
import org.evenfall.quantity.EnteredQuantity;
import org.evenfall.setup.entry.Blank;
import org.evenfall.setup.entry.BucketEntry;
import org.evenfall.setup.entry.CheckEntry;
import org.evenfall.setup.entry.MatchEntries;
import org.evenfall.setup.entry.SettingsEntries;
import org.evenfall.setup.entry.Setup;
import org.evenfall.setup.entry.TestedProductEntry;
import org.evenfall.setup.entry.UnknownKeys;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** One rule for every component of every record of entries, found by reflection: a new one is tested with no new line. */
class EntriesJsonTest {

    private static final ObjectMapper JSON = new SetupJson().mapper();

    static Stream<Class<? extends Record>> types() {
        return EntryTypes.all().stream();
    }

    /** The fewest keys a record can be read from. */
    private static ObjectNode least(Class<?> type) {
        ObjectNode json = JSON.createObjectNode();
        return type == CheckEntry.class ? json.put("item", "DISCS") : json;
    }

    private static void isBlankIn(Record entries, RecordComponent component) {
        Object value = Blank.get(entries, component);
        assertThat(value)
                .as(entries.getClass().getSimpleName() + "." + component.getName())
                .isNotNull();
        if (!component.getName().equals("item")) {
            assertThat(value).isEqualTo(Blank.value(component.getType()));
        }
    }

    @Test
    void allRecordsAreFound() {
        assertThat(EntryTypes.all()).hasSizeGreaterThanOrEqualTo(24).contains(SettingsEntries.class, CheckEntry.class);
    }

    @ParameterizedTest
    @MethodSource("types")
    void whatIsAbsentIsNotTyped(Class<? extends Record> type) throws Exception {
        Record entries = JSON.treeToValue(least(type), type);
        for (RecordComponent component : type.getRecordComponents()) {
            isBlankIn(entries, component);
        }
    }

    @ParameterizedTest
    @MethodSource("types")
    void anExplicitNullIsNotTyped(Class<? extends Record> type) throws Exception {
        for (RecordComponent component : EntryTypes.known(type)) {
            if (component.getName().equals("item")) {
                continue;
            }
            Record entries = JSON.treeToValue(least(type).putNull(EntriesModule.key(component)), type);
            isBlankIn(entries, component);
            assertThat(Blank.get(entries, type.getRecordComponents()[type.getRecordComponents().length - 1]))
                    .isEqualTo(UnknownKeys.NONE);
        }
    }

    @ParameterizedTest
    @MethodSource("types")
    void aNullItemOfAListIsABlankItem(Class<? extends Record> type) throws Exception {
        for (RecordComponent component : EntryTypes.known(type)) {
            Class<?> item = EntryTypes.inner(component.getGenericType());
            if (component.getType() == List.class && item != CheckEntry.class) {
                ObjectNode json = least(type);
                json.putArray(component.getName()).addNull();
                assertThat(Blank.get(JSON.treeToValue(json, type), component)).isEqualTo(List.of(Blank.value(item)));
            }
        }
    }

    @Test
    void aLeverWithoutANumberIsNotTyped() throws Exception {
        SettingsEntries settings = JSON.readValue("{\"levers\": {\"long vane\": null}}", SettingsEntries.class);
        assertThat(settings.levers()).containsExactly(Map.entry("long vane", EnteredQuantity.EMPTY));
        assertThat(JSON.writeValueAsString(settings)).isEqualTo("{}");
    }

    @Test
    void theOneChoiceThatMustBeGivenIsAskedFor() {
        for (String text : List.of("{}", "{\"item\": null, \"answer\": \"GOOD\"}")) {
            assertThatThrownBy(() -> JSON.readValue(text, CheckEntry.class))
                    .hasMessageContaining("\"item\" is missing");
        }
    }

    @ParameterizedTest
    @MethodSource("types")
    void noEntryChangesAfterwards(Class<? extends Record> type) throws Exception {
        Record filled = EntryTypes.random(type, new Random(7));
        Object[] values = Arrays.stream(type.getRecordComponents())
                .map(component -> copy(Blank.get(filled, component), component))
                .toArray();
        Record entries = Blank.build(type, values);
        for (int i = 0; i < values.length; i++) {
            RecordComponent component = type.getRecordComponents()[i];
            Object before = values[i];
            if (before instanceof List<?> list) {
                int size = list.size();
                list.clear();
                List<?> kept = (List<?>) Blank.get(entries, component);
                assertThat(kept).as(component.toString()).hasSize(size).isNotEmpty();
                assertThatThrownBy(kept::clear).isInstanceOf(UnsupportedOperationException.class);
            } else if (before instanceof Map<?, ?> map) {
                map.clear();
                Map<?, ?> kept = (Map<?, ?>) Blank.get(entries, component);
                assertThat(kept).as(component.toString()).isNotEmpty();
                assertThatThrownBy(kept::clear).isInstanceOf(UnsupportedOperationException.class);
            }
        }
    }

    /** The same with at least one item, in a list or map that can be changed. */
    private static Object copy(Object value, RecordComponent component) {
        if (value instanceof List<?>) {
            Class<?> inner = EntryTypes.inner(component.getGenericType());
            return new ArrayList<>(List.of(
                    EntryTypes.isEntries(inner)
                            ? EntryTypes.random(inner.asSubclass(Record.class), new Random(1))
                            : Blank.value(inner)));
        }
        return value instanceof Map<?, ?> ? new LinkedHashMap<>(Map.of("long vane", EnteredQuantity.EMPTY)) : value;
    }

    @Test
    void leversKeepTheOrderOfTheFile() throws Exception {
        String text = "{\"levers\":{\"tilt\":\"1\",\"drop point\":\"5\",\"long vane\":\"9\",\"a\":\"2\"}}";
        SettingsEntries settings = JSON.readValue(text, SettingsEntries.class);
        assertThat(settings.levers().keySet()).containsExactly("tilt", "drop point", "long vane", "a");
        assertThat(JSON.writeValueAsString(settings)).isEqualTo(text);
    }

    @Test
    void itemsInAListKeepTheirPlacesAlsoWhenBlank() throws Exception {
        MatchEntries match =
                MatchEntries.EMPTY.withLibrary(List.of(TestedProductEntry.EMPTY, TestedProductEntry.EMPTY.withId("b")));
        assertThat(JSON.writeValueAsString(match)).isEqualTo("{\"library\":[{},{\"id\":\"b\"}]}");
        BucketEntry bucket =
                BucketEntry.EMPTY.withLeft(List.of(EnteredQuantity.EMPTY, EnteredQuantity.parse("15.4 kg")));
        assertThat(JSON.writeValueAsString(bucket)).isEqualTo("{\"left\":[\"\",\"15.4 kg\"]}");
    }

    @Test
    void aRandomSetupComesBackTheSame() throws Exception {
        SetupJson json = new SetupJson();
        Random random = new Random(20270318);
        for (int i = 0; i < 300; i++) {
            Setup setup = EntryTypes.random(Setup.class, random);
            String text = json.write(setup);
            assertThat(json.read(text, "random")).as(text).isEqualTo(setup);
        }
    }
}
