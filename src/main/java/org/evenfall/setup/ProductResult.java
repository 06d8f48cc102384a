package org.evenfall.setup;

import java.util.List;
import org.evenfall.flight.Throw;
import org.evenfall.granule.BulkDensity;
import org.evenfall.granule.ParticleDensity;
import org.evenfall.granule.PublishedBand;
import org.evenfall.granule.SieveResult;
import org.evenfall.granule.SizeDistribution;
import org.jspecify.annotations.Nullable;

/**
 * Step 1 assessed.
 *
 * @param density null until one filling can be read
 * @param sieve null until one sample can be read
 * @param sizes sizes of the granules from the sieves, else from the median that the bag names; null without both
 * @param particle null without density
 * @param nitrogenPercent nitrogen share
 * @param flight throw by the model; null without density, size or disc
 * @param bands published ranges for its kind
 * @param bagsToSample how many bags should be sampled
 */
public record ProductResult(
        @Nullable BulkDensity density,
        @Nullable SieveResult sieve,
        @Nullable SizeDistribution sizes,
        @Nullable ParticleDensity particle,
        @Nullable Double nitrogenPercent,
        @Nullable Throw flight,
        List<PublishedBand> bands,
        @Nullable Integer bagsToSample) {

    /** Copies the list. */
    public ProductResult {
        bands = List.copyOf(bands);
    }
}
