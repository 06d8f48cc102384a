package org.evenfall.granule;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;
import org.evenfall.quantity.Interval;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class PublishedFiguresTest {

    /** The sieve set of the European Fertiliser Blenders Association, finest first, and shares of an invented product, %. */
    private static final SieveResult BLENDERS = Sieves.analyse(
            List.of(1.0, 2.5, 2.8, 3.15, 3.55, 4.0, 5.0), List.of(List.of(0.0, 5.0, 10.0, 25.0, 35.0, 20.0, 5.0, 0.0)));

    @ParameterizedTest
    @CsvFileSource(resources = "published.csv", numLinesToSkip = 1)
    void asPublished(String what, Double a, Double b, Double c, double expected, double tolerance, String source)
            throws IOException {
        double found = switch (what) {
            case "interpolated" -> interpolated(a);
            case "sgn" -> SizeDistribution.sgn(a);
            case "blenders.diameter" -> blendersDiameter(a);
            case "blenders.spreadIndex" -> BLENDERS.indices().spreadIndexPercent();
            case "blenders.sgn" -> BLENDERS.indices().sgn();
            case "blenders.uniformity" -> BLENDERS.indices().uniformityIndex();
            case "fit.spreadIndex" -> SizeDistribution.exact(3, 1.2).spreadIndexPercent();
            case "fit.uniformity" -> SizeDistribution.exact(3, 1.2).uniformityIndex();
            default -> throw new IllegalArgumentException(what);
        };
        assertThat(found).as(source).isCloseTo(expected, within(tolerance + 1e-9));
    }

    /** The three diameters of the result by it, the two of the uniformity index by the linear reading itself. */
    private static double blendersDiameter(double percent) {
        return switch ((int) percent) {
            case 16 -> BLENDERS.d16Mm();
            case 50 -> BLENDERS.d50Mm();
            case 84 -> BLENDERS.d84Mm();
            default ->
                SieveInterpolation.linearDiameterMm(
                                new double[] {1, 2.5, 2.8, 3.15, 3.55, 4, 5},
                                new double[] {0, 5, 15, 40, 75, 95, 100},
                                percent)
                        .orElseThrow();
        };
    }

    /** Every figure of that set is read on its curve. */
    @Test
    void theBlendersSetIsReadOnTheCurve() {
        SieveReading curve = SieveReading.CURVE;
        assertThat(BLENDERS.readFrom())
                .isEqualTo(new SieveResult.ReadFrom(curve, curve, curve, curve, curve, curve, curve));
        assertThat(BLENDERS.shareUnder2MmPercent()).isCloseTo(10.0 / 3, within(1e-9));
        assertThat(BLENDERS.share2To4MmPercent()).isCloseTo(95 - 10.0 / 3, within(1e-9));
    }

    /** Two more readings of the published passing curve, computed apart. */
    @ParameterizedTest
    @CsvSource({"10, 0.1114", "60, 0.6492"})
    void readingsOfThePublishedCurveComputedApart(double percent, double expectedMm) throws IOException {
        assertThat(interpolated(percent)).isCloseTo(expectedMm, within(0.0001));
    }

    private static double interpolated(double percent) throws IOException {
        List<CSVRecord> rows = passing();
        double[] apertures = rows.stream()
                .mapToDouble(row -> Double.parseDouble(row.get("apertureMm")))
                .toArray();
        double[] passing = rows.stream()
                .mapToDouble(row -> Double.parseDouble(row.get("passingPercent")))
                .toArray();
        return SieveInterpolation.diameterMm(apertures, passing, percent).orElseThrow();
    }

    private static List<CSVRecord> passing() throws IOException {
        try (InputStreamReader file = new InputStreamReader(
                PublishedFiguresTest.class.getResourceAsStream("passing.csv"), StandardCharsets.UTF_8)) {
            return CSVFormat.DEFAULT
                    .builder()
                    .setHeader()
                    .setSkipHeaderRecord(true)
                    .get()
                    .parse(file)
                    .getRecords();
        }
    }

    /** Every published range has a source and two ends. */
    @Test
    void bandsHaveSources() {
        for (ProductForm form : ProductForm.values()) {
            for (PublishedBand band : PublishedBands.of(form)) {
                assertThat(band.range().width()).isPositive();
                assertThat(band.sourceKey()).startsWith("source.");
                assertThat(band.form()).isEqualTo(form);
            }
        }
    }

    /** Source: farm press and extension services: granular urea 0.70–0.78 kg/L, the dense product about 1.0. Ours: ± 0.05. */
    @Test
    void bandsOfGranularUreaAndOfTheDenseProduct() {
        assertThat(PublishedBands.of(ProductForm.GRANULAR_UREA))
                .extracting(PublishedBand::quantity)
                .containsExactly(PublishedBand.Quantity.BULK_DENSITY, PublishedBand.Quantity.SHARE_2_TO_4_MM);
        assertThat(PublishedBands.of(ProductForm.PRILLED_UREA))
                .extracting(band -> band.range().low(), band -> band.range().high())
                .containsExactly(org.assertj.core.groups.Tuple.tuple(0.70, 0.78));
        assertThat(PublishedBands.of(ProductForm.CALCIUM_AMMONIUM_NITRATE))
                .extracting(band -> band.range().low(), band -> band.range().high())
                .containsExactly(org.assertj.core.groups.Tuple.tuple(0.95, 1.05));
        assertThat(PublishedBands.of(ProductForm.OTHER)).isEmpty();
    }

    /**
     * Source: European Fertiliser Blenders Association: median 3.25 ± 0.25 mm, spread index below 18. A target for the
     * components of a blend, shown for blends only.
     */
    @ParameterizedTest
    @EnumSource(ProductForm.class)
    void theBandOfBlendComponentsIsForBlends(ProductForm form) {
        assertThat(PublishedBands.of(form, false)).isEqualTo(PublishedBands.of(form));
        assertThat(PublishedBands.of(form)).extracting(PublishedBand::sourceKey).doesNotContain("source.blendSize");
        List<PublishedBand> blend = PublishedBands.of(form, true);
        assertThat(blend).containsAll(PublishedBands.of(form));
        assertThat(blend.subList(blend.size() - 2, blend.size()))
                .containsExactly(
                        new PublishedBand(
                                form, PublishedBand.Quantity.MEDIAN, new Interval(3.0, 3.5), "source.blendSize"),
                        new PublishedBand(
                                form, PublishedBand.Quantity.SPREAD_INDEX, new Interval(0, 18), "source.blendSize"));
    }
}
