package org.evenfall.setup;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.evenfall.finding.Finding;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Every finding that a limit, a published figure or a model is behind names its source; the others are listed here. */
class FindingSourcesTest {

    /** The source is added to the finding in a later statement. */
    private static final Set<String> SOURCED_LATER = Set.of(
            "trays.windStop",
            "trays.windWarn",
            "trays.windNote",
            "trays.evenGood",
            "trays.even",
            "trays.probablyEven",
            "trays.notEvenEnough",
            "trays.doNotSpread",
            "product.notOneHump",
            "product.fitOff",
            "match.outOfReach",
            "match.outOfReachTray",
            "match.outOfReachProved",
            "match.keptSame",
            "match.keptDenseSame",
            "match.keptWorse",
            "match.keptDense",
            "match.start.keep",
            "match.start.wider",
            "match.start.narrower");

    /** Calls whose key comes in as an argument, by file: what they are given is in the list as well. */
    private static final Map<String, Integer> KEY_FROM_OUTSIDE = Map.of(
            "MachineCheckFindings",
            3,
            "HeightAssessor",
            1,
            "ReadingPass",
            2,
            "AdviceFindings",
            2,
            "KnownFaultFindings",
            1,
            "BucketConditions",
            2);

    /** Listed keys that are put into a variable first. */
    private static final Set<String> KEY_IN_VARIABLE =
            Set.of("yard.guards", "yard.failed", "entry.impossible", "entry.unusual");

    private static final Path ROOM = Path.of("src", "main", "java", "org", "evenfall", "setup");

    private static final Path TABLE =
            Path.of("src", "test", "resources", "org", "evenfall", "setup", "finding-sources.csv");

    private static final Pattern CALL =
            Pattern.compile("(?<![\\w.])(?:Finding\\s*\\.\\s*)?(?:warn|stop|note|missing|open)\\(|new Finding\\(");

    /** In quotes, with a point, and not a pointer, a word of choice or a source. */
    private static final Pattern KEY =
            Pattern.compile("\"((?!choice\\.|source\\.|word\\.|direction\\.)[a-z]+\\.[\\w.]+)\"");

    private static final Pattern FROM = Pattern.compile("\\.from\\(\\s*(?:\"(source\\.\\w+)\"|([A-Z_]+))\\s*\\)");

    /** Keys that a call names, whether its source is given in the same statement, and which, where it is one key. */
    private record Call(Set<String> keys, boolean sourced, String source) {}

    /** The source key in a chain of calls, a constant of the file resolved; else empty. */
    private static String source(String chain, String code) {
        Matcher from = FROM.matcher(chain);
        if (!from.find()) {
            return "";
        }
        if (from.group(1) != null) {
            return from.group(1);
        }
        Matcher constant =
                Pattern.compile("String " + from.group(2) + " = \"([\\w.]+)\"").matcher(code);
        return constant.find() ? constant.group(1) : "";
    }

    private static List<Call> calls(String code) {
        List<Call> calls = new ArrayList<>();
        Matcher call = CALL.matcher(code);
        while (call.find()) {
            String before = code.substring(Math.max(0, call.start() - 20), call.start());
            if (before.matches("(?s).*(Finding|void) $")) {
                continue; // a helper is declared
            }
            Set<String> keys = new TreeSet<>();
            Matcher key = KEY.matcher(arguments(code, call.end()));
            while (key.find()) {
                keys.add(key.group(1));
            }
            String chain = code.substring(call.start(), end(code, call.end()));
            calls.add(new Call(keys, chain.contains(".from("), source(chain, code)));
        }
        return calls;
    }

    /** File and key of each finding that names no source and is not listed. */
    private static List<String> unsourced(String name, String code) {
        List<String> found = new ArrayList<>();
        List<Call> calls = calls(code).stream().filter(call -> !call.sourced()).toList();
        for (Call call : calls) {
            call.keys().stream()
                    .filter(key -> !SOURCED_LATER.contains(key) && !WithoutSource.allows(key))
                    .forEach(key -> found.add(name + " " + key));
        }
        long open = calls.stream().filter(call -> call.keys().isEmpty()).count();
        if (open > KEY_FROM_OUTSIDE.getOrDefault(name, 0)) {
            found.add(name + ": " + open + " findings whose key comes from outside");
        }
        return found;
    }

