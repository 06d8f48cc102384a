package org.evenfall.command;

import com.fasterxml.jackson.annotation.JsonIgnore;
import com.fasterxml.jackson.annotation.JsonProperty;
import com.fasterxml.jackson.annotation.JsonUnwrapped;
import com.fasterxml.jackson.annotation.JsonValue;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.util.List;
import org.evenfall.flight.DrivingPattern;
import org.evenfall.quantity.Interval;
import org.evenfall.setup.SinglePassTest;
import org.evenfall.setup.TestConditions;
import org.evenfall.trays.CatchSummary;
import org.evenfall.trays.Contrast;
import org.evenfall.trays.CvEstimate;
import org.evenfall.trays.EvennessVerdict;
import org.evenfall.trays.FieldCv;
import org.evenfall.trays.LimitProbabilities;
import org.evenfall.trays.OverlapResult;
import org.evenfall.trays.RegionContrasts;
import org.evenfall.trays.ShapeFit;
import org.evenfall.trays.ShapeKind;
import org.evenfall.trays.SpreadShape;
import org.evenfall.trays.Tramlines;
import org.evenfall.trays.Uniformity;
import org.jspecify.annotations.Nullable;

/** Published keys of the results of tray tests, see {@link PublishedNames}. */
final class PublishedTrayNames {

    private PublishedTrayNames() {}

    /** Gives a mapper the published keys of tray tests. */
    static JsonMapper.Builder addTo(JsonMapper.Builder mapper) {
        return mapper.addMixIn(SpreadShape.class, SpreadShapeKeys.class)
                .addMixIn(ShapeKind.class, ShapeKindKeys.class)
                .addMixIn(Uniformity.class, UniformityKeys.class)
                .addMixIn(CatchSummary.class, CatchSummaryKeys.class)
                .addMixIn(CvEstimate.class, CvEstimateKeys.class)
                .addMixIn(FieldCv.class, FieldCvKeys.class)
                .addMixIn(TestConditions.class, TestConditionsKeys.class)
                .addMixIn(Tramlines.class, TramlinesKeys.class)
                .addMixIn(LimitProbabilities.class, LimitProbabilitiesKeys.class)
                .addMixIn(ShapeFit.class, ShapeFitKeys.class)
                .addMixIn(RegionContrasts.class, RegionContrastsKeys.class)
                .addMixIn(Contrast.class, ContrastKeys.class)
                .addMixIn(SinglePassTest.class, SinglePassTestKeys.class);
    }

    /** {@link SpreadShape}. */
    interface SpreadShapeKeys {
        @JsonProperty("name")
        ShapeKind kind();

        @JsonProperty("told")
        boolean significant();
    }

    /** {@link ShapeKind}. */
    interface ShapeKindKeys {
        @JsonValue
        String publishedName();
    }

    /** {@link Uniformity}: its parts are written as one flat object. */
    interface UniformityKeys {
        @JsonUnwrapped
        CatchSummary catches();

        @JsonUnwrapped
        CvEstimate cv();

        @JsonUnwrapped
        FieldCv field();

        @JsonProperty
        EvennessVerdict verdict();

        @JsonUnwrapped
        RegionContrasts contrasts();

        @JsonUnwrapped
        ShapeFit shapes();
    }

    /** {@link CatchSummary}. */
    interface CatchSummaryKeys {
        @JsonProperty
        int trays();

        @JsonProperty
        int lowestTray();

        @JsonProperty
        int highestTray();
    }

    /** {@link CvEstimate}. */
    interface CvEstimateKeys {
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

        @JsonUnwrapped
        LimitProbabilities probabilities();
    }

    /** {@link TestConditions}: width and driving pattern are written among the others. */
    interface TestConditionsKeys {
        @JsonUnwrapped
        Tramlines tramlines();
    }

    /** {@link Tramlines}. */
    interface TramlinesKeys {
        @JsonProperty("tramlineWidthM")
        double widthM();

        @JsonProperty("drivingPattern")
        DrivingPattern pattern();
    }

    /** {@link FieldCv}. */
    interface FieldCvKeys {
        @JsonProperty("fieldCvPercent")
        double medianPercent();

        @JsonIgnore
        Interval intervalPercent();

        @JsonProperty("fieldCvLowPercent")
        double lowPercent();

        @JsonProperty("fieldCvHighPercent")
        double highPercent();

        @JsonProperty("probabilityFieldCvAtMost15")
        double probabilityAtMost15();
    }

    /** {@link LimitProbabilities}. */
    interface LimitProbabilitiesKeys {
        @JsonProperty("probabilityAtMost10")
        double good();

        @JsonProperty("probabilityAtMost15")
        double acceptable();

        @JsonProperty("probabilityAtMost20")
        double adjust();
    }

    /** {@link ShapeFit}. */
    interface ShapeFitKeys {
        @JsonProperty("modes")
        List<SpreadShape> shapes();

        @JsonProperty("shapePercent")
        List<Double> significantPercent();
    }

    /** {@link RegionContrasts}: each contrast is written under its own name. */
    interface RegionContrastsKeys {
        @JsonUnwrapped(prefix = "leftRight")
        Contrast leftRight();

        @JsonUnwrapped(prefix = "centreOverlap")
        Contrast centreOverlap();

        @JsonUnwrapped(prefix = "quarterPoint")
        Contrast quarterPoint();
    }

    /** {@link Contrast}: the name of the contrast comes before. */
    interface ContrastKeys {
        @JsonProperty("Percent")
        double percent();

        @JsonProperty("NoisePercent")
        double noisePercent();
    }

    /** {@link SinglePassTest}. */
    interface SinglePassTestKeys {
        @JsonProperty("laid")
        OverlapResult overlap();
    }
}
