package org.evenfall.wizard;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javafx.scene.control.Button;
import javafx.scene.control.ToggleButton;
import javafx.stage.Stage;
import org.evenfall.machine.CheckItem;
import org.evenfall.machine.RateSetting;
import org.evenfall.quantity.EnteredQuantity;
import org.evenfall.quantity.Unit;
import org.evenfall.setup.entry.AmountKind;
import org.evenfall.setup.entry.BucketMethod;
import org.evenfall.setup.entry.LeverEntry;
import org.evenfall.setup.entry.Setup;
import org.evenfall.setup.path.Entries;
import org.evenfall.setup.path.Entry;
import org.evenfall.setup.path.EntryPath;
import org.evenfall.setup.path.FilledSetup;
import org.evenfall.setup.path.MachineCheckPaths;
import org.evenfall.setup.path.MachinePaths;
import org.evenfall.setup.path.TrayPaths;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;

/** Every entry of a setup has its place on the screen, and the wizard names no place by itself. */
@ExtendWith(ApplicationExtension.class)
class EntriesOnScreenTest {

    /** The label that {@link FilledSetup} gives to each lever it fills in. */
    private static final String LEVER = "outer/~vane";

    private WizardWindow window;

    @Start
    void start(Stage stage) throws Exception {
        window = SharedWindow.whole(
                new WizardWindow(Stage0.context(Files.createTempDirectory("evenfall-entries")), Optional.empty()));
    }

    /** Two items in every list, and a lever of the label that the settings have a value for. */
    private static Setup filled() {
        Setup setup = FilledSetup.make();
        LeverEntry lever = LeverEntry.EMPTY
                .withLabel(LEVER)
                .withLowest(new EnteredQuantity("1", Unit.NONE))
                .withHighest(new EnteredQuantity("9", Unit.NONE))
                .withStep(new EnteredQuantity("1", Unit.NONE));
        return setup.withMachine(setup.machine().withLevers(List.of(lever, lever.withLabel("inner"))));
    }

    /** Texts of the file that the present pages have no room for; nothing can be wrong in them. */
    private static final Set<Entry<?, ?>> WITHOUT_FIELD = Set.of(MachinePaths.REFERENCE_POINT, MachinePaths.LEVER_UNIT);

    @Test
    void everyEntryHasANode(FxRobot robot) {
        Setup setup = filled();
        robot.interact(() -> window.model().change(old -> setup));
        Set<String> ids = new HashSet<>();
        for (int product = 0; product < FilledSetup.ITEMS; product++) {
            String edit = "library.edit/" + product;
            robot.interact(() -> ((Button) Nodes.find(window.shell(), node -> edit.equals(node.getId()))
                            .orElseThrow())
                    .fire());
            Nodes.each(window.shell(), node -> ids.add(String.valueOf(node.getId())));
        }
        // of tests one is shown, and of entries that exclude one another those that are asked now
        for (Setup asked : List.of(setup, otherwise(setup))) {
            robot.interact(() -> window.model().change(old -> asked));
            for (int test = 0; test < FilledSetup.ITEMS; test++) {
                show(robot, "test-" + test);
                Nodes.each(window.shell(), node -> ids.add(String.valueOf(node.getId())));
            }
        }
        List<String> without = new ArrayList<>();
        for (Entry<?, ?> entry : Entries.ALL) {
            if (!WITHOUT_FIELD.contains(entry)) {
                missing(entry, setup, ids, without);
            }
        }
        assertThat(without).as("entries without a place on the screen").isEmpty();
    }

    /** Known weights timed, the factor of a terminal, heights in tubes. */
    private static Setup otherwise(Setup setup) {
        return setup.withMachine(setup.machine().withRateSetting(RateSetting.FACTOR))
                .withTrays(setup.trays().withCatchKind(AmountKind.HEIGHT))
                .withRate(setup.rate()
                        .withBucketTests(setup.rate().bucketTests().stream()
                                .map(test -> test.withMethod(BucketMethod.KNOWN_WEIGHT))
                                .toList()));
    }

    private void show(FxRobot robot, String test) {
        List<ToggleButton> names = new ArrayList<>();
        Nodes.each(window.shell(), node -> {
            if (node instanceof ToggleButton button && test.equals(node.getId())) {
                names.add(button);
            }
        });
        robot.interact(() -> names.forEach(ToggleButton::fire));
    }

    private static <R, T> void missing(Entry<R, T> entry, Setup setup, Set<String> ids, List<String> without) {
        for (EntryPath<T> path : entry.places(setup).toList()) {
            // a list of tests is there as its tests
            if (onScreen(path.pointer()).noneMatch(ids::contains)
                    && !path.pointer().equals(TrayPaths.TESTS.pointer())) {
                without.add(path.pointer());
            }
        }
    }

    /** A check is found by its item, a list by its own pointer or its first value, a value of each lever by the lever. */
    private static Stream<String> onScreen(String pointer) {
        String checks = MachineCheckPaths.CHECKS.pointer();
        if (pointer.startsWith(checks + "/")) {
            String part = pointer.substring(pointer.lastIndexOf('/'));
            return Stream.of(CheckItem.values()).map(item -> checks + "/" + item.name() + part);
        }
        return Stream.of(pointer, pointer + "/0", pointer + "/outer~1~0vane");
    }

    /** A pointer written out in the wizard would be a second place where an entry is named. */
    @Test
    void noPointerIsWrittenOutInTheWizard() throws IOException {
        Pattern literal = Pattern.compile("\"/[a-z][^\"]*\"");
        try (Stream<Path> files = Files.walk(Path.of("src", "main", "java", "org", "evenfall", "wizard"))) {
            Set<String> found = files.filter(file -> file.toString().endsWith(".java"))
                    .flatMap(EntriesOnScreenTest::lines)
                    .filter(line -> literal.matcher(line).find())
                    // resources of the program, not entries of a setup
                    .filter(line -> !line.contains("getResource"))
                    .collect(Collectors.toSet());
            assertThat(found).isEmpty();
        }
    }

    private static Stream<String> lines(Path file) {
        try {
            return Files.readAllLines(file).stream();
        } catch (IOException unreadable) {
            throw new java.io.UncheckedIOException(unreadable);
        }
    }
}
