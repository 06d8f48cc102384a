package org.evenfall.setup;

import static org.assertj.core.api.Assertions.assertThat;
import static org.evenfall.setup.Entered.lines;

import java.util.Locale;
import java.util.ResourceBundle;
import org.evenfall.finding.Sentences;
import org.evenfall.granule.ProductForm;
import org.evenfall.setup.path.ProductPaths;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Opened bags of urea in damp air. */
class StorageFindingsTest {

    @ParameterizedTest
    @EnumSource(ProductForm.class)
    void onlyOfUrea(ProductForm form) {
        boolean urea = form == ProductForm.GRANULAR_UREA || form == ProductForm.PRILLED_UREA;
        assertThat(lines(StorageFindings.of(
                        Entered.inEmpty().with(ProductPaths.FORM, form).read())))
                .hasSize(urea ? 1 : 0)
                .allMatch("NOTE PRODUCT product.openBag /product/condition []"::equals);
    }

    /** Source: critical relative humidity after IFDC, in an encyclopaedia, at 30 °C: urea 72.5 %, with ammonium nitrate 18.1 %. */
    @Test
    void theWordsGiveTheRangeAndTheSource() {
        Sentences words = new Sentences(ResourceBundle.getBundle("org.evenfall.words", Locale.ENGLISH), Locale.UK);
        assertThat(words.text("product.openBag")).contains("70 to 75 %", "cover the hopper");
        assertThat(words.text("source.humidityUrea")).contains("72.5 %", "30 °C");
        assertThat(words.text("source.humidity")).contains("about 18 %", "30 °C");
    }

    @Test
    void ureaOnTheScreenHasIt() {
        assertThat(Assessor.assess(TypedSetup.demo().setup()).findings())
                .anyMatch(finding -> finding.key().equals("product.openBag"));
    }
}
