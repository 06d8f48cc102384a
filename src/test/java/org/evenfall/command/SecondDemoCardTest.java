package org.evenfall.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The card of the asymmetric demo: in German, with each side's own figure. */
class SecondDemoCardTest {

    private static final String UNEVEN =
            Path.of("demo", "uneven.json").toAbsolutePath().toString();

    @TempDir
    private Path folder;

    /** The text of the card, each stretch of blanks as one blank. */
    private String card() throws Exception {
        Commands.Answer made = new Commands(folder).run("card", UNEVEN, "--out", "card.pdf");
        assertThat(made.code()).as(made.err()).isZero();
        try (PDDocument pdf = Loader.loadPDF(folder.resolve("card.pdf").toFile())) {
            assertThat(pdf.getDocumentCatalog().getLanguage()).isEqualTo("de");
            PDFTextStripper text = new PDFTextStripper();
            text.setSortByPosition(false);
            return text.getText(pdf).replaceAll("[\\s\u00a0\u202f]+", " ");
        }
    }

    @Test
    void isGermanAndSigned() throws Exception {
        String text = card();
        assertThat(text)
                .contains("Harnstoff, granuliert", "Vorsicht", "Gemessen: T. Osgarth", "Fassung 2")
                .doesNotContain("Opening", "PTO", "Caution");
        var verified = new Commands(folder).run("verify", "card.pdf", "--json");
        assertThat(verified.code()).isZero();
        assertThat(verified.json().get("unchanged").booleanValue()).isTrue();
        assertThat(verified.json().get("signedBy").textValue()).isEqualTo("A. Marlow");
    }

    /** Worked out in SecondDemoTest: measured PTO speed, each side's opening, the rate typed per acre with kg/ha. */
    @Test
    void holdsEachSidesOpeningAndTheMeasuredPtoSpeed() throws Exception {
        assertThat(card())
                .contains("Fahrgassen 28 m")
                .contains("Streumenge 172 kg/ha Stickstoff 78 kg/ha")
                .contains("Öffnung links 25,5 Öffnung rechts 27 ")
                .contains("long vane, ° 30,5 short vane, ° 9 drop point 3,5 Zapfwelle 531 U/min")
                .contains("Geschwindigkeit 12,0 km/h Höhe über Bestand 76 cm Kette 66 cm")
                .contains("Abdrehprobe 20 s 16,2 kg")
                .contains("Stickstoff 62,5 Einheiten (1/100 hundredweight je Acre) sind 78 kg/ha")
                .contains("Ein Sack von 1100 lb reicht für 2,89 ha")
                .contains("Stopp ab Wind 9 mph Ein: ins Feld 41 Fuß Aus: zum Rand 7 Fuß Grenzstreuen border plate");
    }

    /** Catches over their mean of 112.22 mm, left to right: 104 is 93 %, 101 is 90 %. The override's reason is printed. */
    @Test
    void showsTheTraysFromLeftToRightAndTheOverriddenItem() throws Exception {
        assertThat(card())
                .contains("93 98 112 108 110 105 96 87 90")
                .contains("Feld-VK etwa 8 %, 5–11 %: gleichmäßig Schalen-VK 9 % (n − 1)")
                .contains("Schieber öffnen gleich nicht bestanden; weiter, weil: pointers 1,5 apart");
    }
}
