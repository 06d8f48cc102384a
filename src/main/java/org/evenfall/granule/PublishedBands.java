package org.evenfall.granule;

import java.util.ArrayList;
import java.util.List;
import org.evenfall.granule.PublishedBand.Quantity;
import org.evenfall.quantity.Interval;

/** Published ranges shown with the measured figures. Source: that of the bundle key given with each. */
public final class PublishedBands {

    private PublishedBands() {}

    /**
     * The published ranges of a product. The size band of the blenders is a target for the components of a blend: it is no
     * band for a straight product.
     *
     * @param form what the granules are
     * @param blend it was answered that the product is a blend
     */
    public static List<PublishedBand> of(ProductForm form, boolean blend) {
        List<PublishedBand> bands = new ArrayList<>(of(form));
        if (blend) {
            bands.add(band(form, Quantity.MEDIAN, 3.0, 3.5, "source.blendSize"));
            bands.add(band(form, Quantity.SPREAD_INDEX, 0, 18, "source.blendSize"));
        }
        return bands;
    }

    /** The published ranges of a straight product of a form; none for a form without one. */
    public static List<PublishedBand> of(ProductForm form) {
        return switch (form) {
            case GRANULAR_UREA ->
                List.of(
                        band(form, Quantity.BULK_DENSITY, 0.70, 0.78, "source.ureaDensity"),
                        band(form, Quantity.SHARE_2_TO_4_MM, 80, 100, "source.ureaSize"));
            case PRILLED_UREA -> List.of(band(form, Quantity.BULK_DENSITY, 0.70, 0.78, "source.ureaDensity"));
            case CALCIUM_AMMONIUM_NITRATE ->
                List.of(band(form, Quantity.BULK_DENSITY, 0.95, 1.05, "source.nitrateDensity"));
            case AMMONIUM_NITRATE, OTHER, UNANSWERED -> List.of();
        };
    }

    private static PublishedBand band(ProductForm form, Quantity quantity, double low, double high, String sourceKey) {
        return new PublishedBand(form, quantity, new Interval(low, high), sourceKey);
    }
}
