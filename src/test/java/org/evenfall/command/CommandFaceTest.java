package org.evenfall.command;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.ByteArrayInputStream;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.ResourceBundle;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.text.PDFTextStripper;
import org.evenfall.finding.Sentences;
import org.evenfall.publish.CardService;
import org.evenfall.sign.KeyRing;
import org.evenfall.store.SetupJson;
import org.evenfall.store.UserFolder;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CommandFaceTest {

    private static final String DEMO =
            Path.of("demo", "setup.json").toAbsolutePath().toString();
    private static final String UNFINISHED =
            Path.of("demo", "unfinished.json").toAbsolutePath().toString();

    @TempDir
    private Path folder;

    private StringWriter out;
    private StringWriter err;
    private String input = "";
    private Optional<Path> opened = Optional.empty();

    @BeforeEach
    void fresh() {
        out = new StringWriter();
        err = new StringWriter();
    }

    private int run(String... args) {
        CommandContext context = new CommandContext(
                new ByteArrayInputStream(input.getBytes(StandardCharsets.UTF_8)),
                new PrintWriter(out),
                new PrintWriter(err),
                folder,
                new UserFolder(folder.resolve("home")),
                Clock.fixed(Instant.parse("2027-03-18T09:00:00Z"), ZoneOffset.UTC),
                () -> new Sentences(ResourceBundle.getBundle("org.evenfall.words", Locale.ENGLISH), Locale.UK),
                new SetupJson(),
                file -> {
                    opened = file;
                    return Optional.of("No window here.");
                });
        return CommandFace.run(context, List.of(args));
    }

    private JsonNode json() throws Exception {
        return new ObjectMapper().readTree(out.toString());
    }

    @Test
    void assessTellsEveryStepAsJson() throws Exception {
        assertThat(run("assess", DEMO, "--json")).isZero();
        assertThat(json().at("/product/density/meanKgPerL").doubleValue()).isCloseTo(0.757, within(0.001));
        assertThat(json().at("/rate/plan/productKgPerHa").doubleValue()).isCloseTo(173.9, within(0.1));
        assertThat(json().at("/trays/tests/1/evenness/cvPercent").doubleValue()).isLessThan(10);
        assertThat(json().at("/card/cardAllowed").booleanValue()).isTrue();
        assertThat(json().at("/findings/0/message").textValue()).isNotBlank();
        assertThat(out.toString()).doesNotContain("E+");
    }

    @Test
    void assessInWordsAndForSeveral() throws Exception {
        assertThat(run("assess", DEMO)).isZero();
        assertThat(out.toString()).contains("6  Tray test: done").contains("Field CV 4 %");
        fresh();
        assertThat(run("assess", DEMO, UNFINISHED)).isZero();
        assertThat(out.toString().lines()).hasSize(2).allMatch(line -> line.startsWith("{"));
    }

    @Test
    void aStopFindingHasItsOwnExitCode() throws Exception {
        Path caked = Files.writeString(
                folder.resolve("caked.json"), Files.readString(Path.of(DEMO)).replace("FREE_FLOWING", "CAKED"));
        assertThat(run("assess", caked.toString(), "--json")).isEqualTo(1);
        assertThat(json().at("/findings").toString()).contains("product.caked");
        fresh();
        assertThat(run("card", caked.toString(), "--out", "card.pdf")).isEqualTo(1);
        assertThat(folder.resolve("card.pdf")).doesNotExist();
        assertThat(err.toString()).contains("/product/condition");
        assertThat(err.toString().lines()).hasSize(1);
    }

    @Test
    void aMissingEntryIsReportedWithItsPlaceAndNoCardIsWritten() throws Exception {
        Path before = Files.writeString(folder.resolve("card.pdf"), "an earlier card");
        Path open = Files.writeString(
                folder.resolve("open.json"), Files.readString(Path.of(DEMO)).replace("\"A. Marlow\"", "\"\""));
        assertThat(run("card", open.toString(), "--out", "card.pdf")).isEqualTo(1);
        assertThat(err.toString().lines()).hasSize(1);
        assertThat(err.toString())
                .contains("open.json")
                .contains("/card/signedBy")
                .contains("Enter who signs");
        assertThat(Files.readString(before)).isEqualTo("an earlier card");
    }

    /** Far too uneven: no card, but a finding sheet next to where the card would be. */
    @Test
    void anUnevenFieldGivesAFindingSheet() throws Exception {
        Path bad = Files.writeString(
                folder.resolve("bad.json"),
                Files.readString(Path.of(DEMO))
                        .replace("\"16.4 g\"", "\"6.4 g\"")
                        .replace("\"15.9 g\"", "\"5.9 g\""));
        assertThat(run("card", bad.toString(), "--out", "card.pdf")).isEqualTo(1);
        assertThat(folder.resolve("card.pdf")).doesNotExist();
        assertThat(out.toString()).contains("card-finding.pdf");
        assertThat(err.toString().lines()).hasSize(1);
        assertThat(err.toString()).contains("do not spread");
        try (var sheet = Loader.loadPDF(Files.readAllBytes(folder.resolve("card-finding.pdf")))) {
            assertThat(sheet.getNumberOfPages()).isEqualTo(1);
            assertThat(new PDFTextStripper().getText(sheet))
                    .contains("A finding, not a cab card")
                    .contains("Field CV about");
        }
        fresh();
        assertThat(run("card", bad.toString(), DEMO, "--out", "cards")).isEqualTo(1);
        assertThat(folder.resolve("cards").resolve("bad-finding.pdf")).exists();
        assertThat(folder.resolve("cards").resolve("bad.pdf")).doesNotExist();
        assertThat(folder.resolve("cards").resolve("setup.pdf")).exists();
    }

    /** With a reason there is a card, and it says above all else that the field is not even enough. */
    @Test
    void aCardInSpiteOfAnUnevenFieldSaysSoFirst() throws Exception {
        String uneven = Files.readString(Path.of(DEMO))
                .replace("\"16.4 g\"", "\"11.4 g\"")
                .replace("\"15.9 g\"", "\"11.9 g\"")
                .replace("\"18.6 g\"", "\"23.6 g\"");
        Path open = Files.writeString(folder.resolve("uneven.json"), uneven);
        assertThat(run("card", open.toString(), "--out", "card.pdf")).isEqualTo(1);
        assertThat(err.toString()).contains("/card/unevenReason");
        assertThat(folder.resolve("card.pdf")).doesNotExist();
        assertThat(folder.resolve("card-finding.pdf")).doesNotExist();
        fresh();
        Files.writeString(open, uneven.replace("\"remarks\": \"\"", "\"unevenReason\": \"rain is coming\""));
        assertThat(run("card", open.toString(), "--out", "card.pdf")).isZero();
        try (var card = Loader.loadPDF(Files.readAllBytes(folder.resolve("card.pdf")))) {
            assertThat(new PDFTextStripper().getText(card).lines().limit(2))
                    .first()
                    .asString()
                    .matches("NOT EVEN ENOUGH: CV 1[5-9].%");
            assertThat(new PDFTextStripper().getText(card)).contains("because: rain is coming");
        }
    }

    @Test
    void aStreamAnswersLineByLineAndGoesOnAfterABadOne() throws Exception {
        String line =
                new ObjectMapper().readTree(Files.readString(Path.of(DEMO))).toString();
        input = line + "\n{bad\n\n" + line + "\n";
        assertThat(run("assess", "--stream")).isEqualTo(2);
        List<String> answers = out.toString().lines().toList();
        assertThat(answers).hasSize(3);
        assertThat(new ObjectMapper().readTree(answers.get(1)).get("line").intValue())
                .isEqualTo(2);
        assertThat(answers.get(0)).isEqualTo(answers.get(2));
        fresh();
        assertThat(run("advise", "--stream")).isEqualTo(2);
        assertThat(out.toString()).contains("KEEP");
        fresh();
        assertThat(run("match", "--stream")).isEqualTo(2);
        assertThat(out.toString()).contains("throwDifferenceM");
    }

    @Test
    void aCardIsWrittenSignedAndVerified() throws Exception {
        assertThat(run("card", DEMO, "--out", "card.pdf")).as(err.toString()).isZero();
        assertThat(out.toString()).contains("card.pdf");
        fresh();
        assertThat(run("verify", "card.pdf", "--json")).isZero();
        assertThat(json().get("unchanged").booleanValue()).isTrue();
        assertThat(json().get("knownKey").booleanValue()).isTrue();
        assertThat(json().fieldNames())
                .toIterable()
                .containsExactly(
                        "signed", "unchanged", "appended", "signedBy", "keyName", "keyCode", "knownKey", "signedAt");
        fresh();
        assertThat(run("verify", "card.pdf")).isZero();
        assertThat(out.toString())
                .contains("Unchanged since it was signed.")
                .contains("By a key known here: A. Marlow")
                .contains("Signed 18\u00a0March\u00a02027, 09:00 UTC");
    }

    /** Changed, extended, not signed: each has its own exit code and sentence. */
    @Test
    void whatWasDoneToACardHasItsExitCode() throws Exception {
        run("card", DEMO, "--out", "card.pdf");
        byte[] card = Files.readAllBytes(folder.resolve("card.pdf"));
        byte[] changed = card.clone();
        changed[1000] ^= 1;
        Files.write(folder.resolve("changed.pdf"), changed);
        Files.write(folder.resolve("more.pdf"), Arrays.copyOf(card, card.length + 20));
        try (PDDocument bare = new PDDocument()) {
            bare.addPage(new PDPage());
            bare.save(folder.resolve("bare.pdf").toFile());
        }
        fresh();
        assertThat(run("verify", "changed.pdf")).isEqualTo(1);
        assertThat(out.toString()).contains("Changed after it was signed");
        fresh();
        assertThat(run("verify", "more.pdf")).isEqualTo(5);
        assertThat(out.toString()).contains("Something was added");
        fresh();
        assertThat(run("verify", "bare.pdf")).isEqualTo(4);
        assertThat(out.toString()).isEqualToNormalizingNewlines("Not signed.\n");
    }

    /** One's own key stays known when its file is lost; another person's becomes known by --remember. */
    @Test
    void aKeyIsKnownOrRemembered() throws Exception {
        run("card", DEMO, "--out", "card.pdf");
        byte[] changed = Files.readAllBytes(folder.resolve("card.pdf"));
        changed[1000] ^= 1;
        Files.write(folder.resolve("changed.pdf"), changed);
        Path home = folder.resolve("home");
        Files.delete(home.resolve("signing-key.p12"));
        assertThat(run("verify", "card.pdf")).isZero();
        Files.delete(home.resolve("known-keys.txt"));
        fresh();
        assertThat(run("verify", "card.pdf")).isEqualTo(3);
        assertThat(out.toString()).contains("not known here");
        assertThat(run("verify", "changed.pdf", "--remember", "nobody")).isEqualTo(1);
        assertThat(home.resolve("known-keys.txt")).doesNotExist();
        assertThat(run("verify", "card.pdf", "--remember", "R. Fenwick")).isZero();
        assertThat(Files.readString(home.resolve("known-keys.txt"))).endsWith("\tR. Fenwick\n");
        fresh();
        assertThat(run("verify", "card.pdf")).isZero();
        assertThat(out.toString()).contains("By a key known here");
    }

    @Test
    void severalCardsGoIntoAFolderUnderDifferentNames() throws Exception {
        Files.createDirectory(folder.resolve("cards"));
        assertThat(run("card", DEMO, DEMO, "--out", "cards")).isZero();
        assertThat(folder.resolve("cards").resolve("setup.pdf")).exists();
        assertThat(folder.resolve("cards").resolve("setup-2.pdf")).exists();
        assertThat(run("card", DEMO, "--out", "one")).isZero();
        assertThat(folder.resolve("one").resolve("setup.pdf")).exists();
    }

    @Test
    void aClosedKeyIsOpenedByItsPassphraseAndTheCardSpeaksTheDriversLanguage() throws Exception {
        KeyRing ring = CardService.keys(new UserFolder(folder.resolve("home")));
        ring.signing("A. Marlow", "", Instant.parse("2027-03-18T09:00:00Z"));
        ring.protect("gate".toCharArray());
        assertThat(run("card", DEMO, "--out", "card.pdf")).isEqualTo(CommandFace.WRONG);
        assertThat(err.toString()).contains("closed by a passphrase").contains("--passphrase-file");
        assertThat(folder.resolve("card.pdf")).doesNotExist();
        Files.writeString(folder.resolve("secret.txt"), "gate\n");
        Files.writeString(folder.resolve("wrong.txt"), "fence\n");
        fresh();
        assertThat(run("card", DEMO, "--out", "card.pdf", "--passphrase-file", "wrong.txt"))
                .isEqualTo(CommandFace.WRONG);
        assertThat(err.toString()).contains("not the passphrase");
        fresh();
        assertThat(run("card", DEMO, "--out", "card.pdf", "--passphrase-file", "none.txt"))
                .isEqualTo(CommandFace.WRONG);
        assertThat(err.toString()).isEqualToNormalizingNewlines("none.txt: no such file\n");
        fresh();
        assertThat(run("card", DEMO, "--out", "card.pdf", "--passphrase-file", "home"))
                .isEqualTo(CommandFace.WRONG);
        assertThat(err.toString()).isEqualToNormalizingNewlines("home: cannot be read\n");
        fresh();
        assertThat(run("card", DEMO, "--out", "card.pdf", "--passphrase-file", "secret.txt", "--language", "de"))
                .isZero();
        try (var card = Loader.loadPDF(Files.readAllBytes(folder.resolve("card.pdf")))) {
            assertThat(new PDFTextStripper().getText(card))
                    .contains("Zapfwelle")
                    .contains("10,5");
            assertThat(card.getDocumentCatalog().getLanguage()).isEqualTo("de");
        }
        assertThat(run("card", DEMO, "--out", "card.pdf", "--language", "xx")).isEqualTo(CommandFace.WRONG);
    }

    @Test
    void theDemoWithoutAWindow() {
        assertThat(run("demo")).isZero();
        assertThat(err.toString()).isEqualToNormalizingNewlines("No window here.\n");
        assertThat(folder.resolve("evenfall-demo-card.pdf")).exists();
    }

    @Test
    void flightVaneAndDrag() throws Exception {
        assertThat(run(
                        "flight",
                        "--drag-per-m",
                        "0.1",
                        "--speed-m-s",
                        "30",
                        "--angle-deg",
                        "10",
                        "--height-m",
                        "1",
                        "--gravity-m-s2",
                        "9.81",
                        "--json"))
                .isZero();
        assertThat(json().get("landingM").doubleValue()).isCloseTo(13.81082, within(1e-4));
        assertThat(json().fieldNames())
                .toIterable()
                .containsExactly("landingM", "timeS", "impactSpeedMPerS", "impactAngleDeg");
        fresh();
        assertThat(run(
                        "flight",
                        "vane",
                        "--rpm",
                        "800",
                        "--radius-m",
                        "0.4",
                        "--drop-radius-m",
                        "0.1",
                        "--friction",
                        "0.3",
                        "--gravity-m-s2",
                        "9.81",
                        "--json"))
                .isZero();
        assertThat(json().get("radialMPerS").doubleValue()).isCloseTo(24.6776, within(1e-4));
        fresh();
        assertThat(run("flight", "drag", "--reynolds", "200", "--json")).isZero();
        assertThat(json().get("dragCoefficient").doubleValue()).isCloseTo(0.7756342422, within(1e-9));
    }

    @Test
    void matchAndAdviseInWords() {
        assertThat(run("match", DEMO)).isZero();
        assertThat(out.toString()).contains("Granular urea, medium").contains("Its settings should hold");
        fresh();
        assertThat(run("advise", DEMO)).isZero();
        assertThat(out.toString()).contains("Keep the settings");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "assess none.json|none.json|no such file",
                "assess bad.json|bad.json|line 1",
                "assess version.json|/evenfall|allowed: 1",
                "assess word.json|/start/drivingPattern|ROUND_AND_ROUND",
                "assess|evenfall assess|name a setup file",
                "card none.json --out c.pdf|none.json|no such file",
                "card bad.json|evenfall card|--out",
                "verify none.pdf|none.pdf|no such file",
                "verify bad.json|bad.json|PDF",
                "flight --speed-m-s 30|evenfall flight|--drag-per-m",
                "flight --drag-per-m 0.1 --speed-m-s 300 --angle-deg 0 --height-m 1|--speed-m-s: 300.0|0 to 200",
                "flight drag --reynolds -5|--reynolds: -5.0|0.0001 to 200000",
                "flight --diameter-mm x|evenfall flight|x",
                "trays|evenfall trays|plan, overlap, compare or first-move",
                "trays plan|--width-m|4 to 60",
                "trays plan --width-m 28 --rate-kg-ha 2|--rate-kg-ha: 2.0|5 to 1000",
                "trays plan --width-m 28 --rate-kg-ha 150 --trays 4|--trays: 4.0|5 to 33",
                "trays plan --width-m 28 --rate-kg-ha 150 --nitrogen-percent 61|--nitrogen-percent: 61.0|1 to 60",
                "trays overlap none.csv --width 24 --driving round-and-round|none.csv|no such file",
                "trays overlap line.csv --width 0 --driving round-and-round|--width: 0.0|0.01 to 1000",
                "trays overlap line.csv --width 24 --driving sideways|sideways|back-and-forth",
                "trays overlap line.csv --width 24 --driving round-and-round|line 3, column amount|\"x\" is not a number",
                "nonsense|evenfall|nonsense",
                "none.json|evenfall|none.json",
                "bad.json line.csv|evenfall|line.csv"
            })
    void everyErrorIsOneClearLine(String call, String place, String problem) throws Exception {
        Files.writeString(folder.resolve("bad.json"), "{bad");
        Files.writeString(folder.resolve("line.csv"), "position,amount\n-3,1\n0,x\n3,1\n");
        Files.writeString(folder.resolve("version.json"), "{\"evenfall\":7}");
        Files.writeString(folder.resolve("word.json"), "{\"evenfall\":1,\"start\":{\"drivingPattern\":\"UP\"}}");
        assertThat(run(call.split(" "))).isEqualTo(2);
        assertThat(err.toString().lines()).as(err.toString()).hasSize(1);
        assertThat(err.toString()).contains(place).contains(problem).doesNotContain("\tat ");
        assertThat(folder.resolve("c.pdf")).doesNotExist();
    }

    @Test
    void aSetupThatIsNamedAloneIsOpenedByTheWizard() {
        assertThat(run(DEMO)).isEqualTo(2);
        assertThat(opened).contains(Path.of(DEMO));
        assertThat(err.toString()).contains("No window here.");
    }

    @Test
    void whatCannotBeWrittenIsReportedAndNothingIsOverwritten() throws Exception {
        Path blocked = Files.writeString(folder.resolve("blocked"), "a file, not a folder");
        assertThat(run("card", DEMO, "--out", blocked.resolve("card.pdf").toString()))
                .isEqualTo(2);
        assertThat(err.toString().lines()).hasSize(1);
        assertThat(Files.readString(blocked)).isEqualTo("a file, not a folder");
    }

    /** The published one-direction overlap (spreval, see the overlap table of the tests), through the command. */
    @Test
    void aSinglePassIsOverlapped() throws Exception {
        Path line = Files.writeString(
                folder.resolve("line.csv"),
                "position,amount\n25,.03\n-35,.10\n-25,.21\n-15,.24\n-5,.28\n5,.23\n15,.21\n");
        assertThat(run("trays", "overlap", line.toString(), "--width", "50", "--driving", "round-and-round", "--json"))
                .isZero();
        assertThat(json().at("/positions").toString()).isEqualTo("[5.0,15.0,25.0,35.0,45.0]");
        assertThat(json().at("/overlapped/1").doubleValue()).isCloseTo(0.31, within(1e-9));
        assertThat(json().at("/mean").doubleValue()).isCloseTo(0.26, within(1e-9));
        assertThat(json().at("/cvPercent").doubleValue()).isCloseTo(12.96, within(0.1));
        fresh();
        assertThat(run("trays", "overlap", line.toString(), "--width", "50", "--driving", "back-and-forth", "--scan"))
                .isZero();
        assertThat(out.toString()).contains("Widths with a CV of at most 10 %").contains("Half-rate width");
        fresh();
        // semicolons and a decimal comma
        Files.writeString(line, "position;amount\n-2;0\n-1,5;1,5\n0;2\n1,5;1,5\n2;0\n");
        assertThat(run("trays", "overlap", line.toString(), "--width", "3", "--driving", "back-and-forth", "--json"))
                .isZero();
        assertThat(json().at("/leftRightPercent").doubleValue()).isCloseTo(0, within(1e-9));
    }

    /** 150 kg/ha, 0.25 m², d50 3.3 mm, 1300 kg/m³, g 1.2: counting noise of one run 8.7 % (computed from the definition). */
    @Test
    void theTrayPlanFromOptionsOrASetup() throws Exception {
        assertThat(run(
                        "trays",
                        "plan",
                        "--width-m",
                        "28",
                        "--rate-kg-ha",
                        "150",
                        "--d50-mm",
                        "3.3",
                        "--density-kg-m3",
                        "1300",
                        "--json"))
                .isZero();
        assertThat(json().at("/plan/countingNoisePercent").doubleValue()).isCloseTo(8.7, within(0.05));
        assertThat(json().at("/layout/positionsM/0").doubleValue()).isEqualTo(-14);
        assertThat(json().at("/layout/positionsM")).hasSize(9);
        // three passes of 28 m over 100 m, so many times
        assertThat(json().at("/strip/productUsedKg").doubleValue())
                .isCloseTo(126 * json().at("/plan/runsNeeded").intValue(), within(1e-9));
        assertThat(json().at("/strip/nitrogenPerRunKgPerHa").isNull()).isTrue();
        fresh();
        assertThat(run("trays", "plan", DEMO)).isZero();
        assertThat(out.toString())
                .contains("Tray 7")
                .contains("Pass 3")
                .contains("Runs of the three passes")
                .contains("80\u00a0kg/ha of nitrogen to this strip");
        fresh();
        assertThat(run("trays plan --width-m 36 --rate-kg-ha 150 --nitrogen-percent 46".split(" ")))
                .isZero();
        assertThat(out.toString())
                .contains("Tray 13")
                .doesNotContain("apart")
                .contains("adds 69\u00a0kg/ha of nitrogen")
                .contains("3 runs make 207\u00a0kg/ha")
                .contains("486\u00a0kg of product");
        assertThat(out.toString().indexOf("One run is enough"))
                .isPositive()
                .isLessThan(out.toString().indexOf("Runs of the three passes"));
        fresh();
        assertThat(run("trays plan --width-m 36 --rate-kg-ha 150 --trays 7".split(" ")))
                .isZero();
        assertThat(out.toString())
                .contains("7 trays are up to 6.0\u00a0m apart")
                .contains("adds 150\u00a0kg/ha of product");
    }

    @Test
    void theTrayPlanStepsAsideFromTheWheelsAndReadsATube() throws Exception {
        assertThat(run(
                        "trays plan --width-m 10 --rate-kg-ha 150 --trays 11 --tube-bore-mm 20 --reading-step-mm 1 --json"
                                .split(" ")))
                .isZero();
        assertThat(json().at("/layout/positionsM/6").doubleValue()).isCloseTo(1.45, within(1e-9));
        assertThat(json().at("/layout/movedM/4").doubleValue()).isCloseTo(-0.45, within(1e-9));
        // 1 mm of a 20 mm tube at 0.75 kg/L is 0.2356 g, read to 1/sqrt(12) of it
        assertThat(json().at("/plan/readingNoisePercent").doubleValue())
                .isCloseTo(
                        100
                                * 0.075
                                * Math.PI
                                / Math.sqrt(12)
                                / json().at("/plan/catchPerRunG").doubleValue(),
                        within(1e-6));
    }

    @Test
    void theFirstMoveIsPrintedForTheField() throws Exception {
        assertThat(run("trays", "first-move", DEMO)).isZero();
        assertThat(out.toString())
                .contains(
                        "First move",
                        "If trays 3 + 4 + 5 hold more than ",
                        "If trays 1 + 2 + 3 and trays 5 + 6 + 7 differ",
                        ": turn “long vane” from 10.5 to 11.5.",
                        "One move only.");
        fresh();
        assertThat(run("trays", "first-move", DEMO, "--json")).isZero();
        assertThat(json().at("/firstMove/aboveG").doubleValue())
                .isGreaterThan(json().at("/firstMove/belowG").doubleValue());
        assertThat(json().at("/firstMove/whenAbove/wider").asBoolean()).isTrue();
        assertThat(json().at("/firstMove/whenBelow/wider").asBoolean()).isFalse();
        fresh();
        Path empty = Files.writeString(folder.resolve("empty.json"), "{\"evenfall\": 1}");
        assertThat(run("trays", "first-move", empty.toString())).isEqualTo(CommandFace.WRONG);
        assertThat(err.toString()).contains("First enter tramline width, rate and tray");
    }

    @Test
    void twoSetupsAreCompared() throws Exception {
        assertThat(run("trays", "compare", DEMO, DEMO, "--json")).isZero();
        assertThat(json().at("/change/chanceSecondMoreEven").doubleValue()).isEqualTo(0.5);
        assertThat(json().at("/first/cvPercent")).isEqualTo(json().at("/second/cvPercent"));
        fresh();
        assertThat(run("trays", "compare", DEMO, DEMO.replace("setup.json", "unfinished.json")))
                .isEqualTo(CommandFace.WRONG);
        assertThat(err.toString()).contains("/trays/tests");
    }

    @Test
    void helpAndVersion() {
        assertThat(run("--help")).isZero();
        assertThat(out.toString()).contains("assess").contains("Exit codes");
        fresh();
        assertThat(run("--version")).isZero();
        assertThat(out.toString()).contains("Evenfall");
    }
}
