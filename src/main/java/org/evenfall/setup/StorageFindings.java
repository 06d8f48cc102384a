package org.evenfall.setup;

import java.util.List;
import org.evenfall.finding.Finding;
import org.evenfall.finding.Step;
import org.evenfall.setup.path.ProductPaths;

/** Step 1: an opened bag of urea draws water from damp air. */
final class StorageFindings {

    private StorageFindings() {}

    /** One note of urea; none of another product. */
    static List<Finding> of(ReadSetup read) {
        return IdentityAssessor.isUrea(read)
                ? List.of(Finding.note(Step.PRODUCT, "product.openBag")
                        .at(ProductPaths.CONDITION.pointer())
                        .from("source.humidityUrea"))
                : List.of();
    }
}
