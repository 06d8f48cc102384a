package org.evenfall;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The rows of the table of README's section "Published sources", and the texts that are compared with them. */
record PublishedSources(List<Row> rows) {

    private static final List<String> KNOWN =
            List.of("read", "abstract", "second hand", "press", "from memory", "run", "not noted");

    /** Marks of a comment that names a source; one in quotes is a text of the program. */
    private static final Pattern MARK = Pattern.compile("(?<!\")Source( \\(from memory\\))?: ");

    /** Where the text on a source ends. */
    private static final Pattern END =
            Pattern.compile("(?<!\")Source( \\(from memory\\))?: |Assumption: |Common practice: |Exact: |<p>|@\\w+ ");

    /** A comment; a string is consumed first, so that none begins in it. */
    private static final Pattern COMMENT = Pattern.compile("\"\"\"[\\s\\S]*?\"\"\"|\"(?:[^\"\\\\\\n]++|\\\\.)*+\""
            + "|'(?:[^'\\\\\\n]|\\\\.)[^'\\n]{0,5}'|(/\\*[\\s\\S]*?\\*/|//[^\\n]*(?:\\n[ \\t]*//[^\\n]*)*+)");

    /** What only a publication has: a year, a document number, the name of a person, an institution or a book. */
    private static final Pattern PUBLICATION =
            Pattern.compile("\\b(?:19|20)\\d\\d\\b|\\bdoi\\b|\\b\\p{Lu}(?:\\p{Ll}{2,}|\\p{Lu}{2,})");

    private static final Pattern YEAR = Pattern.compile("\\b(?:19|20)\\d\\d\\b");

    /** Begins of sentences that name no publication. */
    private static final List<String> OURS = List.of(
            "assumption, ours",
            "common practice, no published source",
            "computed from",
            "flight model",
            "model of",
            "model on top of",
            "statistical model",
            "this program’s flight model");

    /** A source: its name on screens and in comments, what is published, how it is known, its use, where it is checked. */
    record Row(String name, String publication, String known, String usedFor, String checkedIn) {

        boolean fromMemory() {
            return known.startsWith("from memory");
        }

        /** Names of test classes and data files, in backticks. */
        List<String> files() {
            return Pattern.compile("`([^`]+)`")
                    .matcher(checkedIn)
                    .results()
                    .map(found -> found.group(1))
                    .toList();
        }
    }

    static PublishedSources of(String readme) {
        String section = readme.split("\\n## Published sources\\n", -1)[1].split("\\n##? ", -1)[0];
        List<Row> rows = new ArrayList<>();
        for (String line : section.split("\n", -1)) {
            if (line.startsWith("| ")) {
                String[] cells = line.substring(2, line.length() - 2).split(" \\| ", -1);
                rows.add(new Row(cells[0], cells[1], cells[2], cells[3], cells[4]));
            }
        }
        return new PublishedSources(rows.subList(1, rows.size()));
    }

    /** What is wrong with the rows themselves, given name and text of each test and data file. */
    List<String> wrongRows(Map<String, String> tests) {
        List<String> wrong = new ArrayList<>();
        TreeSet<String> names = new TreeSet<>(String.CASE_INSENSITIVE_ORDER);
        String before = "";
        for (Row row : rows) {
            if (!names.add(row.name())) {
                wrong.add(row.name() + " is twice in the table");
            } else if (before.compareToIgnoreCase(row.name()) > 0) {
                wrong.add(row.name() + " is not in its place of the alphabet");
            }
            before = row.name();
            if (KNOWN.stream().noneMatch(row.known()::startsWith)) {
                wrong.add(row.name() + ": known how? " + row.known());
            }
            for (String file : row.files()) {
                String end = "/" + (file.contains(".") ? file : file + ".java");
                List<String> texts = tests.entrySet().stream()
                        .filter(test -> test.getKey().endsWith(end))
                        .map(test -> oneLine(test.getValue()))
                        .toList();
                if (texts.isEmpty()) {
                    wrong.add(row.name() + ": there is no " + file);
                } else if (texts.stream().noneMatch(text -> text.contains(row.name()))) {
                    wrong.add(row.name() + " is not named in " + file);
                }
            }
            if (row.files().isEmpty() != row.checkedIn().contains("not checked")) {
                wrong.add(row.name() + ": checked where? " + row.checkedIn());
            }
        }
        return wrong;
    }

    /** The comments of a source file, each as one line. */
    static List<String> comments(String code) {
        return COMMENT.matcher(code)
                .results()
                .filter(found -> found.group(1) != null)
                .map(found -> oneLine(found.group(1)))
                .toList();
    }

    /** A text without line breaks and the marks of a comment at the begin of its lines. */
    static String oneLine(String text) {
        return text.replaceAll("\\s*\\n\\s*(?:\\*(?!/)|//)?\\s*", " ");
    }

    /** Rows whose name a text contains, but not only as a part of a longer name. */
    List<Row> namedIn(String text) {
        List<Row> found = rows.stream().filter(row -> text.contains(row.name())).toList();
        return found.stream()
                .filter(row -> {
                    String rest = text;
                    for (Row longer : found) {
                        if (!longer.equals(row) && longer.name().contains(row.name())) {
                            rest = rest.replace(longer.name(), "");
                        }
                    }
                    return rest.contains(row.name());
                })
                .toList();
    }

    /** What is wrong with the sources that the comments of a file name. */
    List<String> wrongInComments(String file, String code) {
        List<String> wrong = new ArrayList<>();
        for (String comment : comments(code)) {
            Matcher mark = MARK.matcher(comment);
            while (mark.find()) {
                Matcher end = END.matcher(comment);
                String text = comment.substring(mark.end(), end.find(mark.end()) ? end.start() : comment.length());
                boolean memory = mark.group(1) != null;
                List<Row> named = namedIn(text);
                if (named.isEmpty() && !text.startsWith("that of the bundle key")) {
                    wrong.add(file + ": no source of the table: " + text);
                }
                named.stream()
                        .filter(row -> row.fromMemory() != memory)
                        .forEach(row -> wrong.add(file + ": " + row.name() + " is known " + row.known()));
            }
        }
        return wrong;
    }

    /** Whether a sentence or a cell names a publication and no source of the table, or a year that is in none. */
    boolean isWrong(String sentence) {
        if (OURS.stream().anyMatch(sentence::startsWith)
                && !PUBLICATION.matcher(sentence).find()) {
            return false;
        }
        return namedIn(sentence).isEmpty() || hasYearOfNone(sentence);
    }

    /** The same for a cell of a data file, which may name no publication whatever its begin. */
    boolean isWrongCell(String cell) {
        return PUBLICATION.matcher(cell).find() && namedIn(cell).isEmpty();
    }

    private boolean hasYearOfNone(String sentence) {
        String rest = sentence.replaceAll("doi \\S+", "");
        for (Row row : rows) {
            rest = rest.replace(row.name(), "");
        }
        return YEAR.matcher(rest).find();
    }
}
