package org.evenfall.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.StringWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.evenfall.Readme;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import picocli.CommandLine;
import picocli.CommandLine.Model.OptionSpec;

/** The table of commands in the README names the commands and options that the program has, and no others. */
class ReadmeCommandsTest {

    private static final Pattern CELL_END = Pattern.compile("(?<!\\\\)\\|");
    private static final Pattern OPTION = Pattern.compile("--[a-z][a-z0-9-]*");
    private static final Pattern VALUES = Pattern.compile("(--[a-z-]+) ([a-z0-9-]+(?:\\|[a-z0-9-]+)+)");
    private static final Set<String> EVERYWHERE = Set.of("--help", "--version");

    @TempDir
    private Path folder;

    /**
     * What the README says of a command.
     *
     * @param options options
     * @param open whether there are more that it does not name
     */
    private record Named(Set<String> options, boolean open) {}

    private CommandLine program() {
        return CommandFace.line(
                new Commands(folder).context(new byte[0], new StringWriter(), new StringWriter()), List.of("--help"));
    }

    private static void collect(CommandLine command, String path, Map<String, CommandLine> all) {
        all.put(path, command);
        command.getSubcommands().forEach((name, below) -> collect(below, (path + " " + name).strip(), all));
    }

    private Map<String, CommandLine> commands() {
        Map<String, CommandLine> all = new TreeMap<>();
        collect(program(), "", all);
        return all;
    }

    private static Set<String> options(CommandLine command) {
        Set<String> names = new TreeSet<>();
        command.getCommandSpec().options().forEach(option -> names.add(option.longestName()));
        names.removeAll(EVERYWHERE);
        return names;
    }

    private static List<String> rows() throws Exception {
        List<String> lines = Readme.lines();
        return lines.subList(lines.indexOf("| command | does |") + 2, lines.size()).stream()
                .takeWhile(line -> line.startsWith("|"))
                .toList();
    }

    private static String command(String code, Map<String, CommandLine> commands) {
        String path = "";
        for (String word : code.split(" ")) {
            String longer = (path + " " + word).strip();
            path = commands.containsKey(longer) ? longer : path;
        }
        return path;
    }

    private static Set<String> options(String code) {
        Matcher options = OPTION.matcher(code);
        Set<String> found = new TreeSet<>();
        while (options.find()) {
            found.add(options.group());
        }
        return found;
    }

    /** The commands of all rows; a piece of code without a command belongs to each command of its row. */
    private Map<String, Named> named() throws Exception {
        Map<String, CommandLine> commands = commands();
        Map<String, Named> named = new LinkedHashMap<>();
        for (String row : rows()) {
            Map<String, Named> inRow = new LinkedHashMap<>();
            Set<String> forAll = new TreeSet<>();
            String[] cells = CELL_END.split(row);
            for (String code : Readme.code(cells[1])) {
                String path = command(code, commands);
                if (path.isEmpty()) {
                    forAll.addAll(options(code));
                } else {
                    inRow.put(path, new Named(options(code), code.endsWith("…")));
                }
            }
            Readme.code(cells[2]).stream()
                    .filter(code -> code.startsWith("--"))
                    .forEach(code -> forAll.addAll(options(code)));
            inRow.values().forEach(one -> one.options().addAll(forAll));
            inRow.forEach((path, one) ->
                    assertThat(named.put(path, one)).as(path + " twice").isNull());
        }
        return named;
    }

    @Test
    void theTableNamesEveryCommandAndOptionAndNoOther() throws Exception {
        Map<String, Named> named = named();
        List<String> wrong = new ArrayList<>();
        commands().forEach((path, command) -> {
            Named one = named.get(path);
            boolean group = !command.getSubcommands().isEmpty() && one == null;
            if (one == null && !group) {
                wrong.add(path + " is not in the README");
            }
            if (one != null) {
                Set<String> more = new TreeSet<>(one.options());
                more.removeAll(options(command));
                Set<String> less = options(command);
                less.removeAll(one.open() ? less : one.options());
                if (!more.isEmpty() || !less.isEmpty()) {
                    wrong.add(path + ": only in the README " + more + ", only in the program " + less);
                }
            }
        });
        assertThat(wrong).isEmpty();
        assertThat(named).hasSizeGreaterThan(15);
    }

    @Test
    void theValuesOfAnOptionAreThoseOfTheProgram() throws Exception {
        Map<String, CommandLine> commands = commands();
        int found = 0;
        for (String row : rows()) {
            for (String code : Readme.code(row.replace("\\|", "|"))) {
                Matcher values = VALUES.matcher(code);
                while (values.find()) {
                    OptionSpec option = commands.get(command(code, commands))
                            .getCommandSpec()
                            .findOption(values.group(1));
                    List<String> allowed = new ArrayList<>();
                    for (String word : option.completionCandidates()) {
                        if (!word.equals("UNANSWERED")) {
                            allowed.add(word.toLowerCase(Locale.ROOT).replace('_', '-'));
                        }
                    }
                    assertThat(values.group(2).split("\\|")).as(code).containsExactlyInAnyOrderElementsOf(allowed);
                    found++;
                }
            }
        }
        assertThat(found).isGreaterThan(4);
    }

    @Test
    void everyCommandHasItsOwnHelp() {
        Map<String, CommandLine> all = commands();
        String whole = new Commands(folder).run("--help").out();
        all.forEach((path, command) -> {
            List<String> call = new ArrayList<>(path.isEmpty() ? List.of() : List.of(path.split(" ")));
            if (call.size() == 1) {
                assertThat(whole).containsPattern("(?m)^ +" + path + "\\b");
            }
            // a parent asks for its parameters before it gives its command
            if (call.size() == 2 && call.get(0).equals("farm")) {
                call.add(1, folder.toString());
            }
            call.add("--help");
            Commands.Answer help = new Commands(folder).run(call.toArray(new String[0]));
            assertThat(help.code()).as(path).isZero();
            assertThat(help.out()).startsWith(("Usage: evenfall " + path).strip());
        });
    }
}