    private static String arguments(String code, int from) {
        int depth = 1;
        int at = from;
        while (depth > 0 && at < code.length()) {
            depth += code.charAt(at) == '(' ? 1 : code.charAt(at) == ')' ? -1 : 0;
            at++;
        }
        return code.substring(from, at);
    }

    /** End of the chain of calls on what is made: the first bracket or mark at depth 0 that no point follows. */
    private static int end(String code, int from) {
        int at = from + arguments(code, from).length();
        Matcher next = Pattern.compile("\\s*(\\)\\s*)?\\.(at|from)\\(").matcher(code);
        while (next.find(at) && next.start() == at) {
            at = next.end() + arguments(code, next.end()).length();
        }
        Matcher other = Pattern.compile("\\s*:\\s*Finding").matcher(code);
        // both halves of a choice in brackets have the source behind the bracket
        return other.find(at) && other.start() == at ? Math.max(at, code.indexOf(';', at)) : at;
    }

    private static Map<String, String> files() throws Exception {
        try (Stream<Path> files = Files.list(ROOM)) {
            return files.filter(file -> file.toString().endsWith(".java"))
                    .collect(Collectors.toMap(
                            file -> file.getFileName().toString().replace(".java", ""), FindingSourcesTest::text));
        }
    }

    private static String text(Path file) {
        try {
            return Files.readString(file);
        } catch (java.io.IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
    }

    @Test
    void aFindingOfALimitNamesItsSource() throws Exception {
        List<String> found = new ArrayList<>();
        files().forEach((name, code) -> found.addAll(unsourced(name, code)));
        assertThat(found).isEmpty();
    }

    /** Which finding has which source, to be read as a whole; a wanted change: {@code -Dgolden=write}. */
    @Test
    void everyFindingHasItsOwnSource() throws Exception {
        Set<String> lines = new TreeSet<>();
        for (String code : files().values()) {
            for (Call call : calls(code)) {
                if (!call.source().isEmpty()) {
                    call.keys().forEach(key -> lines.add(key + "," + call.source()));
                }
            }
        }
        if ("write".equals(System.getProperty("golden"))) {
            Files.write(TABLE, lines);
        }
        assertThat(lines).hasSizeGreaterThan(70);
        assertThat(String.join("\n", lines)).isEqualTo(Files.readString(TABLE).strip());
    }

    @Test
    void aFindingWithoutSourceThatIsNotListedIsFound() {
        assertThat(unsourced("New", "add(Finding.warn(Step.RATE, \"rate.new\", Arg.count(1)).at(\"/x\"));"))
                .containsExactly("New rate.new");
        assertThat(unsourced("New", "add(Finding.warn(Step.RATE, \"rate.new\").from(\"source.new\").at(\"/x\"));"))
                .isEmpty();
        assertThat(unsourced("New", "add(Finding.warn(Step.RATE, key).at(\"/x\"));"))
                .hasSize(1);
        assertThat(unsourced("New", "add((a ? Finding.stop(s, \"a.b\") : Finding.warn(s, \"a.c\")).from(x).at(y));"))
                .isEmpty();
    }

    /** A key leaves the list when no finding has it any more, or when each that has it names its source. */
    @Test
    void theListHoldsNothingElse() throws Exception {
        String all = String.join("\n", files().values());
        Set<String> unsourced = calls(all).stream()
                .filter(call -> !call.sourced())
                .flatMap(call -> call.keys().stream())
                .collect(Collectors.toSet());
        assertThat(WithoutSource.all().stream().filter(key -> !key.endsWith(".") && !KEY_IN_VARIABLE.contains(key)))
                .isSubsetOf(unsourced);
        assertThat(KEY_IN_VARIABLE).allMatch(key -> all.contains("\"" + key + "\""));
    }

    @ParameterizedTest
    @ValueSource(strings = {"demo", "uneven", "oneOutlet", "blank"})
    void soDoTheFindingsOfADemo(String name) {
        TypedSetup typed = switch (name) {
            case "demo" -> TypedSetup.demo();
            case "uneven" -> TypedSetup.uneven();
            case "oneOutlet" -> TypedSetup.oneOutlet();
            default -> TypedSetup.blank();
        };
        assertThat(Assessor.assess(typed.setup()).findings())
                .filteredOn(finding -> finding.source().isEmpty())
                .extracting(Finding::key)
                .allMatch(WithoutSource::allows, "may go without a source");
    }
}
