package org.evenfall.publish;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.StringReader;
import java.nio.charset.StandardCharsets;
import java.time.Clock;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;
import org.evenfall.quantity.EnteredQuantity;
import org.evenfall.setup.Assessor;
import org.evenfall.setup.Logged;
import org.evenfall.setup.entry.Setup;
import org.evenfall.setup.entry.YesNo;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The record of a season: which passes are in it, once each, with figures worked out by hand. */
class SeasonRecordTest {

    private static final SeasonRecordService SERVICE =
            new SeasonRecordService(Reports.WORDS, Clock.fixed(Reports.WHEN, ZoneOffset.UTC));

    /** A job of an invented farm with a product of so many percent. */
    static Setup job(String field, String product, String nitrogen, int revision, String... passes) {
        Setup blank = Setup.EMPTY;
        return Logged.in(
                blank.withStart(blank.start()
                                .withFarm("Thornmarsh Farm")
                                .withField(field)
                                .withCrop("winter wheat")
                                .withSeason("2027"))
                        .withMachine(blank.machine().withName("The farm’s broadcaster"))
                        .withProduct(blank.product()
                                .withName(product)
                                .withNitrogen(EnteredQuantity.parse(nitrogen))
                                .withTreated(YesNo.YES)
                                .withInhibitor("as on the bag"))
                        .withCard(blank.card().withRevision(revision)),
                passes);
    }

    private static SeasonRecord of(Setup... setups) {
        return SeasonRecord.of(List.of(setups), Assessor::assess);
    }

    private static List<CSVRecord> csv(Setup... setups) throws Exception {
        String text = new String(SERVICE.csv(List.of(setups)), StandardCharsets.UTF_8);
        return CSVFormat.RFC4180
                .builder()
                .setHeader()
                .setSkipHeaderRecord(true)
                .get()
                .parse(new StringReader(text))
                .getRecords();
    }

    private static List<String> days(SeasonRecord record) {
        return record.rows().stream().map(SeasonRow::date).toList();
    }

    /** 12.5 ha, 2 175 kg, 46 %: 174 kg/ha, 80.04 kg N/ha, 1 000.5 kg N. The line is all that is written. */
    @Test
    void aPassIsOneLine() {
        assertThat(new String(
                        SERVICE.csv(List.of(job("Far Bank", "urea", "46 %", 2, "18.3.2027;;12.5 ha;2175 kg"))),
                        StandardCharsets.UTF_8))
                .isEqualTo("date,farm,field,crop,product,nitrogen_percent,machine,area_ha,product_kg,"
                        + "product_kg_per_ha,nitrogen_kg_per_ha,nitrogen_kg,urease_inhibitor,card_revision\r\n"
                        + "2027-03-18,Thornmarsh Farm,Far Bank,winter wheat,urea,46.00,The farm’s broadcaster,12.50,"
                        + "2175.0,174.0,80.0,1000.5,as on the bag,2\r\n");
    }

    @Test
    void withoutAPassThereIsOnlyTheHeader() throws Exception {
        assertThat(new String(SERVICE.csv(List.of()), StandardCharsets.UTF_8).lines())
                .hasSize(1);
        assertThat(csv(job("Far Bank", "urea", "46 %", 1))).isEmpty();
        assertThat(of().seasons()).isEmpty();
    }

    /** A later revision carries the log along and has one pass more. */
    @Test
    void ofRevisionsOnlyTheNewestCounts() {
        Setup first = job("Far Bank", "urea", "46 %", 1, "1.3.2027;;8 ha;1000 kg");
        Setup second = job(" far  bank", "Urea", "46 %", 2, "1.3.2027;;8 ha;1000 kg", "9.4.2027;;8 ha;900 kg");
        for (SeasonRecord record : List.of(of(first, second), of(second, first))) {
            assertThat(days(record)).containsExactly("2027-03-01", "2027-04-09");
            assertThat(record.total().productKg()).isCloseTo(1900, within(1e-9));
        }
    }

    /** Other field, crop, machine, season or product: another job, even with the same line in its log. */
    @Test
    void anotherJobIsNoRevision() {
        String pass = "1.3.2027;North;8 ha;1000 kg";
        Setup one = job("Far Bank", "urea", "46 %", 1, pass);
        Setup field = job("Long Reach", "urea", "46 %", 2, pass);
        Setup crop = one.withStart(one.start().withCrop("spring barley"));
        Setup season = one.withStart(one.start().withSeason("2028"));
        Setup machine = one.withMachine(one.machine().withName("Another"));
        Setup product = job("Far Bank", "ammonium nitrate", "34.5 %", 3, pass);
        SeasonRecord record = of(one, field, crop, season, machine, product);
        assertThat(record.rows()).hasSize(6);
        assertThat(record.seasons()).containsExactly("2027", "2028");
    }

