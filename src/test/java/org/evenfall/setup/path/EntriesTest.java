package org.evenfall.setup.path;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.InputStream;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.lang.reflect.Type;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.ResourceBundle;
import java.util.Set;
import java.util.stream.Stream;
import org.evenfall.machine.RateSetting;
import org.evenfall.quantity.EnteredQuantity;
import org.evenfall.setup.entry.Setup;
import org.evenfall.store.SetupJson;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Walks all entry constants: a record component without one, or one with a wrong name, key or wither, fails here. */
class EntriesTest {

    /** Components that no person types: the revision is counted and knows the date before, the part that is checked is given, the guide keeps its own. */
    private static final Set<String> NOT_TYPED = Set.of(
            "/card/revision",
            "/card/previousDate",
            "/yard/checks/*/item",
            "/guide/skipped",
            "/guide/cautionsRead",
            "/guide/invented");

    private static final Setup BY_FACTOR =
            Setup.EMPTY.withMachine(Setup.EMPTY.machine().withRateSetting(RateSetting.FACTOR));

    private static final ResourceBundle WORDS = ResourceBundle.getBundle("org.evenfall.words", Locale.ROOT);

    @Test
    void everyComponentOfEveryRecordHasItsConstant() {
        Set<String> constants = new HashSet<>();
        Entries.ALL.forEach(entry -> constants.addAll(entry.patterns()));
        List<String> without = new ArrayList<>();
        components("", Setup.class, without);
        without.removeIf(pattern -> constants.contains(pattern) || NOT_TYPED.contains(pattern));
        assertThat(without).isEmpty();
    }

    private static void components(String at, Class<?> record, List<String> patterns) {
        for (RecordComponent component : record.getRecordComponents()) {
            String name =
                    record == Setup.class && component.getName().equals("machineCheck") ? "yard" : component.getName();
            String pattern = at + "/" + name;
            if (component.getType().getSimpleName().equals("UnknownKeys")) {
                continue;
            }
            if (component.getType().isRecord() && component.getType() != EnteredQuantity.class) {
                components(pattern, component.getType(), patterns);
                continue;
            }
            patterns.add(pattern);
            Class<?> item = item(component.getGenericType());
            if (item != null && item.isRecord() && item != EnteredQuantity.class) {
                components(pattern + "/*", item, patterns);
            }
        }
    }

    private static Class<?> item(Type type) {
        if (type instanceof ParameterizedType list
                && list.getRawType() instanceof Class<?> raw
                && Collection.class.isAssignableFrom(raw)) {
            return (Class<?>) list.getActualTypeArguments()[0];
        }
        return null;
    }

    static Stream<Entry<?, ?>> all() {
        return Entries.ALL.stream();
    }

    @ParameterizedTest
    @MethodSource("all")
    void hasItsTextsInTheBundle(Entry<?, ?> entry) {
        assertThat(WORDS.containsKey(entry.labelKey())).as(entry.labelKey()).isTrue();
        if (!entry.missingKey().isEmpty()) {
            assertThat(WORDS.containsKey(entry.missingKey()))
                    .as(entry.missingKey())
                    .isTrue();
        }
        if (entry instanceof Quantity<?> quantity) {
            String label = quantity.labelKey(BY_FACTOR);
            assertThat(WORDS.containsKey(label)).as(label).isTrue();
            assertThat(WORDS.containsKey(quantity.range(BY_FACTOR).nameKey())).isTrue();
        }
        if (entry instanceof Measured measured) {
            assertThat(WORDS.containsKey(measured.range(Setup.EMPTY).nameKey())).isTrue();
        }
    }

    /** Where the rate is set by a factor, what is an opening elsewhere is the factor. */
    @Test
    void anOpeningIsAFactorWhereTheRateIsSetByOne() {
        for (Quantity<?> entry : List.of(
                RatePaths.BUCKET_OPENING_LEFT,
                RatePaths.BUCKET_OPENING_RIGHT,
                TrayPaths.TEST_OPENING_LEFT,
                TrayPaths.TEST_OPENING_RIGHT)) {
            assertThat(entry.labelKey(Setup.EMPTY)).startsWith("rate.opening").isEqualTo(entry.labelKey());
            assertThat(entry.labelKey(BY_FACTOR)).isEqualTo("rate.factor");
            assertThat(entry.range(Setup.EMPTY).nameKey()).isEqualTo("field.opening");
            assertThat(entry.range(BY_FACTOR).nameKey()).isEqualTo("field.factor");
        }
        assertThat(RatePaths.BUCKET_TIME.labelKey(BY_FACTOR)).isEqualTo("rate.time");
    }

