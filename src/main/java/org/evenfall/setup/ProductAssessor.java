package org.evenfall.setup;

import java.util.ArrayList;
import java.util.List;
import org.evenfall.finding.Arg;
import org.evenfall.finding.Finding;
import org.evenfall.finding.Step;
import org.evenfall.flight.Throw;
import org.evenfall.flight.ThrowModel;
import org.evenfall.granule.BulkDensity;
import org.evenfall.granule.ParticleDensities;
import org.evenfall.granule.ParticleDensity;
import org.evenfall.granule.ProductForm;
import org.evenfall.granule.PublishedBands;
import org.evenfall.granule.Sampling;
import org.evenfall.granule.SieveResult;
import org.evenfall.granule.SizeDistribution;
import org.evenfall.machine.MachineProfile;
import org.evenfall.quantity.Unit;
import org.evenfall.setup.entry.YesNo;
import org.evenfall.setup.path.ProductPaths;
import org.jspecify.annotations.Nullable;

/** Step 1: the product. */
final class ProductAssessor {

    private ProductAssessor() {}

    static Assessed<ProductResult> assess(ReadSetup read, MachineProfile machine) {
        List<Finding> findings = new ArrayList<>(IdentityAssessor.assess(read));
        Integer bagsToSample = sampling(read, findings);
        Assessed<BulkDensity> density = DensityAssessor.assess(read);
        findings.addAll(density.findings());
        Assessed<SieveResult> sieve = SieveAssessor.assess(read);
        findings.addAll(sieve.findings());
        ProductForm form = read.get(ProductPaths.FORM);
        ParticleDensity particle = density.result() == null ? null : ParticleDensities.fromBulk(density.result(), form);
        SizeDistribution sizes = sizes(read, sieve.result());
        if (particle != null) {
            packing(particle, findings);
        }
        return new Assessed<>(
                new ProductResult(
                        density.result(),
                        sieve.result(),
                        sizes,
                        particle,
                        read.number(ProductPaths.NITROGEN),
                        flight(particle, sizes, MachineDefaults.of(machine)),
                        PublishedBands.of(form, read.get(ProductPaths.BLEND) == YesNo.YES),
                        bagsToSample),
                findings);
    }

    /** Reports a bulk density that no heap of this form has; one cause, one finding. */
    private static void packing(ParticleDensity particle, List<Finding> findings) {
        String at = ProductPaths.CONTAINER_FULL.pointer();
        if (particle.denserThanSolid()) {
            findings.add(Finding.warn(
                            Step.PRODUCT,
                            "product.denserThanSolid",
                            Arg.number(particle.uncappedKgPerM3(), 0, Unit.KG_PER_M3),
                            Arg.number(ParticleDensities.SOLID_UREA_KG_PER_M3, 0, Unit.KG_PER_M3))
                    .at(at)
                    .from("source.solidUrea"));
        } else if (!particle.plausible()) {
            findings.add(
                    Finding.warn(Step.PRODUCT, "product.packing", Arg.number(particle.packingShare(), 2, Unit.NONE))
                            .at(at)
                            .from("source.packing"));
        }
    }

    /** What is sieved counts more than what the bag says. */
    private static @Nullable SizeDistribution sizes(ReadSetup read, @Nullable SieveResult sieve) {
        Double named = read.number(ProductPaths.MEDIAN_SIZE);
        if (sieve != null) {
            return sieve.distribution();
        }
        return named == null ? null : SizeDistribution.medianOnly(named);
    }

    private static @Nullable Throw flight(
            @Nullable ParticleDensity particle, @Nullable SizeDistribution sizes, MachineDefaults machine) {
        return particle == null || sizes == null
                ? null
                : ThrowModel.of(machine.throwOf(sizes, particle.kgPerM3()), particle.standardErrorKgPerM3());
    }

    /** How many bags should be sampled; null while the number delivered is not known. */
    private static @Nullable Integer sampling(ReadSetup read, List<Finding> findings) {
        Double delivered = read.number(ProductPaths.BAGS_DELIVERED);
        Double sampled = read.number(ProductPaths.BAGS_SAMPLED);
        if (delivered == null) {
            return null;
        }
        int wanted = Sampling.bags((int) Math.ceil(delivered));
        String at = ProductPaths.BAGS_SAMPLED.pointer();
        if (sampled != null && sampled > delivered) {
            findings.add(Finding.stop(Step.PRODUCT, "product.moreSampledThanDelivered")
                    .at(at));
        } else if (sampled != null && sampled < wanted) {
            findings.add(Finding.note(
                            Step.PRODUCT, "product.fewBags", Arg.count(wanted), Arg.number(delivered, 0, Unit.NONE))
                    .from("source.sampling")
                    .at(at));
        }
        return wanted;
    }
}