    /** Two copies of a file: a line that is in both counts once; two equal lines of one log are two passes. */
    @Test
    void copiesOfOneRevisionCountOnce() {
        String pass = "1.3.2027;;8 ha;1000 kg";
        Setup twice = job("Far Bank", "urea", "46 %", 1, pass, pass);
        Setup copy = job("Far Bank", "urea", "46 %", 1, pass, "2.3.2027;;3 ha;400 kg");
        assertThat(days(of(twice, copy))).containsExactly("2027-03-01", "2027-03-01", "2027-03-02");
    }

    /** 1 000 kg at 46 % and 600 kg at 27 % on 8 ha: 460 + 162 kg of nitrogen are 77.75 kg/ha. */
    @Test
    void aFieldAddsUpOverProductsAndByDay() {
        SeasonRecord record = of(
                job("Far Bank", "urea", "46 %", 1, ";;5 ha;650 kg", "9.4.2027;;8 ha;1000 kg"),
                job("Far Bank", "calcium ammonium nitrate", "27 %", 1, "1.3.2027;;6 ha;600 kg"),
                job("Long Reach", "urea", "46 %", 1, "2.3.2027;;3 ha;400 kg"));
        assertThat(days(record)).containsExactly("2027-03-01", "2027-03-02", "2027-04-09", "");
        assertThat(record.fields()).hasSize(2);
        SeasonRecord.Field far = record.fields().get(0);
        assertThat(far.rows()).hasSize(3);
        assertThat(far.sums().areaHa()).isEqualTo(8);
        assertThat(far.sums().nitrogenKg()).isCloseTo(460 + 162 + 299, within(1e-9));
        assertThat(far.sums().nitrogenKgPerHa()).isCloseTo(115.125, within(1e-9));
        assertThat(record.total().spreadHa()).isCloseTo(22, within(1e-9));
        assertThat(record.incomplete()).as("a pass without a day").isEqualTo(1);
    }

    @Test
    void whatIsMissingStaysEmptyAndIsCounted() throws Exception {
        Setup unknown = job("Far Bank", "urea", "", 0, "1.3.2027;;8 ha;1000 kg", "2.3.2027;;8 ha;")
                .withGuide(Setup.EMPTY.guide().withInvented(YesNo.YES));
        List<CSVRecord> lines = csv(unknown);
        assertThat(lines.get(0).get("nitrogen_percent")).isEmpty();
        assertThat(lines.get(0).get("nitrogen_kg")).isEmpty();
        assertThat(lines.get(0).get("product_kg_per_ha")).isEqualTo("125.0");
        assertThat(lines.get(0).get("card_revision")).isEmpty();
        assertThat(lines.get(1).get("area_ha")).isEqualTo("8.00");
        assertThat(lines.get(1).get("product_kg")).isEmpty();
        assertThat(of(unknown).incomplete()).isEqualTo(2);
        assertThat(of(unknown).invented()).isTrue();
    }

    @ParameterizedTest
    @CsvSource({
        "=SUM(A1), '''=SUM(A1)'",
        "+cmd, '''+cmd'",
        "-x, '''-x'",
        "@ref, '''@ref'",
        "-12, -12",
        "+3.5, +3.5",
        "'-3,5', '-3,5'",
        "Far Bank, Far Bank",
        "a=b, a=b"
    })
    void noTextIsAFormula(String typed, String written) {
        assertThat(SeasonCsv.harmless(typed)).isEqualTo(written);
    }

    @Test
    void textsWithCommasQuotesAndLinesComeBack() throws Exception {
        String name = "Far Bank, \"north\"\nhalf";
        CSVRecord line =
                csv(job(name, "=1+1", "46 %", 1, "1.3.2027;;8 ha;1000 kg")).get(0);
        assertThat(line.get("field")).isEqualTo(name);
        assertThat(line.get("product")).isEqualTo("'=1+1");
        assertThat(SeasonCsv.harmless("")).isEmpty();
    }

    /** Many passes with long names, for the pages. */
    static List<Setup> many() {
        String longName = "Heron Corner behind the old railway embankment, northern half, where the ground is light";
        List<Setup> all = new ArrayList<>();
        for (int i = 0; i < 7; i++) {
            int field = i;
            String[] passes = IntStream.range(0, 9)
                    .mapToObj(pass -> "2027-0" + (3 + pass % 3) + "-1" + pass + ";;1" + field + ".25 ha;"
                            + (pass == 4 ? "" : (2100 + 37 * pass) + " kg"))
                    .toArray(String[]::new);
            Setup job = job(
                    longName + " " + i,
                    i % 2 == 0 ? "urea" : "Granular urea, treated, from the second lorry of the first delivery",
                    "46 %",
                    i,
                    passes);
            all.add(job.withMachine(job.machine().withName(i == 3 ? longName.repeat(3) : "The farm’s broadcaster"))
                    .withProduct(job.product()
                            .withInhibitor(i == 2 ? "Donaudampfschifffahrtsgesellschaftskapitän".repeat(3) : "on it")));
        }
        return all;
    }
}
