package org.evenfall.command;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.util.Set;
import java.util.TreeSet;
import org.evenfall.granule.ProductForm;
import org.evenfall.granule.PublishedBands;
import org.evenfall.quantity.Interval;
import org.evenfall.rate.RatePlan;
import org.junit.jupiter.api.Test;

class IntervalKeysTest {

    private static final ObjectMapper MAPPER = PublishedNames.mapper();

    private static RatePlan plan(RatePlan.Bucket bucket) {
        return new RatePlan(
                new RatePlan.Amounts(80, 174, 64),
                new RatePlan.Logistics(null, null, null, null, null, null),
                new RatePlan.Flow(null, null, null, null),
                bucket,
                new RatePlan.Money(null, null, null, null));
    }

    @Test
    void bothEndsAreKeysOfTheHolder() {
        JsonNode json =
                MAPPER.valueToTree(plan(new RatePlan.Bucket(20.0, 16.0, new Interval(15.2, 16.8), null, null, null)));
        assertThat(json.path("bucketLowKg").doubleValue()).isEqualTo(15.2);
        assertThat(json.path("bucketHighKg").doubleValue()).isEqualTo(16.8);
    }

    @Test
    void anAsteriskAloneGivesLowAndHigh() {
        JsonNode json =
                MAPPER.valueToTree(PublishedBands.of(ProductForm.GRANULAR_UREA).get(0));
        assertThat(json.toString())
                .isEqualTo("{\"form\":\"GRANULAR_UREA\",\"quantity\":\"bulkDensityKgPerL\",\"low\":0.7,\"high\":0.78,"
                        + "\"sourceKey\":\"source.ureaDensity\"}");
    }

    @Test
    void anAbsentIntervalKeepsItsKeys() {
        JsonNode json = MAPPER.valueToTree(plan(new RatePlan.Bucket(null, null, null, null, null, null)));
        assertThat(json.has("bucketLowKg")).isTrue();
        assertThat(json.get("bucketHighKg").isNull()).isTrue();
    }

    /** The published keys of a rate plan; a key that is missing here breaks programs that read it. */
    @Test
    void theKeysOfARatePlan() {
        JsonNode json = MAPPER.valueToTree(plan(new RatePlan.Bucket(null, null, null, null, null, null)));
        Set<String> keys = new TreeSet<>();
        json.fieldNames().forEachRemaining(keys::add);
        assertThat(keys)
                .containsExactlyInAnyOrder(
                        "nitrogenKgPerHa",
                        "productKgPerHa",
                        "unitsPerAcre",
                        "speedKmPerH",
                        "areaHa",
                        "productTonnes",
                        "bags",
                        "bagsToOrder",
                        "hopperLoads",
                        "haPerBag",
                        "flowKgPerMin",
                        "flowPerOutletKgPerMin",
                        "bucketSeconds",
                        "bucketKg",
                        "bucketLowKg",
                        "bucketHighKg",
                        "bucketL",
                        "bucket30Kg",
                        "bucket30L",
                        "firstOpening",
                        "costPerKgN",
                        "otherCostPerKgN",
                        "parityPricePerT",
                        "saving");
    }
}
