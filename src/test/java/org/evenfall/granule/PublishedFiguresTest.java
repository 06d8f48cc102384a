package org.evenfall.granule;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

class PublishedFiguresTest {

    @ParameterizedTest
    @CsvFileSource(resources = "published.csv", numLinesToSkip = 1)
    void asPublished(String what, double a, Double b, Double c, double expected, double tolerance, String source)
            throws IOException {
        double found = switch (what) {
            case "interpolated" -> interpolated(a);
            case "sgn" -> SizeDistribution.exact(a, 1.2).sgn();
            case "flow" -> FlowScaling.kgPerMin(a, b, c, 9.81);
            case "granule" ->
                ParticleDensities.fromBulk(BulkDensities.of(List.of(a, a, a), 1, 0), ProductForm.GRANULAR_UREA)
                        .kgPerM3();
            default -> throw new IllegalArgumentException(what);
        };
        assertThat(found).as(source).isCloseTo(expected, within(tolerance + 1e-9));
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

    /** The bands as printed in the sources named in the bundle. */
    @Test
    void bandsOfGranularUreaAndOfTheDenseProduct() {
        assertThat(PublishedBands.of(ProductForm.GRANULAR_UREA))
                .extracting(PublishedBand::quantity)
                .containsExactly(PublishedBand.Quantity.values());
        assertThat(PublishedBands.of(ProductForm.PRILLED_UREA))
                .extracting(band -> band.range().low(), band -> band.range().high())
                .containsExactly(org.assertj.core.groups.Tuple.tuple(0.70, 0.78));
        assertThat(PublishedBands.of(ProductForm.CALCIUM_AMMONIUM_NITRATE))
                .extracting(band -> band.range().low(), band -> band.range().high())
                .containsExactly(org.assertj.core.groups.Tuple.tuple(0.95, 1.05));
        assertThat(PublishedBands.of(ProductForm.OTHER)).isEmpty();
    }
}
