package org.evenfall.setup;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.evenfall.finding.Arg;
import org.evenfall.finding.Finding;
import org.evenfall.finding.Step;
import org.evenfall.granule.ProductForm;
import org.evenfall.setup.entry.Condition;
import org.evenfall.setup.entry.YesNo;
import org.evenfall.setup.path.CardPaths;
import org.evenfall.setup.path.Limits;
import org.evenfall.setup.path.ProductPaths;

/** Step 1: which product it is, its condition, its nitrogen content, what was in the machine before it. */
final class IdentityAssessor {

    /**
     * Nitrogen content of urea and of urea with sulphur, %.
     *
     * <p>Source (from memory): 46.6 % by the formula of urea; urea with sulphur from 38 %.
     */
    private static final Limits UREA_NITROGEN_PERCENT = new Limits(38, 46.7);

    private final ReadSetup read;
    private final List<Finding> findings = new ArrayList<>();

    private IdentityAssessor(ReadSetup read) {
        this.read = read;
    }

    static List<Finding> assess(ReadSetup read) {
        IdentityAssessor assessor = new IdentityAssessor(read);
        assessor.condition();
        assessor.inhibitor();
        assessor.nitrogen();
        return assessor.findings;
    }

    private void condition() {
        Condition condition = read.get(ProductPaths.CONDITION);
        String at = ProductPaths.CONDITION.pointer();
        if (condition == Condition.CAKED) {
            findings.add(Finding.stop(Step.PRODUCT, "product.caked")
                    .from("source.practice")
                    .at(at));
        }
        if (condition == Condition.SLIGHTLY_DAMP) {
            findings.add(Finding.warn(Step.PRODUCT, "product.damp")
                    .from("source.practice")
                    .at(at));
        }
        if (read.get(ProductPaths.BLEND) == YesNo.YES) {
            findings.add(Finding.warn(Step.PRODUCT, "product.blend")
                    .from("source.practice")
                    .at(ProductPaths.BLEND.pointer()));
        }
        if (read.get(ProductPaths.NITRATE_BEFORE) == YesNo.YES && read.get(ProductPaths.CLEAN_AND_DRY) != YesNo.YES) {
            findings.add(Finding.stop(Step.PRODUCT, "product.notClean")
                    .at(ProductPaths.CLEAN_AND_DRY.pointer())
                    .from("source.humidity"));
        }
    }

    private void inhibitor() {
        YesNo treated = read.get(ProductPaths.TREATED);
        if (isUrea(read) && treated == YesNo.NO) {
            findings.add(Finding.warn(Step.PRODUCT, "product.untreated").at(ProductPaths.TREATED.pointer()));
        }
        if (treated != YesNo.YES) {
            return;
        }
        String at = ProductPaths.USE_BY.pointer();
        if (read.isBlank(ProductPaths.USE_BY)) {
            findings.add(Finding.note(Step.PRODUCT, "product.useByOpen").at(at));
        }
        LocalDate limit = read.date(ProductPaths.USE_BY);
        LocalDate date = read.date(CardPaths.DATE);
        if (limit != null && date != null && date.isAfter(limit)) {
            findings.add(Finding.warn(Step.PRODUCT, "product.useByPassed", new Arg.Day(limit), new Arg.Day(date))
                    .at(at));
        }
    }

    private void nitrogen() {
        Double percent = read.number(ProductPaths.NITROGEN);
        if (percent != null && isUrea(read) && !UREA_NITROGEN_PERCENT.contain(percent)) {
            findings.add(Finding.warn(Step.PRODUCT, "product.nitrogenOfUrea", read.typed(ProductPaths.NITROGEN))
                    .from("source.ureaNitrogen")
                    .at(ProductPaths.NITROGEN.pointer()));
        }
    }

    /** Whether the use-by date is before the date of the card; not while one of them is not known. */
    static boolean useByPassed(ReadSetup read) {
        LocalDate limit = read.date(ProductPaths.USE_BY);
        LocalDate date = read.date(CardPaths.DATE);
        return limit != null && date != null && date.isAfter(limit);
    }

    /** Whether the granules are urea. */
    static boolean isUrea(ReadSetup read) {
        ProductForm form = read.get(ProductPaths.FORM);
        return form == ProductForm.GRANULAR_UREA || form == ProductForm.PRILLED_UREA;
    }
}
