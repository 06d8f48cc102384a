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
import org.evenfall.setup.entry.YesNo;
import org.evenfall.store.SetupJson;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

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

    /** What gives the PTO speed is printed after it, as far as it is typed. */
    @ParameterizedTest
    @CsvSource({"1650 rpm, 4, '1650 rpm, gear 4'", "'', C2, gear C2", "1650 rpm, '', 1650 rpm"})
    void engineSpeedAndGearArePrinted(String engine, String gear, String printed) throws Exception {
        Setup demo = CardSamples.demo();
        CardContent content = CardSamples.of(
                demo.withMachineCheck(demo.machineCheck()
                        .withEngineSpeed(EnteredQuantity.parse(engine))
                        .withGear(gear)),
                "");
        assertThat(value(content, "Engine").replace('\u00a0', ' ')).isEqualTo(printed);
        assertThat(CardSamples.of(demo, "").figures())
                .extracting(CardContent.Figure::label)
                .doesNotContain("Engine");
    }

    private static Setup treated(YesNo treated, String inhibitor, String useBy) throws Exception {
        Setup demo = CardSamples.demo();
        return demo.withProduct(
                demo.product().withTreated(treated).withInhibitor(inhibitor).withUseBy(useBy));
    }

    private static String treatment(YesNo treated, String inhibitor, String useBy) throws Exception {
        CardContent content = CardSamples.of(treated(treated, inhibitor, useBy), "");
        return String.join("|", content.heading().lines()) + "|"
                + String.join("|", content.stops().lines());
    }

    /** Whether it is treated, with what and until when; only a treated product has a use-by date to stop at. */
    @Test
    void theTreatmentAndItsUseByDateArePrinted() throws Exception {
        assertThat(treatment(YesNo.YES, " inhibitor X ", "2027-09-30"))
                .contains(
                        "|delivery S-1042 · treated: inhibitor X · use by 30\u00a0September\u00a02027|",
                        "|new delivery, use-by date passed|");
        assertThat(treatment(YesNo.YES, "", "2027-09-30"))
                .contains("· treated with a urease inhibitor · use by 30\u00a0September\u00a02027|");
        assertThat(treatment(YesNo.YES, "inhibitor X", " ")).contains("· treated: inhibitor X|");
        assertThat(treatment(YesNo.NO, "inhibitor X", "2027-09-30"))
                .contains("· not treated with a urease inhibitor|")
                .doesNotContain("use by", "use-by", "inhibitor X");
        assertThat(treatment(YesNo.UNANSWERED, "inhibitor X", "2027-09-30"))
                .doesNotContain("treated with", "treated:", "use by", "use-by");
    }

    /** The side of the headland tramline is in words, whatever sign was typed. */
    @ParameterizedTest
    @CsvSource({
        "12 m, Off: into field, 12 m",
        "0 m, Off: into field, 0 m",
        "-2.5 m, Off: toward edge, 2.5 m",
        "\u22127 ft, Off: toward edge, 7 ft",
        "'- 3 m', Off: toward edge, 3 m"
    })
    void aSwitchingDistanceNamesItsSide(String typed, String label, String printed) throws Exception {
        Setup demo = CardSamples.demo();
        CardContent content =
                CardSamples.of(demo.withTrays(demo.trays().withSwitchOff(EnteredQuantity.parse(typed))), "");
        assertThat(value(content, label)).isEqualTo(printed.replace(' ', '\u00a0'));
        assertThat(value(content, "On: into field")).isEqualTo("12\u00a0m");
        assertThat(content.proof().lines()).contains("On, off: discs to headland tramline");
    }

    /** Where the distances count from is printed only with a distance. */
    @Test
    void withoutASwitchingDistanceThereIsNoZero() throws Exception {
        Setup demo = CardSamples.demo();
        Setup without =
                demo.withTrays(demo.trays().withSwitchOn(EnteredQuantity.EMPTY).withSwitchOff(EnteredQuantity.EMPTY));
        assertThat(CardSamples.of(without, "").proof().lines()).noneMatch(line -> line.contains("headland"));
        Setup one = demo.withTrays(demo.trays().withSwitchOn(EnteredQuantity.EMPTY));
        assertThat(CardSamples.of(one, "").proof().lines()).anyMatch(line -> line.contains("headland"));
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
                new CardContent.Day("Day", List.of(), "elsewhere"),
                List.of(),
                new CardContent.Code("", ""),
                new CardContent.Foot(List.of(), "End"));
        try (PDDocument document = Loader.loadPDF(CardPdf.draw(content, CardSamples.WHEN))) {
            COSArray id = document.getDocument().getDocumentID();
            assertThat(((COSString) id.getObject(0)).toHexString())
                    .isEqualTo("90758E72BB4CF9D4A3E02E8005947020D03051AF0B35E71547FC88FEC7D4DEE5");
        }
    }
}
