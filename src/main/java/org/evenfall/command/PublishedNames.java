package org.evenfall.command;

import com.fasterxml.jackson.annotation.JsonProperty;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.json.JsonMapper;
import org.evenfall.granule.SizeDistribution;
import org.evenfall.trays.SpreadShape;

/**
 * Keys of the published JSON whose Java names have changed since. Result records are written by the names of their
 * components; a component that is renamed gets its published key here, so that programs that read the results go on
 * working.
 */
final class PublishedNames {

    private PublishedNames() {}

    /** A mapper that writes result records under their published keys. */
    static ObjectMapper mapper() {
        return JsonMapper.builder()
                .addMixIn(SizeDistribution.class, SizeDistributionKeys.class)
                .addMixIn(SpreadShape.class, SpreadShapeKeys.class)
                .build();
    }

    /** {@link SizeDistribution}. */
    private interface SizeDistributionKeys {
        @JsonProperty("lnSd")
        double sigma();

        @JsonProperty("lnSdError")
        double sigmaStandardError();
    }

    /** {@link SpreadShape}. */
    private interface SpreadShapeKeys {
        @JsonProperty("told")
        boolean significant();
    }
}
