package org.evenfall.reference;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import org.evenfall.flight.ThrowAssumptions;
import org.evenfall.flight.ThrowModel;
import org.evenfall.granule.Packing;
import org.evenfall.granule.ProductForm;
import org.evenfall.granule.SizeDistribution;

/**
 * Made-up libraries of products and new products to be matched, with their truth: half of the new products are one of the
 * library measured again, half are like one of it. Simulated, not measured.
 */
final class VirtualLibraries {

    static final int PRODUCTS = 12;

    /** Forms, each as often as it is listed. */
    private static final ProductForm[] FORMS = {
        ProductForm.GRANULAR_UREA,
        ProductForm.GRANULAR_UREA,
        ProductForm.GRANULAR_UREA,
        ProductForm.PRILLED_UREA,
        ProductForm.CALCIUM_AMMONIUM_NITRATE,
        ProductForm.CALCIUM_AMMONIUM_NITRATE,
        ProductForm.AMMONIUM_NITRATE,
        ProductForm.OTHER,
        ProductForm.OTHER,
        ProductForm.OTHER
    };

    static final double WIDTH_M = 28;

    /** Between two products of one form that pack alike, standard deviation of the logarithm. */
    private static final double PACKING_ERROR = 0.015;

    private static final double SIGMA_ERROR = 0.015;

    /** What a library tells of a reference. */
    enum Known {
        SIEVED,
        MEDIAN,
        DENSITY
    }

    /** A product as it is. */
    record Truth(ProductForm form, double bulkKgPerL, double packing, double d50Mm, double sigma) {

        private static final double[] SHARES =
                IntStream.range(0, 19).mapToDouble(i -> 0.05 + 0.05 * i).toArray();

        double kgPerM3() {
            return 1000 * bulkKgPerL / packing;
        }

        /** Where equal shares of its mass land, m. */
        double[] landings(ThrowAssumptions assumed) {
            SizeDistribution sizes = SizeDistribution.exact(d50Mm, Math.exp(sigma));
            double[] metres = new double[SHARES.length];
            for (int i = 0; i < metres.length; i++) {
                metres[i] = ThrowModel.distanceM(sizes.quantileMm(SHARES[i]), kgPerM3(), SPEED_M_PER_S, 0.75, assumed);
            }
            return metres;
        }

        /** The granule that 84 % are finer than, m. */
        double edgeM(ThrowAssumptions assumed) {
            return ThrowModel.distanceM(
                    d50Mm * Math.exp(ThrowLine.EDGE_Z * sigma), kgPerM3(), SPEED_M_PER_S, 0.75, assumed);
        }
    }

    static final double SPEED_M_PER_S = ThrowModel.outletSpeedMPerS(0.40, 850);

    /** A query: what was measured, the library, and which of it truly lands closest. */
    record Query(
            Truth truth,
            Candidate candidate,
            List<TestedProduct> library,
            List<Known> known,
            int closest,
            boolean same,
            List<Truth> truths) {}

    private final Random random;
    private final ThrowAssumptions assumed;
    private final double bulkError;
    private final double d50Error;

    VirtualLibraries(long seed, ThrowAssumptions assumed, double bulkError, double d50Error) {
        this.random = new Random(seed);
        this.assumed = assumed;
        this.bulkError = bulkError;
        this.d50Error = d50Error;
    }

    Query query() {
        List<Truth> truths = new ArrayList<>();
        List<TestedProduct> library = new ArrayList<>();
        List<Known> known = new ArrayList<>();
        for (int i = 0; i < PRODUCTS; i++) {
            Truth truth = product();
            double draw = random.nextDouble();
            Known what = draw < 0.68 ? Known.SIEVED : draw < 0.84 ? Known.MEDIAN : Known.DENSITY;
            truths.add(truth);
            known.add(what);
            library.add(tested(i, truth, what));
        }
        boolean same = random.nextBoolean();
        int like = random.nextInt(PRODUCTS);
        Truth truth = same ? truths.get(like) : neighbour(truths.get(like));
        int closest = same ? like : closest(truth, truths);
        Candidate candidate = new Candidate(
                truth.form(),
                truth.bulkKgPerL() * Math.exp(bulkError * random.nextGaussian()),
                bulkError * truth.bulkKgPerL(),
                sizes(truth));
        return new Query(truth, candidate, library, known, closest, same, truths);
    }

    private Truth product() {
        ProductForm form = FORMS[random.nextInt(FORMS.length)];
        double bulk = switch (form) {
            case GRANULAR_UREA, PRILLED_UREA -> 0.745 * Math.exp(0.03 * random.nextGaussian());
            case CALCIUM_AMMONIUM_NITRATE -> Math.exp(0.03 * random.nextGaussian());
            case AMMONIUM_NITRATE -> 0.94 * Math.exp(0.04 * random.nextGaussian());
            case OTHER, UNANSWERED -> 0.80 + 0.35 * random.nextDouble();
        };
        return new Truth(
                form,
                bulk,
                Packing.of(form).share() * Math.exp(PACKING_ERROR * random.nextGaussian()),
                (form == ProductForm.PRILLED_UREA ? 2.0 : 3.2) * Math.exp(0.14 * random.nextGaussian()),
                0.12 + 0.16 * random.nextDouble());
    }

    private Truth neighbour(Truth like) {
        return new Truth(
                like.form(),
                like.bulkKgPerL() * Math.exp(0.03 * random.nextGaussian()),
                like.packing() * Math.exp(PACKING_ERROR * random.nextGaussian()),
                like.d50Mm() * Math.exp(0.06 * random.nextGaussian()),
                Math.max(0.08, like.sigma() + 0.03 * random.nextGaussian()));
    }

    private int closest(Truth truth, List<Truth> truths) {
        double[] own = truth.landings(assumed);
        int closest = 0;
        double least = Double.POSITIVE_INFINITY;
        for (int i = 0; i < truths.size(); i++) {
            double distance = LandingEstimate.distanceM(own, truths.get(i).landings(assumed));
            if (distance < least) {
                least = distance;
                closest = i;
            }
        }
        return closest;
    }

    private TestedProduct tested(int index, Truth truth, Known known) {
        String id = "p" + index;
        return new TestedProduct(
                id,
                id,
                truth.form(),
                WIDTH_M,
                known == Known.MEDIAN ? null : truth.bulkKgPerL() * Math.exp(bulkError * random.nextGaussian()),
                known == Known.DENSITY
                        ? null
                        : known == Known.MEDIAN
                                ? SizeDistribution.medianOnly(
                                        truth.d50Mm() * Math.exp(d50Error * random.nextGaussian()))
                                : sizes(truth));
    }

    private SizeDistribution sizes(Truth truth) {
        return new SizeDistribution(
                truth.d50Mm() * Math.exp(d50Error * random.nextGaussian()),
                Math.exp(Math.max(0.02, truth.sigma() + SIGMA_ERROR * random.nextGaussian())),
                d50Error,
                SIGMA_ERROR,
                false);
    }
}
