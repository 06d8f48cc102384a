package org.evenfall.card;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.evenfall.machine.FactorRule;
import org.evenfall.machine.RateSetting;
import org.evenfall.quantity.EnteredQuantity;
import org.evenfall.quantity.Unit;
import org.evenfall.setup.entry.BucketEntry;
import org.evenfall.setup.entry.CardLanguage;
import org.evenfall.setup.entry.Setup;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The card of a machine whose rate is set by a factor: once, with the rate and the density that it holds for. */
class FactorCardTest {

    /** The demo with a factor of 1.0989; the right entry is left over. */
    private static Setup factor(CardLanguage language, String density) throws Exception {
        Setup demo = CardSamples.demo();
        BucketEntry last = demo.rate()
                .bucketTests()
                .get(1)
                .withOpeningLeft(new EnteredQuantity("1.0989", Unit.NONE))
                .withBulkDensity(EnteredQuantity.parse(density));
        return demo.withMachine(
                        demo.machine().withRateSetting(RateSetting.FACTOR).withFactorRule(FactorRule.SHOWN_OVER_CAUGHT))
                .withRate(demo.rate().withBucketTests(List.of(last)))
                .withCard(demo.card().withLanguage(language));
    }

    private static String plain(String text) {
        return text.replace('\u00a0', ' ').replace('\u202f', ' ');
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = ';',
            value = {
                "EN; Factor for 174 kg/ha, 0.75 kg/L; 1.099; Opening",
                "DE; Faktor für 174 kg/ha, 0,75 kg/L; 1,099; Öffnung",
                "FR; Facteur pour 174 kg/ha, 0,75 kg/L; 1,099; Ouverture"
            })
    void theFactorIsPrintedOnceInEachLanguage(CardLanguage language, String label, String value, String opening)
            throws Exception {
        CardContent content = CardSamples.of(factor(language, "0.75 kg/L"), "");
        assertThat(content.figures())
                .filteredOn(figure -> plain(figure.label()).equals(label))
                .extracting(CardContent.Figure::value)
                .containsExactly(value);
        assertThat(content.figures()).noneMatch(figure -> figure.label().startsWith(opening));
        assertThat(content.code().text()).contains(label + ": " + value + "\n").doesNotContain(opening);
        try (PDDocument pdf = Loader.loadPDF(CardPdf.draw(content, CardSamples.WHEN))) {
            String front = plain(new PDFTextStripper().getText(pdf)).replaceAll("\\s+", " ");
            assertThat(front).contains(value).doesNotContain(opening + " ");
            assertThat(front.replace(" ", "")).contains(label.replace(" ", ""));
        }
    }

    /** The test states no density: the measured one, 0.76 kg/L in the demo. */
    @Test
    void theMeasuredDensityWhereTheTestStatesNone() throws Exception {
        CardContent content = CardSamples.of(factor(CardLanguage.EN, ""), "");
        assertThat(content.figures())
                .extracting(figure -> plain(figure.label()))
                .contains("Factor for 174 kg/ha, 0.76 kg/L");
    }

    @Test
    void anOpeningIsPrintedWithOneDecimal() throws Exception {
        Setup demo = CardSamples.demo();
        BucketEntry last = demo.rate().bucketTests().get(1).withOpeningLeft(new EnteredQuantity("27.54", Unit.NONE));
        CardContent content = CardSamples.of(demo.withRate(demo.rate().withBucketTests(List.of(last))), "");
        assertThat(content.figures()).contains(new CardContent.Figure("Opening left", "27.5", true));
    }
}
