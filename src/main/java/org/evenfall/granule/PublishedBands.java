package org.evenfall.granule;

import java.util.List;

/** Published ranges shown beside the measured figures, each with the bundle key of its source. */
public final class PublishedBands {

    public static final String BULK_DENSITY = "bulkDensityKgPerL";
    public static final String SHARE_2_TO_4 = "share2To4MmPercent";
    public static final String SHARE_UNDER_2 = "shareUnder2MmPercent";
    public static final String MEDIAN = "d50Mm";
    public static final String SPREAD_INDEX = "spreadIndexPercent";

    private PublishedBands() {}

    public static List<PublishedBand> of(ProductForm form) {
        return switch (form) {
            case GRANULAR_UREA ->
                List.of(
                        new PublishedBand(form, BULK_DENSITY, 0.70, 0.78, "source.ureaDensity"),
                        new PublishedBand(form, SHARE_2_TO_4, 80, 100, "source.ureaSize"),
                        new PublishedBand(form, MEDIAN, 3.0, 3.5, "source.blendSize"),
                        new PublishedBand(form, SPREAD_INDEX, 0, 18, "source.blendSize"));
            case PRILLED_UREA -> List.of(new PublishedBand(form, BULK_DENSITY, 0.70, 0.78, "source.ureaDensity"));
            case CALCIUM_AMMONIUM_NITRATE ->
                List.of(new PublishedBand(form, BULK_DENSITY, 0.95, 1.05, "source.nitrateDensity"));
            case AMMONIUM_NITRATE, OTHER, UNANSWERED -> List.of();
        };
    }
}
