package org.evenfall.command;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.List;
import org.evenfall.flight.DrivingPattern;
import org.evenfall.trays.TrayCatches;
import org.evenfall.trays.TrayLayouts;
import org.evenfall.trays.Uniformity;
import org.evenfall.trays.UniformityCalculator;
import org.junit.jupiter.api.Test;

/** The published JSON of a tray test is one flat object under its published keys, however the record is grouped. */
class UniformityKeysTest {

    private static final Uniformity TEST = UniformityCalculator.of(new TrayCatches(
            TrayLayouts.of(28, 7, 0.25, DrivingPattern.BACK_AND_FORTH).positionsM(),
            List.of(8.0, 7.0, 12.0, 13.0, 14.0, 9.0, 7.5),
            28,
            DrivingPattern.BACK_AND_FORTH,
            0.25,
            3,
            0.028,
            0.1));

    private static final JsonNode JSON = PublishedNames.mapper().valueToTree(TEST);

    private static List<String> keys(JsonNode node) {
        List<String> keys = new ArrayList<>();
        node.fieldNames().forEachRemaining(keys::add);
        return keys;
    }

    @Test
    void theKeysStay() {
        assertThat(keys(JSON))
                .containsExactlyInAnyOrder(
                        "meanG",
                        "relativePercent",
                        "positionsM",
                        "cvPercent",
                        "noisePercent",
                        "machineCvPercent",
                        "cvLowPercent",
                        "cvHighPercent",
                        "lowestTray",
                        "highestTray",
                        "leftRightPercent",
                        "centreOverlapPercent",
                        "quarterPointPercent",
                        "leftRightNoisePercent",
                        "centreOverlapNoisePercent",
                        "quarterPointNoisePercent",
                        "modes",
                        "verdict",
                        "fieldCvPercent",
                        "fieldCvLowPercent",
                        "fieldCvHighPercent",
                        "probabilityFieldCvAtMost15",
                        "probabilityAtMost10",
                        "probabilityAtMost15",
                        "probabilityAtMost20",
                        "shapePercent",
                        "weightedMeanG",
                        "meanRateKgPerHa",
                        "trays");
        assertThat(keys(JSON.get("modes").get(0)))
                .containsExactlyInAnyOrder("name", "amplitudePercent", "noisePercent", "told");
    }

    @Test
    void theValuesAreUnderTheirKeys() {
        assertThat(JSON.get("cvPercent").doubleValue()).isEqualTo(TEST.cv().percent());
        assertThat(JSON.get("cvLowPercent").doubleValue())
                .isEqualTo(TEST.cv().intervalPercent().low());
        assertThat(JSON.get("cvHighPercent").doubleValue())
                .isEqualTo(TEST.cv().intervalPercent().high());
        assertThat(JSON.get("probabilityAtMost10").doubleValue())
                .isEqualTo(TEST.cv().probabilities().good());
        assertThat(JSON.get("probabilityAtMost15").doubleValue())
                .isEqualTo(TEST.cv().probabilities().acceptable());
        assertThat(JSON.get("probabilityAtMost20").doubleValue())
                .isEqualTo(TEST.cv().probabilities().adjust());
        assertThat(JSON.get("fieldCvPercent").doubleValue())
                .isEqualTo(TEST.field().medianPercent());
        assertThat(JSON.get("fieldCvLowPercent").doubleValue())
                .isEqualTo(TEST.field().intervalPercent().low());
        assertThat(JSON.get("fieldCvHighPercent").doubleValue())
                .isEqualTo(TEST.field().intervalPercent().high());
        assertThat(JSON.get("probabilityFieldCvAtMost15").doubleValue())
                .isEqualTo(TEST.field().probabilityAtMost15());
        assertThat(JSON.get("verdict").textValue()).isEqualTo(TEST.verdict().name());
        assertThat(JSON.get("modes").get(0).get("name").textValue()).isEqualTo("centre-overlap");
        assertThat(JSON.get("leftRightPercent").doubleValue())
                .isEqualTo(TEST.contrasts().leftRight().percent());
        assertThat(JSON.get("centreOverlapNoisePercent").doubleValue())
                .isEqualTo(TEST.contrasts().centreOverlap().noisePercent());
        assertThat(JSON.get("quarterPointNoisePercent").doubleValue())
                .isEqualTo(TEST.contrasts().quarterPoint().noisePercent());
        assertThat(JSON.get("lowestTray").intValue()).isEqualTo(1);
        assertThat(JSON.get("highestTray").intValue()).isEqualTo(4);
        assertThat(JSON.get("trays").intValue()).isEqualTo(7);
    }
}
