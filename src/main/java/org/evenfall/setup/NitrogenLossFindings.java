package org.evenfall.setup;

import java.util.List;
import org.evenfall.finding.Finding;
import org.evenfall.finding.Step;
import org.evenfall.setup.entry.YesNo;
import org.evenfall.setup.path.ProductPaths;

/**
 * Step 1: what raises and lowers the loss of nitrogen from urea on the surface, in three notes: good, poor, limed lately.
 * Ranges of published trials, which disagree; no forecast for a field.
 */
final class NitrogenLossFindings {

    private static final String AT = ProductPaths.TREATED.pointer();

    private NitrogenLossFindings() {}

    /** None unless it is urea and known whether it is treated; past its use-by date it counts as untreated. */
    static List<Finding> of(ReadSetup read) {
        YesNo treated = read.get(ProductPaths.TREATED);
        if (treated == YesNo.UNANSWERED || !IdentityAssessor.isUrea(read)) {
            return List.of();
        }
        Finding good = Finding.note(Step.PRODUCT, "product.lossGood").at(AT).from("source.lossRain");
        return treated == YesNo.YES && !IdentityAssessor.useByPassed(read)
                ? List.of(
                        good,
                        Finding.note(Step.PRODUCT, "product.lossPoorTreated")
                                .at(AT)
                                .from("source.lossTreated"),
                        Finding.note(Step.PRODUCT, "product.limedTreated")
                                .at(AT)
                                .from("source.lossLime"))
                : List.of(
                        good,
                        Finding.note(Step.PRODUCT, "product.lossPoor").at(AT).from("source.loss"),
                        Finding.note(Step.PRODUCT, "product.limed").at(AT).from("source.lossLime"));
    }
}
