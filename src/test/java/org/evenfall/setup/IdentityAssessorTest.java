package org.evenfall.setup;

import static org.assertj.core.api.Assertions.assertThat;
import static org.evenfall.setup.Entered.lines;

import java.util.List;
import org.evenfall.granule.ProductForm;
import org.evenfall.setup.entry.Condition;
import org.evenfall.setup.entry.YesNo;
import org.evenfall.setup.path.CardPaths;
import org.evenfall.setup.path.ProductPaths;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** Which product it is, its condition, its nitrogen, what was in the machine before it. */
class IdentityAssessorTest {

    private static List<String> findings(Entered entered) {
        return lines(IdentityAssessor.assess(entered.read()));
    }

    private static List<String> when(boolean reported, String line) {
        return reported ? List.of(line) : List.of();
    }

    @Test
    void whatIsNotAnsweredIsNoFinding() {
        assertThat(findings(Entered.inEmpty())).isEmpty();
    }

    @Test
    void everyFindingTogetherInOrder() {
        Entered entered = Entered.inEmpty()
                .with(ProductPaths.FORM, ProductForm.PRILLED_UREA)
                .with(ProductPaths.CONDITION, Condition.CAKED)
                .with(ProductPaths.BLEND, YesNo.YES)
                .with(ProductPaths.NITRATE_BEFORE, YesNo.YES)
                .with(ProductPaths.TREATED, YesNo.NO)
                .with(ProductPaths.NITROGEN, "27 %");
        assertThat(findings(entered))
                .containsExactly(
                        "STOP PRODUCT product.caked /product/condition []",
                        "WARNING PRODUCT product.blend /product/blend []",
                        "STOP PRODUCT product.notClean /product/cleanAndDry []",
                        "WARNING PRODUCT product.untreated /product/treated []",
                        "WARNING PRODUCT product.nitrogenOfUrea /product/nitrogen [27 %]");
    }

    @ParameterizedTest
    @CsvSource({
        "UNANSWERED, ''",
        "FREE_FLOWING, ''",
        "SLIGHTLY_DAMP, WARNING PRODUCT product.damp /product/condition []",
        "CAKED, STOP PRODUCT product.caked /product/condition []"
    })
    void theConditionDecides(Condition condition, String line) {
        assertThat(findings(Entered.inEmpty().with(ProductPaths.CONDITION, condition)))
                .isEqualTo(when(!line.isEmpty(), line));
    }

    @ParameterizedTest
    @EnumSource(YesNo.class)
    void aBlendIsReported(YesNo blend) {
        assertThat(findings(Entered.inEmpty().with(ProductPaths.BLEND, blend)))
                .isEqualTo(when(blend == YesNo.YES, "WARNING PRODUCT product.blend /product/blend []"));
    }

    /** After a nitrate the machine must be clean; an open answer is no answer. */
    @ParameterizedTest
    @CsvSource({
        "YES, YES, false",
        "YES, NO, true",
        "YES, UNANSWERED, true",
        "NO, NO, false",
        "NO, UNANSWERED, false",
        "UNANSWERED, NO, false",
        "UNANSWERED, UNANSWERED, false"
    })
    void nitrateBeforeAsksForACleanMachine(YesNo before, YesNo clean, boolean reported) {
        Entered entered =
                Entered.inEmpty().with(ProductPaths.NITRATE_BEFORE, before).with(ProductPaths.CLEAN_AND_DRY, clean);
        assertThat(findings(entered))
                .isEqualTo(when(reported, "STOP PRODUCT product.notClean /product/cleanAndDry []"));
    }

    @ParameterizedTest
    @CsvSource({
        "GRANULAR_UREA, NO, true",
        "PRILLED_UREA, NO, true",
        "GRANULAR_UREA, UNANSWERED, false",
        "CALCIUM_AMMONIUM_NITRATE, NO, false",
        "AMMONIUM_NITRATE, NO, false",
        "OTHER, NO, false",
        "UNANSWERED, NO, false"
    })
    void onlyUreaNeedsAnInhibitor(ProductForm form, YesNo treated, boolean reported) {
        Entered entered = Entered.inEmpty().with(ProductPaths.FORM, form).with(ProductPaths.TREATED, treated);
        assertThat(findings(entered))
                .isEqualTo(when(reported, "WARNING PRODUCT product.untreated /product/treated []"));
    }

    @ParameterizedTest
    @CsvSource({
        "2027-04-29, 2027-04-30, false",
        "2027-04-30, 2027-04-30, false",
        "2027-05-01, 2027-04-30, true",
        "'', 2027-04-30, false",
        "2027-05-01, no date, false"
    })
    void aTreatedProductIsUsedByItsDate(String today, String useBy, boolean reported) {
        Entered entered = Entered.inEmpty()
                .with(ProductPaths.FORM, ProductForm.GRANULAR_UREA)
                .with(ProductPaths.USE_BY, useBy)
                .with(CardPaths.DATE, today);
        assertThat(findings(entered.with(ProductPaths.TREATED, YesNo.YES)))
                .isEqualTo(when(
                        reported,
                        "WARNING PRODUCT product.useByPassed /product/useBy [Day[date=2027-04-30], Day[date=" + today
                                + "]]"));
        assertThat(findings(entered.with(ProductPaths.TREATED, YesNo.UNANSWERED)))
                .isEmpty();
    }

    @ParameterizedTest
    @EnumSource(YesNo.class)
    void anOpenDateIsAskedOfATreatedProductOnly(YesNo treated) {
        Entered entered = Entered.inEmpty().with(ProductPaths.TREATED, treated).with(CardPaths.DATE, "2027-05-01");
        assertThat(findings(entered))
                .isEqualTo(when(treated == YesNo.YES, "NOTE PRODUCT product.useByOpen /product/useBy []"));
    }

    /** Source (from memory): the formula of urea, CO(NH₂)₂, with the atomic weights of its elements. */
    @Test
    void noUreaHasMoreNitrogenThanItsFormula() {
        double percent = 100 * 2 * 14.007 / (12.011 + 15.999 + 2 * 14.007 + 4 * 1.008);
        assertThat(percent).isBetween(46.6, 46.7);
    }

    /** 46.7 is the next tenth above the 46.65 of the formula of urea; 38, for urea with sulphur, is checked against nothing. */
    @ParameterizedTest
    @CsvSource({"37.9, true", "38, false", "38.1, false", "46.6, false", "46.7, false", "46.8, true"})
    void ureaHasTheNitrogenOfUrea(String percent, boolean reported) {
        Entered entered = Entered.inEmpty().with(ProductPaths.NITROGEN, percent + " %");
        String line = "WARNING PRODUCT product.nitrogenOfUrea /product/nitrogen [" + percent + " %]";
        assertThat(findings(entered.with(ProductPaths.FORM, ProductForm.GRANULAR_UREA)))
                .isEqualTo(when(reported, line));
        assertThat(findings(entered.with(ProductPaths.FORM, ProductForm.PRILLED_UREA)))
                .isEqualTo(when(reported, line));
        assertThat(findings(entered.with(ProductPaths.FORM, ProductForm.OTHER))).isEmpty();
    }
}
