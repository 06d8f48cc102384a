package org.evenfall.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.PrintWriter;
import java.io.SequenceInputStream;
import java.io.StringWriter;
import java.io.Writer;
import java.lang.management.ManagementFactory;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.ResourceBundle;
import java.util.concurrent.TimeUnit;
import java.util.stream.IntStream;
import org.evenfall.finding.Sentences;
import org.evenfall.store.SetupJson;
import org.evenfall.store.UserFolder;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Hostile input: each call ends soon, with one line that names place and limit, and never with a crash. */
@Timeout(value = 120, threadMode = Timeout.ThreadMode.SEPARATE_THREAD)
class EdgeCasesTest {

    private static final double MOST_CPU_SECONDS = 5;
    private static final Path DEMO = Path.of("demo", "setup.json").toAbsolutePath();

    @TempDir
    private Path folder;

    private final StringWriter out = new StringWriter();
    private final StringWriter err = new StringWriter();
    private InputStream input = InputStream.nullInputStream();
    private Writer output = out;

    private int run(String... args) {
        CommandContext context = new CommandContext(
                input,
                new PrintWriter(output),
                new PrintWriter(err),
                folder,
                new UserFolder(folder.resolve("home")),
                Clock.fixed(Instant.parse("2027-03-18T09:00:00Z"), ZoneOffset.UTC),
                () -> new Sentences(ResourceBundle.getBundle("org.evenfall.words", Locale.ENGLISH), Locale.UK),
                new SetupJson(),
                file -> Optional.of("No window here."));
        long before = ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
        int code = CommandFace.run(context, List.of(args));
        long nanos = ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime() - before;
        assertThat(nanos / (double) TimeUnit.SECONDS.toNanos(1))
                .as("CPU time, s")
                .isLessThan(MOST_CPU_SECONDS);
        return code;
    }

    /** A short word for a long text, so that a table can hold it. */
    private static String grown(String text) {
        return text.replace("BLANKS", " ".repeat(1_000_000))
                .replace("DEEP", "[".repeat(1500) + "]".repeat(1500))
                .replace("LETTERS", "W".repeat(20_001))
                .replace("DIGITS", "9".repeat(1001))
                .replace("KEY", "k".repeat(1001))
                .replace("ITEMS", "[1" + ",1".repeat(1000) + "]")
                .replace("HUGE", "\"" + "a".repeat(4_000_000) + "\"");
    }

    private static String setup(String inside) {
        return "{\"evenfall\":1," + grown(inside) + "}";
    }

