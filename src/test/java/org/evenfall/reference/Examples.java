package org.evenfall.reference;

import org.evenfall.granule.ProductForm;
import org.evenfall.granule.SizeDistribution;

/** Products and a field made up for the tests of this room. */
final class Examples {

    static final RankContext FIELD = RankContext.of(28, 0.40, 850.0, null, 0.75, "");

    private Examples() {}

    static SizeDistribution sizes(double d50Mm) {
        return new SizeDistribution(d50Mm, 1.2, 0.015, 0.01, false);
    }

    /** Granular urea; standard error of the bulk density 0.02 kg/L. */
    static Candidate urea(double kgPerL, double d50Mm) {
        return new Candidate(ProductForm.GRANULAR_UREA, kgPerL, 0.02, sizes(d50Mm));
    }

    static TestedProduct tested(double widthM, double kgPerL, double d50Mm) {
        return new TestedProduct("a", "a", ProductForm.GRANULAR_UREA, widthM, kgPerL, sizes(d50Mm));
    }
}
