package org.evenfall.setup;

import static org.assertj.core.api.Assertions.assertThat;
import static org.evenfall.setup.Entered.lines;

import java.util.DoubleSummaryStatistics;
import java.util.List;
import java.util.Locale;
import java.util.ResourceBundle;
import java.util.stream.DoubleStream;
import org.evenfall.finding.Finding;
import org.evenfall.finding.Sentences;
import org.evenfall.granule.ProductForm;
import org.evenfall.setup.entry.YesNo;
import org.evenfall.setup.path.CardPaths;
import org.evenfall.setup.path.ProductPaths;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** Notes on the nitrogen that urea on the surface loses. */
class NitrogenLossFindingsTest {

    private static final List<String> UNTREATED = List.of(
            "NOTE PRODUCT product.lossGood /product/treated []",
            "NOTE PRODUCT product.lossPoor /product/treated []",
            "NOTE PRODUCT product.limed /product/treated []");

    private static final List<String> TREATED = List.of(
            "NOTE PRODUCT product.lossGood /product/treated []",
            "NOTE PRODUCT product.lossPoorTreated /product/treated []",
            "NOTE PRODUCT product.limedTreated /product/treated []");

    private static Entered urea(YesNo treated) {
        return Entered.inEmpty()
                .with(ProductPaths.FORM, ProductForm.PRILLED_UREA)
                .with(ProductPaths.TREATED, treated);
    }

    private static List<String> notes(Entered entered) {
        return lines(NitrogenLossFindings.of(entered.read()));
    }

    /**
     * Source: what an inhibitor took from the loss, %, in the abstracts of Chambers and Dampney 2009, Silva et al. 2017 (31.0 to
     * 14.8), Cantarella et al. 2018 and Forrestal et al. 2016.
     */
    @Test
    void theRangeOfTheFourStudies() {
        DoubleSummaryStatistics cut =
                DoubleStream.of(70, 100 * (1 - 14.8 / 31.0), 53, 78.5).summaryStatistics();
        Sentences words = new Sentences(ResourceBundle.getBundle("org.evenfall.words", Locale.ENGLISH), Locale.UK);
        assertThat(words.text("product.lossPoorTreated"))
                .contains("four studies", Math.round(cut.getMin()) + " to " + Math.round(cut.getMax()) + " %");
    }

    @Test
    void threeNotesOnceItIsKnownWhetherItIsTreated() {
        assertThat(notes(urea(YesNo.NO))).isEqualTo(UNTREATED);
        assertThat(notes(urea(YesNo.YES))).isEqualTo(TREATED);
        assertThat(notes(urea(YesNo.UNANSWERED))).isEmpty();
    }

    @ParameterizedTest
    @EnumSource(ProductForm.class)
    void onlyOfUrea(ProductForm form) {
        boolean urea = form == ProductForm.GRANULAR_UREA || form == ProductForm.PRILLED_UREA;
        assertThat(notes(urea(YesNo.NO).with(ProductPaths.FORM, form))).hasSize(urea ? 3 : 0);
    }

    /** Past its use-by date a treated product counts as untreated. */
    @ParameterizedTest
    @CsvSource({"2027-04-29, true", "2027-04-30, true", "2027-05-01, false", "'', true"})
    void theUseByDateDecides(String date, boolean treated) {
        assertThat(notes(urea(YesNo.YES).with(ProductPaths.USE_BY, "2027-04-30").with(CardPaths.DATE, date)))
                .isEqualTo(treated ? TREATED : UNTREATED);
    }

    /**
     * Ranges and the local rules are in the words. Source: Chambers and Dampney 2009 (abstract), 27 % (10–58) and 22 % (2–43);
     * an Irish advisory service, urea 3 to 6 months after lime, treated urea a week.
     */
    @Test
    void theWordsGiveRangesAndPromiseNothing() {
        Sentences words = new Sentences(ResourceBundle.getBundle("org.evenfall.words", Locale.ENGLISH), Locale.UK);
        List<Finding> untreated = NitrogenLossFindings.of(urea(YesNo.NO).read());
        assertThat(words.of(untreated.get(0))).contains("5 to 15 mm", "local rules come first");
        assertThat(words.of(untreated.get(1))).contains("(10 to 58)", "(2 to 43)", "15 °C");
        assertThat(words.of(untreated.get(2))).contains("3 to 6 months");
        List<Finding> treated = NitrogenLossFindings.of(urea(YesNo.YES).read());
        assertThat(words.of(treated.get(1))).contains("52 to 79 %");
        assertThat(words.of(treated.get(2))).contains("a week");
    }
}
