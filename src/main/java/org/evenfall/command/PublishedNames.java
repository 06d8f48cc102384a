package org.evenfall.command;

import com.fasterxml.jackson.annotation.JsonIgnore;
import com.fasterxml.jackson.annotation.JsonProperty;
import com.fasterxml.jackson.annotation.JsonUnwrapped;
import com.fasterxml.jackson.annotation.JsonValue;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.util.List;
import org.evenfall.granule.SizeDistribution;
import org.evenfall.quantity.Interval;
import org.evenfall.trays.CatchSummary;
import org.evenfall.trays.CvEstimate;
import org.evenfall.trays.EvennessVerdict;
import org.evenfall.trays.LimitProbabilities;
import org.evenfall.trays.RegionContrasts;
import org.evenfall.trays.ShapeFit;
import org.evenfall.trays.ShapeKind;
import org.evenfall.trays.SpreadShape;
import org.evenfall.trays.Uniformity;
import org.jspecify.annotations.Nullable;

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
                .addMixIn(ShapeKind.class, ShapeKindKeys.class)
                .addMixIn(Uniformity.class, UniformityKeys.class)
                .addMixIn(CatchSummary.class, CatchSummaryKeys.class)
                .addMixIn(CvEstimate.class, CvEstimateKeys.class)
                .addMixIn(LimitProbabilities.class, LimitProbabilitiesKeys.class)
                .addMixIn(ShapeFit.class, ShapeFitKeys.class)
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
        @JsonProperty("name")
        ShapeKind kind();

        @JsonProperty("told")
        boolean significant();
    }

    /** {@link ShapeKind}. */
    private interface ShapeKindKeys {
        @JsonValue
        String publishedName();
    }

    /** {@link Uniformity}: its parts are written as one flat object. */
    @SuppressWarnings("UnusedMethod") // read by Jackson
    private interface UniformityKeys {
        @JsonUnwrapped
        CatchSummary catches();

        @JsonUnwrapped
        CvEstimate cv();

        @JsonUnwrapped
        RegionContrasts contrasts();

        @JsonUnwrapped
        ShapeFit shapes();
    }

    /** {@link CatchSummary}. */
    private interface CatchSummaryKeys {
        @JsonProperty
        int trays();

        @JsonProperty
        int lowestTray();

        @JsonProperty
        int highestTray();
    }

    /** {@link CvEstimate}. */
    @SuppressWarnings("UnusedMethod") // read by Jackson
    private interface CvEstimateKeys {
        @JsonProperty("cvPercent")
        double percent();

        @JsonIgnore
        Interval intervalPercent();

        @JsonProperty("cvLowPercent")
        double lowPercent();

        @JsonProperty("cvHighPercent")
        double highPercent();

        @JsonProperty("machineCvPercent")
        @Nullable
        Double machinePercent();

        @JsonProperty
        EvennessVerdict verdict();

        @JsonUnwrapped
        LimitProbabilities probabilities();
    }

    /** {@link LimitProbabilities}. */
    private interface LimitProbabilitiesKeys {
        @JsonProperty("probabilityAtMost10")
        double good();

        @JsonProperty("probabilityAtMost15")
        double acceptable();

        @JsonProperty("probabilityAtMost20")
        double adjust();
    }

    /** {@link ShapeFit}. */
    private interface ShapeFitKeys {
        @JsonProperty("modes")
        List<SpreadShape> shapes();

        @JsonProperty("shapePercent")
        List<Double> significantPercent();
    }
}
