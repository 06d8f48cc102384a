package org.evenfall;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.Reader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.PropertyResourceBundle;
import java.util.ResourceBundle;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.evenfall.machine.CheckItem;
import org.evenfall.setup.path.Choice;
import org.evenfall.setup.path.Entries;
import org.evenfall.setup.path.Entry;
import org.junit.jupiter.api.Test;

/** The bundle and the sources: each key that a source names has its sentence, and each sentence is used. */
class BundleTest {

    private static final Path MAIN = Path.of("src", "main", "java");
    private static final Path BUNDLE = Path.of("src", "main", "resources", "org", "evenfall", "words.properties");

    /** Keys that a source puts together from this start and the name of a constant. */
    private static final List<String> PUT_TOGETHER = List.of(
            "step.",
            "direction.",
            "start.changed.",
            "command.farm.",
            "farm.",
            "trays.differs.",
            "trays.act.",
            "rate.differs.",
            "picture.yard.",
            "picture.bars.shape.",
            "card.stop.",
            "card.caution.",
            "match.noReference.",
            "product.reach.",
            "prompt.",
            "picture.countdown.",
            "term.",
            "day.",
            "card.rechecked.",
            "rechecked.",
            "nextSeason.");

    /** Enums whose words are looked up by the constant; those of an entry's answers are known from the entries. */
    private static final Set<String> SHOWN_BY_CONSTANT = Set.of(
            "AdviceKind",
            "EvennessVerdict",
            "FindingKind",
            "Kind",
            "LibraryOrder",
            "OpeningSource",
            "PromptState",
            "ResultSource",
            "Step",
            "StepState",
            "CheckItem",
            "Verdict");

    /** Simple names of the enums from which an entry is chosen. */
    private static final Set<String> ANSWERS = Entries.ALL.stream()
            .filter(Choice.class::isInstance)
            .flatMap(entry -> ((Choice<?, ?>) entry).answers().stream())
            .map(answer -> answer.getDeclaringClass().getSimpleName())
            .collect(Collectors.toSet());

    /** A key with this at its end belongs to the key without it. */
    private static final String OVERRIDDEN = "Overridden";

    private static final Pattern LITERAL = Pattern.compile("\"((?:[^\"\\\\\\n]|\\\\.)*)\"");
    private static final Pattern CHOICE = Pattern.compile("choice\\.(\\w+)\\.(\\w+)");

    /** A literal that is a key: its first part is one that the bundle uses. */
    private static final Pattern KEY = Pattern.compile("[a-z]+(\\.[A-Za-z0-9]+)+");

    private static Set<String> keys() throws Exception {
        try (Reader in = Files.newBufferedReader(BUNDLE)) {
            return new TreeSet<>(new PropertyResourceBundle(in).keySet());
        }
    }

    private static String sources() throws Exception {
        try (Stream<Path> files = Files.walk(MAIN)) {
            StringBuilder all = new StringBuilder();
            for (Path file :
                    files.filter(path -> path.toString().endsWith(".java")).toList()) {
                all.append(Files.readString(file)).append('\n');
            }
            return all.toString();
        }
    }

    private static Set<String> literals(String sources) {
        Set<String> literals = new TreeSet<>();
        Matcher literal = LITERAL.matcher(sources);
        while (literal.find()) {
            literals.add(literal.group(1));
        }
        return literals;
    }

    @Test
    void everySentenceIsUsed() throws Exception {
        String sources = sources();
        Set<String> literals = literals(sources);
        assertThat(literals).hasSizeGreaterThan(1000);
        assertThat(keys().stream().filter(key -> !used(key, literals, sources))).isEmpty();
    }

    private static boolean used(String key, Set<String> literals, String sources) {
        Matcher choice = CHOICE.matcher(key);
        if (choice.matches()) {
            return (SHOWN_BY_CONSTANT.contains(choice.group(1)) || ANSWERS.contains(choice.group(1)))
                    && Pattern.compile("enum " + choice.group(1) + "\\b[^}]*\\b" + choice.group(2) + "\\b")
                            .matcher(sources)
                            .find();
        }
        return literals.contains(key)
                || (key.endsWith(OVERRIDDEN) && literals.contains(key.substring(0, key.length() - OVERRIDDEN.length())))
                || PUT_TOGETHER.stream().anyMatch(key::startsWith);
    }

    @Test
    void everyKeyIsThereOnce() throws Exception {
        Set<String> seen = new TreeSet<>();
        assertThat(Files.readAllLines(BUNDLE).stream()
                        .filter(line -> !line.startsWith("#") && line.contains("="))
                        .map(line -> line.substring(0, line.indexOf('=')))
                        .filter(key -> !seen.add(key)))
                .isEmpty();
    }

    @Test
    void everyKeyThatIsNamedHasItsSentence() throws Exception {
        Set<String> keys = keys();
        Set<String> rooms = keys.stream()
                .map(key -> key.substring(0, key.indexOf('.')))
                .collect(Collectors.toCollection(TreeSet::new));
        // the names of nodes have the form of keys and are none
        String sources = sources().replaceAll("setId\\(\"[^\"]*\"", "");
        assertThat(literals(sources).stream()
                        .filter(literal -> KEY.matcher(literal).matches()
                                && rooms.contains(literal.substring(0, literal.indexOf('.')))))
                .hasSizeGreaterThan(700)
                .allMatch(keys::contains, "has a sentence");
    }

    /** A choice on the screen, a part that is checked, its place in the picture: each constant has its word. */
    @Test
    void everyConstantThatIsShownHasItsWord() {
        Set<String> shown = new TreeSet<>();
        for (Entry<?, ?> entry : Entries.ALL) {
            if (entry instanceof Choice<?, ?> choice) {
                choice.answers().forEach(answer -> shown.add(key(answer)));
            }
        }
        for (CheckItem item : CheckItem.values()) {
            shown.add(key(item));
            shown.add("picture.yard." + item.name());
        }
        ResourceBundle words = ResourceBundle.getBundle("org.evenfall.words", Locale.ROOT);
        assertThat(shown).allMatch(words::containsKey);
    }

    private static String key(Enum<?> constant) {
        return "choice." + constant.getDeclaringClass().getSimpleName() + "." + constant.name();
    }
}
