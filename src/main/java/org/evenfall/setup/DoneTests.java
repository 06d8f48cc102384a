package org.evenfall.setup;

import java.util.List;
import java.util.stream.IntStream;
import org.evenfall.quantity.EnteredQuantity;
import org.evenfall.setup.entry.TrayTestEntry;
import org.evenfall.setup.path.EntryPath;
import org.evenfall.setup.path.QuantityList;
import org.evenfall.setup.path.TrayPaths;
import org.evenfall.trays.AdviceInput;

/** The tray tests as the advice takes them, with the numbers of the trays as they lie. */
final class DoneTests {

    private DoneTests() {}

    /** @param tests that can be compared, oldest first */
    static List<AdviceInput.DoneTest> of(ReadSetup read, List<TrayTestResult> tests) {
        return tests.stream()
                .map(test -> {
                    EntryPath<TrayTestEntry> at = TrayPaths.TESTS.item(test.index());
                    Double runs = read.number(TrayPaths.TEST_RUNS, at);
                    return new AdviceInput.DoneTest(
                            test.evenness(),
                            test.settings().levers(),
                            test.windMPerS(),
                            trayNumbers(read, TrayPaths.TEST_CATCHES.at(at)),
                            runs == null ? 1 : (int) Math.round(runs));
                })
                .toList();
    }

    /** Numbers, from 1, of the trays that were read; a blank one is left out. */
    private static List<Integer> trayNumbers(ReadSetup read, EntryPath<List<EnteredQuantity>> catches) {
        return IntStream.range(0, catches.get(read.setup()).size())
                .filter(i -> read.number(QuantityList.item(catches, i)) != null)
                .mapToObj(i -> i + 1)
                .toList();
    }
}