    private String refusal() {
        assertThat(err.toString().lines()).as("one line").hasSize(1);
        assertThat(err.toString())
                .hasSizeLessThan(700)
                .doesNotContain("Exception", "java.", "com.fasterxml", "NullPointer", "internal error");
        return err.toString();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "\"start\":{\"tramlineWidth\":1e2000000000}|/start/tramlineWidth|400",
                "\"start\":{\"tramlineWidth\":1e-2000000000}|/start/tramlineWidth|400",
                "\"start\":{\"tramlineWidth\":1e100000000}|/start/tramlineWidth|400",
                "\"start\":{\"tramlineWidth\":1e99999999999}|line 1|400",
                "\"start\":{\"tramlineWidth\":DIGITS}|line 1|1000",
                "\"start\":{\"tramlineWidth\":\"BLANKSx\"}|/start/tramlineWidth|200",
                "\"start\":{\"tramlineWidth\":\"1BLANKS\"}|/start/tramlineWidth|200",
                "\"start\":{\"farm\":\"LETTERS\"}|/start/farm|20000",
                "\"start\":{\"farm\":\"a\\ud800b\"}|/start/farm|lone surrogate",
                "\"zz\":{\"a/b\":[0,1e401]}|/zz/a~1b/1|400",
                "\"zz\":ITEMS|/zz|1000",
                "\"zz\":DEEP|line 1|200",
                "\"KEY\":1|line 1|1000",
                "\"zz\":HUGE|hostile.json|4 MB",
                "\"match\":{\"settings\":{\"levers\":{\"long vane\":[]}}}|/match/settings/levers/long vane|a number or a text",
                "\"machine\":{\"levers\":ITEMS}|/machine/levers|1000"
            })
    void aSetupIsRefusedWithPlaceAndLimit(String inside, String place, String limit) throws Exception {
        Files.writeString(folder.resolve("hostile.json"), setup(inside));
        for (String command : List.of("assess", "advise", "match")) {
            err.getBuffer().setLength(0);
            assertThat(run(command, "hostile.json")).as(command).isEqualTo(CommandFace.WRONG);
            assertThat(refusal()).contains("hostile.json").contains(place).contains(limit);
        }
        assertThat(run("card", "hostile.json", "--out", "card.pdf")).isEqualTo(CommandFace.WRONG);
        assertThat(folder.resolve("card.pdf")).doesNotExist();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "\"match\":{\"settings\":{\"levers\":{\"long vane\":null}}}",
                "\"trays\":{\"tests\":[{\"settings\":{\"levers\":{\"long vane\":null}}}]}"
            })
    void aLeverWithoutAValueIsNotTypedYet(String inside) throws Exception {
        Files.writeString(folder.resolve("null.json"), setup(inside));
        assertThat(run("assess", "null.json")).as(err.toString()).isZero();
        assertThat(err.toString()).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({
        "-1e12, line 2, -1000 to 1000",
        "-1e93, line 2, -1000 to 1000",
        "-1001, line 2, -1000 to 1000",
        "-3.000001, column position, closer than 0.01",
        "-900, --width, allowed is"
    })
    void aFarTrayIsRefused(String position, String place, String limit) throws Exception {
        Files.writeString(folder.resolve("line.csv"), "position,amount\n" + position + ",1\n-3,5\n0,9\n3,5\n");
        for (String driving : List.of("back-and-forth", "round-and-round")) {
            err.getBuffer().setLength(0);
            assertThat(run("trays", "overlap", "line.csv", "--width", "0.5", "--driving", driving, "--scan"))
                    .isEqualTo(CommandFace.WRONG);
            assertThat(refusal()).contains(place).contains(limit);
        }
    }

    /** The longest text that is taken, as one word: it is broken over the lines and pages of the card. */
    @Test
    void aLongWordOnTheCard() throws Exception {
        run("assess", DEMO.toString());
        Files.writeString(folder.resolve("word.json"), Files.readString(DEMO).replace("S-1042", "W".repeat(20_000)));
        assertThat(run("card", "word.json", "--out", "card.pdf"))
                .as(err.toString())
                .isZero();
        assertThat(folder.resolve("card.pdf")).exists();
    }

    @Test
    void aStreamAnswersEachLineWhateverIsInTheOthers() throws Exception {
        List<String> lines = List.of(
                "{bad",
                setup("\"zz\":" + "[".repeat(1500)),
                setup("\"start\":{\"tramlineWidth\":1e2000000000}"),
                setup("\"zz\":HUGE"),
                "\ufeff",
                setup("\"start\":{\"farm\":\"\\udc00\"}"),
                "null",
                setup("\"start\":{\"farm\":\"last\"}"));
        byte[] bad = setup("\"start\":{\"farm\":\"\u00e9\"}").getBytes(StandardCharsets.ISO_8859_1);
        input = new SequenceInputStream(
                new ByteArrayInputStream((String.join("\r\n", lines) + "\n").getBytes(StandardCharsets.UTF_8)),
                new ByteArrayInputStream(bad));
        assertThat(run("assess", "--stream")).isEqualTo(CommandFace.WRONG);
        List<String> answers = out.toString().lines().toList();
        assertThat(answers).hasSize(9);
        for (int number : List.of(1, 2, 3, 4, 5, 6, 7, 9)) {
            assertThat(answers.get(number - 1)).contains("\"error\":").contains("\"line\":" + number);
        }
        assertThat(answers.get(2)).contains("\"pointer\":\"/start/tramlineWidth\"");
        assertThat(answers.get(3)).contains("4 MB");
        assertThat(answers.get(7)).doesNotContain("\"error\":").contains("\"findings\"");
        assertThat(answers.get(8)).contains("UTF-8").doesNotContain("\ufffd");
        assertThat(err.toString()).isEmpty();
    }

    /** A writer of which only a few letters can be written, as a full disk is. */
    private static final class Full extends Writer {

        @Override
        public void write(char[] letters, int from, int count) throws IOException {
            throw new IOException("No space left on device");
        }

        @Override
        public void flush() {}

        @Override
        public void close() {}
    }

    @Test
    void whatCannotBeWrittenEndsTheCall() throws Exception {
        for (List<String> args : List.of(
                List.of("assess", DEMO.toString()),
                List.of("assess", DEMO.toString(), "--json"),
                List.of("assess", DEMO.toString(), DEMO.toString()),
                List.of("--help"),
                List.of("trays", "plan", "--help"),
                List.of("--version"))) {
            output = new Full();
            err.getBuffer().setLength(0);
            assertThat(run(args.toArray(new String[0]))).as(args.toString()).isEqualTo(CommandFace.WRONG);
            assertThat(refusal()).contains("standard output cannot be written");
        }
    }

    @Test
    void aStreamStopsAtTheFirstLineThatCannotBeWritten() throws Exception {
        output = new Full();
        byte[] lines = (setup("\"zz\":1") + "\n").repeat(20_000).getBytes(StandardCharsets.UTF_8);
        ByteArrayInputStream rest = new ByteArrayInputStream(lines);
        input = rest;
        assertThat(run("assess", "--stream")).isEqualTo(CommandFace.WRONG);
        assertThat(rest.available()).isGreaterThan(lines.length / 2);
    }

    @Test
    void aBatchNamesWhatItWroteBeforeAnError() throws Exception {
        Files.copy(DEMO, folder.resolve("good.json"));
        Files.writeString(folder.resolve("bad.json"), "{");
        assertThat(run("card", "good.json", "bad.json", "good.json", "--out", "cards"))
                .isEqualTo(CommandFace.WRONG);
        assertThat(out.toString().lines()).singleElement().asString().endsWith("good.pdf");
        assertThat(refusal()).contains("bad.json");
        assertThat(folder.resolve("cards").resolve("good.pdf")).exists();
        assertThat(folder.resolve("cards").resolve("good-2.pdf")).doesNotExist();
    }

    @ParameterizedTest
    @CsvSource({
        "card, self.pdf, self.pdf",
        "card, self.pdf, ./x/../self.pdf",
        "card, self-finding.pdf, self.pdf",
        "sheet, self.pdf, self.pdf",
        "report, self.pdf, self.pdf"
    })
    void aResultNeverReplacesWhatIsRead(String command, String from, String to) throws Exception {
        Files.createDirectory(folder.resolve("x"));
        Path file = Files.copy(DEMO, folder.resolve(from));
        assertThat(run(command, from, "--out", to)).isEqualTo(CommandFace.WRONG);
        assertThat(refusal()).contains("would replace the file that is read");
        assertThat(file).hasSameBinaryContentAs(DEMO);
    }

    @ParameterizedTest
    @CsvSource({
        "assess folder, it is a folder",
        "card folder --out a.pdf, it is a folder",
        "trays overlap folder --width 6 --driving round-and-round, it is a folder",
        "trays overlap binary --width 6 --driving round-and-round, not a text file in UTF-8",
        "assess binary, not a text file in UTF-8",
        "assess none, no such file",
        "assess na\u0000me, cannot be a file name here",
        "sheet DEMO --out folder, it is a folder",
        "report DEMO --out folder, it is a folder"
    })
    void aFileThatCannotBeUsedIsNamed(String call, String sentence) throws Exception {
        Files.createDirectory(folder.resolve("folder"));
        Files.write(folder.resolve("binary"), new byte[] {'p', (byte) 0xff, '\n'});
        assertThat(run(call.replace("DEMO", DEMO.toString()).split(" ", -1))).isEqualTo(CommandFace.WRONG);
        assertThat(refusal()).contains(sentence).matches("(?s).*(folder|binary|none|na.me).*");
    }

    @Test
    void noControlCharacterReachesTheTerminal() throws Exception {
        Files.writeString(
                folder.resolve("esc.json"),
                Files.readString(DEMO).replace("Thornmarsh Farm", "A\\u001b[31mB\\u009bC\\nD"));
        Files.writeString(folder.resolve("key.json"), setup("\"start\":{\"drivingPattern\":\"\\u001b[2J\\nx\"}"));
        assertThat(run("assess", "esc.json")).as(err.toString()).isZero();
        assertThat(out.toString().lines().findFirst().orElseThrow()).startsWith("A [31mB\ufffdC");
        assertThat(run("assess", "esc.json", "--json")).isZero();
        assertThat(run("assess", "key.json")).isEqualTo(CommandFace.WRONG);
        assertThat(run("assess", "e\u001b[31m\nf.json")).isEqualTo(CommandFace.WRONG);
        assertThat(run("assess", "--\u001b[31m\nf")).isEqualTo(CommandFace.WRONG);
        assertThat(err.toString().lines()).hasSize(3);
        assertThat((out.toString() + err)
                        .replace(System.lineSeparator(), "")
                        .replace("\n", "")
                        .chars()
                        .filter(Character::isISOControl))
                .isEmpty();
    }

    @Test
    void aByteOrderMarkCountsForNothing() throws Exception {
        Files.writeString(folder.resolve("bom.json"), "\ufeff" + Files.readString(DEMO));
        assertThat(run("assess", "bom.json")).as(err.toString()).isZero();
    }

    /** Long lists as far as they are taken: the assessment of each ends soon. */
    @Test
    void longListsAreAssessedSoon() throws Exception {
        String items =
                String.join(",", IntStream.range(0, 1000).mapToObj(i -> "{}").toList());
        String setup = setup("\"trays\":{\"tests\":[" + items + "]},\"match\":{\"library\":[" + items
                + "]},\"rate\":{\"bucketTests\":[" + items + "]}");
        Files.writeString(folder.resolve("long.json"), setup);
        assertThat(run("assess", "long.json", "--json")).isLessThan(2);
    }
}
