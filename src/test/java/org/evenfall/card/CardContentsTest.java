package org.evenfall.card;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSString;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.evenfall.quantity.EnteredQuantity;
import org.evenfall.quantity.Unit;
import org.evenfall.rate.UnitsBasis;
import org.evenfall.setup.entry.Paper;
import org.evenfall.setup.entry.RateBasis;
import org.evenfall.setup.entry.Setup;
import org.evenfall.store.SetupJson;
import org.junit.jupiter.api.Test;

/** What is printed, from setups with different values on the two sides. */
class CardContentsTest {

    private static String value(CardContent content, String label) {
        return content.figures().stream()
                .filter(figure -> figure.label().equals(label))
                .map(CardContent.Figure::value)
                .findFirst()
                .orElse("none");
    }

    /** The openings differ: the left one is printed at the left, the right one at the right. */
    @Test
    void eachSideHasItsOwnOpening() throws Exception {
        String demo = Files.readString(Path.of("demo", "setup.json"));
        Setup uneven =
                new SetupJson().read(demo.replace("\"openingRight\": \"27.5\"", "\"openingRight\": \"29\""), "demo");
        CardContent content = CardSamples.of(uneven, "");
        assertThat(value(content, "Opening left")).isEqualTo("27.5");
        assertThat(value(content, "Opening right")).isEqualTo("29");
        assertThat(content.code().text()).contains("Opening left: 27.5\nOpening right: 29\n");
    }

    /** A rate that was entered in units per acre is printed as entered, with its basis and kg/ha. */
    @Test
    void aRatePerAcreIsPrintedWithItsBasis() throws Exception {
        Setup demo = CardSamples.demo();
        Setup units = demo.withRate(demo.rate()
                .withPlan(demo.rate()
                        .plan()
                        .withBasis(RateBasis.NITROGEN)
                        .withNitrogenRate(new EnteredQuantity("64", Unit.UNITS))
                        .withUnitsBasis(UnitsBasis.HUNDREDTH_OF_HUNDREDWEIGHT_PER_ACRE)));
        List<String> proof = CardSamples.of(units, "").proof().lines().stream()
                .map(line -> line.replace('\u00a0', ' '))
                .toList();
        assertThat(proof).contains("Nitrogen 64 units (1/100 hundredweight per acre) is 80 kg/ha");
    }

    /** The identifier of the file comes from its content only, so that it is the same in every run of the program. */
    @Test
    void theFileHasTheSameIdentifierInEveryRun() throws Exception {
        CardContent content = new CardContent(
                new CardContent.Sheet(Paper.A5_PORTRAIT, "en", false),
                new CardContent.Heading("Granular urea", List.of("4.0 mm"), List.of()),
                List.of(new CardContent.Figure("Opening", "27.5")),
                List.of(),
                new CardContent.Proof("Proof", List.of(), "", List.of()),
                new CardContent.Section("Stop", List.of("Wind")),
                new CardContent.Section("Cautions", List.of()),
                new CardContent.Signature(List.of(), "Signed"),
                new CardContent.Code("", ""),
                new CardContent.Foot(List.of(), "End"));
        try (PDDocument document = Loader.loadPDF(CardPdf.draw(content, CardSamples.WHEN))) {
            COSArray id = document.getDocument().getDocumentID();
            assertThat(((COSString) id.getObject(0)).toHexString())
                    .isEqualTo("8C1EA16E1C2622E251F51FE6246DD7158D60742945423BB26AB112767AC1B5E5");
        }
    }
}