    @ParameterizedTest
    @MethodSource("all")
    void isInTheSchema(Entry<?, ?> entry) throws Exception {
        JsonNode schema;
        try (InputStream stream = Setup.class.getResourceAsStream("/org/evenfall/setup.schema.json")) {
            schema = new ObjectMapper().readTree(stream);
        }
        for (String pattern : entry.patterns()) {
            JsonNode at = schema;
            for (String name : pattern.substring(1).split("/")) {
                at = resolved(
                        schema,
                        name.equals("*")
                                ? at.path("items")
                                : at.path("properties").path(name));
                assertThat(at.isMissingNode()).as(pattern + " at " + name).isFalse();
            }
        }
    }

    private static JsonNode resolved(JsonNode schema, JsonNode node) {
        return node.has("$ref") ? schema.at(node.get("$ref").textValue().substring(1)) : node;
    }

    @Test
    void aTextOfEachComesBackFromItsOwnPlaceAlone() {
        Setup filled = FilledSetup.make();
        for (Entry<?, ?> entry : Entries.ALL) {
            if (entry instanceof Text<?> text) {
                text.places(filled).forEach(path -> changesOneText(filled, path));
            }
        }
    }

    private static void changesOneText(Setup filled, EntryPath<String> path) {
        Setup changed = path.set(filled, "typed here");
        assertThat(path.get(changed)).isEqualTo("typed here");
        assertThat(json(changed).at(path.pointer()).textValue())
                .as(path.pointer())
                .isEqualTo("typed here");
        assertThat(path.set(changed, path.get(filled)))
                .as("nothing else changed")
                .isEqualTo(filled);
    }

    static Stream<FilledSetup.Place> measured() {
        return FilledSetup.measured().stream();
    }

    @ParameterizedTest
    @MethodSource("measured")
    void aQuantityIsAtItsPointerInTheFile(FilledSetup.Place place) {
        Setup filled = FilledSetup.make();
        Setup changed = place.path().set(filled, EnteredQuantity.parse("12"));
        assertThat(place.path().get(changed).text()).isEqualTo("12");
        assertThat(json(changed).at(place.path().pointer()).asText()).isEqualTo("12");
        assertThat(place.path().set(changed, place.path().get(filled))).isEqualTo(filled);
    }

    @Test
    void everyChoiceKeepsEachOfItsWords() {
        Setup filled = FilledSetup.make();
        for (Entry<?, ?> entry : Entries.ALL) {
            if (entry instanceof Choice<?, ?> choice) {
                choices(filled, choice);
            }
        }
    }

    private static <R, E extends Enum<E>> void choices(Setup filled, Choice<R, E> choice) {
        assertThat(choice.answers()).as(choice.toString()).hasSizeGreaterThan(1);
        choice.places(filled).forEach(path -> {
            for (E word : choice.answers()) {
                assertThat(choice.isBlank(word)).isFalse();
                Setup changed = path.set(filled, word);
                assertThat(path.get(changed)).isEqualTo(word);
                assertThat(json(changed).at(path.pointer()).textValue()).isEqualTo(word.name());
            }
        });
    }

    @Test
    void anEntryOfAListHasNoPlaceOfItsOwn() {
        assertThatThrownBy(MachinePaths.LEVER_LABEL::path)
                .isInstanceOf(IllegalStateException.class)
                .hasMessageContaining("/machine/levers/*");
    }

    private static JsonNode json(Setup setup) {
        try {
            return new ObjectMapper().readTree(new SetupJson().write(setup));
        } catch (JsonProcessingException broken) {
            throw new IllegalStateException(broken);
        }
    }
}
