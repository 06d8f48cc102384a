package org.evenfall.publish;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.verapdf.gf.foundry.VeraGreenfieldFoundryProvider;
import org.verapdf.pdfa.Foundries;
import org.verapdf.pdfa.PDFAParser;
import org.verapdf.pdfa.PDFAValidator;
import org.verapdf.pdfa.flavours.PDFAFlavour;
import org.verapdf.pdfa.results.ValidationResult;

/** The report by the validation model of veraPDF: PDF/A-2b (ISO 19005-2) and PDF/UA-1 (ISO 14289-1), as the card. */
class ReportStandardsTest {

    @BeforeAll
    static void once() {
        VeraGreenfieldFoundryProvider.initialise();
    }

    @ParameterizedTest
    @CsvSource({
        "setup, PDFA_2_B",
        "setup, PDFUA_1",
        "many, PDFA_2_B",
        "many, PDFUA_1",
        "empty, PDFA_2_B",
        "empty, PDFUA_1"
    })
    void areArchivableAndTagged(String name, PDFAFlavour flavour) throws Exception {
        byte[] pdf = Reports.pages(Reports.setup(name), SheetService.SheetPaper.A4);
        try (PDFAParser parser = Foundries.defaultInstance().createParser(new ByteArrayInputStream(pdf), flavour);
                PDFAValidator validator = Foundries.defaultInstance().createValidator(flavour, false)) {
            ValidationResult result = validator.validate(parser);
            assertThat(result.isCompliant())
                    .as(String.valueOf(result.getTestAssertions()))
                    .isTrue();
        }
    }
}
