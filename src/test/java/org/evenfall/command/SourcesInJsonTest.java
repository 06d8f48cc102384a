package org.evenfall.command;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.StreamSupport;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The published results say where limits and figures of a model come from, in words. */
class SourcesInJsonTest {

    private static final int MOST_WORDS = 20;

    @TempDir
    private Path folder;

    private JsonNode assessed(String name) throws Exception {
        return new Commands(folder)
                .assess(new ObjectMapper().readTree(Files.readString(Path.of("demo", name + ".json"))));
    }

    private static List<String> sources(JsonNode json) {
        List<String> sources = new ArrayList<>();
        json.at("/findings")
                .forEach(finding -> sources.add(finding.at("/source").textValue()));
        json.at("/trays/advice/reasons")
                .forEach(finding -> sources.add(finding.at("/source").textValue()));
        json.at("/product/bands").forEach(band -> sources.add(band.at("/source").textValue()));
        json.at("/sources").forEach(source -> sources.add(source.textValue()));
        return sources.stream().filter(source -> !source.isEmpty()).toList();
    }

    @ParameterizedTest
    @ValueSource(strings = {"setup", "unfinished", "uneven"})
    void aSourceIsOneShortSentenceAndNoKey(String name) throws Exception {
        assertThat(sources(assessed(name)))
                .hasSizeGreaterThan(10)
                .noneMatch(source -> source.startsWith("source."))
                .allMatch(source -> source.split("[ \u00a0]+").length <= MOST_WORDS);
    }

    @Test
    void aPublishedBandHasItsKeyAndItsText() throws Exception {
        JsonNode band = assessed("setup").at("/product/bands/0");
        assertThat(band.at("/sourceKey").textValue()).isEqualTo("source.ureaDensity");
        assertThat(band.at("/source").textValue()).isEqualTo("farm press and extension services");
    }

    @ParameterizedTest
    @ValueSource(strings = {"setup", "unfinished", "uneven"})
    void everySourceIsThatOfAResult(String name) throws Exception {
        JsonNode json = assessed(name);
        json.at("/sources")
                .fieldNames()
                .forEachRemaining(result -> assertThat(
                                present(json, List.of(result.substring(1).split("/"))))
                        .as(result)
                        .isTrue());
    }

    /** Whether a path leads to a value; in an array any item will do. */
    private static boolean present(JsonNode node, List<String> path) {
        if (node.isArray()) {
            return StreamSupport.stream(node.spliterator(), false).anyMatch(item -> present(item, path));
        }
        return path.isEmpty()
                ? !node.isMissingNode() && !node.isNull()
                : present(node.path(path.get(0)), path.subList(1, path.size()));
    }

    @Test
    void matchHasItsOwn() {
        JsonNode sources = new Commands(folder)
                .run("match", Path.of("demo", "setup.json").toAbsolutePath().toString(), "--json")
                .json()
                .at("/sources");
        assertThat(sources.fieldNames())
                .toIterable()
                .containsExactly("/match/verdict", "/match/widestReachableM", "/match/pattern");
    }

    @Test
    void modelAndLimitsAreNamed() throws Exception {
        JsonNode sources = assessed("setup").at("/sources");
        assertThat(sources.path("/product/flight").textValue()).contains("Clift, Grace and Weber 1978", "assumptions");
        assertThat(sources.path("/match/widestReachableM").textValue()).contains("flight model", "ours");
        assertThat(sources.path("/height/throwPer10CmM").textValue())
                .isEqualTo(sources.path("/product/flight").textValue());
        assertThat(sources.path("/trays/plan").textValue()).contains("granules", "ours");
        assertThat(sources.path("/trays/tests/evenness/fieldCvPercent").textValue())
                .contains("simulated machines");
        assertThat(sources.path("/trays/tests/evenness/verdict").textValue()).contains("15 %", "RB209", "ours");
        assertThat(sources.path("/trays/tests/windMPerS").textValue()).contains("8 km/h", "15 km/h", "ours");
        assertThat(assessed("unfinished").at("/sources").has("/trays/tests/windMPerS"))
                .isFalse();
    }
}
