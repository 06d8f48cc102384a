package org.evenfall.result;

import java.util.Arrays;
import java.util.List;
import java.util.function.Predicate;
import org.evenfall.rate.NitrogenEfficiency;
import org.evenfall.setup.Assessment;
import org.evenfall.setup.path.RatePaths;

/** Each result that is a figure of a model or is held against a limit, with what it rests on. */
public enum ResultSource {
    /** Limit of the bags to sample. */
    SAMPLING(
            "/product/bagsToSample", "source.sampling", given -> given.product().bagsToSample() != null),
    /** The fitted sizes. */
    SIZES("/product/sieve", "source.sieveFit", given -> given.product().sieve() != null),
    /** Density of a granule. */
    PARTICLE("/product/particle", "source.packing", given -> given.product().particle() != null),
    /** The throw. */
    THROW("/product/flight", "source.flightModel", given -> given.product().flight() != null),
    /** What a difference in throw means. */
    VERDICT(
            "/match/verdict",
            "source.verdict",
            given -> given.match() != null && !given.match().ranked().isEmpty()),
    /** The widest tramlines that look reachable. */
    REACH(
            "/match/widestReachableM",
            "source.reach",
            given -> given.match() != null && given.match().widestReachableM() != null),
    /** How even a product lands by the landing model. */
    LANDING(
            "/match/pattern",
            "source.landingModel",
            given -> given.match() != null && given.match().pattern() != null),
    /** Limit of the wear of a vane. */
    VANES(
            "/yard/vanes",
            "source.vaneWear",
            given -> !given.machineCheck().vanes().isEmpty()),
    /** Limit of the difference between left and right. */
    LEVEL(
            "/yard/levelDifferenceM",
            "source.level",
            given -> given.machineCheck().levelDifferenceM() != null),
    /** Limit of the difference between the tyres. */
    TYRES(
            "/yard/tyreDifferenceBar",
            "source.tyres",
            given -> given.machineCheck().tyreDifferenceBar() != null),
    /** Limit of the PTO speed. */
    PTO("/yard/ptoRpm", "source.pto", given -> given.machineCheck().ptoRpm() != null),
    /** Limits of the height. */
    HEIGHT("/height", "source.height", given -> given.height() != null),
    /** What ten centimetres do to the throw. */
    TEN_CM(
            "/height/throwPer10CmM",
            "source.flightModel",
            given -> given.height() != null && given.height().throwPer10CmM() != null),
    /** Time and filling of a bucket. */
    BUCKET(
            "/rate/plan/bucketSeconds",
            "source.bucket",
            given -> given.rate().plan() != null && given.rate().plan().bucket().seconds() != null),
    /** Allowed deviation of the rate. */
    TOLERANCE(
            "/rate/bucketTests",
            "source.rateTolerance",
            given -> !given.rate().bucketTests().isEmpty()),
    /** Limit of the measured speed. */
    SPEED("/rate/speed", "source.speed", given -> given.rate().speed() != null),
    /** Density of the other product. */
    OTHER_DENSITY(
            "/rate/againstOther/otherDensityKgPerL",
            "source.nitrateDensity",
            given -> given.rate().againstOther() != null
                    && given.rate().againstOther().densityAssumed()),
    /** Nitrogen that counts. */
    EFFICIENCY("/rate/plan/parityPricePerT", "source.efficiency", ResultSource::isReduced),
    /** Where the trays are. */
    TRAY_PLACES("/trays/layout", "source.trayPlaces", given -> given.trays().layout() != null),
    /** Counting noise. */
    COUNTING_NOISE("/trays/plan", "source.countingNoise", given -> given.trays().plan() != null),
    /** The strip. */
    STRIP("/trays/strip", "source.stripLength", given -> given.trays().strip() != null),
    /** Limits of the wind. */
    WIND("/trays/tests/windMPerS", "source.wind", ResultSource::isTested),
    /** The field CV. */
    FIELD_CV("/trays/tests/evenness/fieldCvPercent", "source.fieldCv", ResultSource::isTested),
    /** The limits of the CV. */
    CV_LIMITS("/trays/tests/evenness/verdict", "source.cvLimits", ResultSource::isTested),
    /** What has changed since a test. */
    CONDITIONS("/trays/tests/proof", "source.conditions", ResultSource::isTested),
    /** What unevenness costs. */
    LOSS("/trays/loss", "source.cropLoss", given -> given.trays().loss() != null),
    /** The next move. */
    ADVICE("/trays/advice", "source.advice", given -> given.trays().advice() != null),
    /** One long pass. */
    LONG_PASS("/trays/line", "source.overlap", given -> given.trays().line() != null);

    private final String result;
    private final String source;
    /** Keeps nothing: a predicate of this class only. */
    @SuppressWarnings("ImmutableEnumChecker")
    private final Predicate<Assessment> there;

    ResultSource(String result, String source, Predicate<Assessment> there) {
        this.result = result;
        this.source = source;
        this.there = there;
    }

    /** Whether some of the nitrogen does not count, by a published share. */
    private static boolean isReduced(Assessment given) {
        NitrogenEfficiency share =
                RatePaths.NITROGEN_EFFICIENCY.get(given.read().setup());
        return share != NitrogenEfficiency.UNANSWERED && share != NitrogenEfficiency.COUNT_ALL;
    }

    private static boolean isTested(Assessment given) {
        return !given.trays().tests().isEmpty();
    }

    /** The results of an assessment that there are, in the order of the steps. */
    public static List<ResultSource> of(Assessment assessment) {
        return Arrays.stream(values()).filter(one -> one.there.test(assessment)).toList();
    }

    /** Where the result is in the published JSON: its pointer, without the numbers of items in lists. */
    public String result() {
        return result;
    }

    /** Bundle key of its source. */
    public String source() {
        return source;
    }
}
