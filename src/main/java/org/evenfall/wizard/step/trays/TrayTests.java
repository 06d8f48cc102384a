package org.evenfall.wizard.step.trays;

import java.util.List;
import java.util.Optional;
import org.evenfall.setup.TrayTestDraft;
import org.evenfall.setup.entry.TrayTestEntry;
import org.evenfall.setup.path.EntryPath;
import org.evenfall.setup.path.TrayPaths;
import org.evenfall.trays.TrayLayout;
import org.evenfall.trays.TrayLayouts;
import org.evenfall.wizard.form.Form;
import org.evenfall.wizard.form.ShownTest;

/** The tray tests of the setup as the prompts of this step share them: which one is shown, where its trays are. */
public final class TrayTests {

    private static final EntryPath<List<TrayTestEntry>> LIST = TrayPaths.TESTS.path();

    private final Form form;
    private final ShownTest shown;

    /** @param form the form of the page, as long as the window */
    public TrayTests(Form form) {
        this.form = form;
        this.shown = new ShownTest(form, () -> Math.max(1, size()));
    }

    ShownTest shown() {
        return shown;
    }

    /** How many tests were begun. */
    int size() {
        return LIST.get(form.model().setup()).size();
    }

    /** Runs now and whenever another test is shown. */
    public void onShown(Runnable action) {
        shown.onShown(form, action);
    }

    /** Index of the test shown, from 0. */
    public int index() {
        return shown.index();
    }

    /** Whether the test shown was begun. */
    boolean begun() {
        return index() < size();
    }

    /** Nothing is answered about a test that was not begun. */
    Optional<Boolean> answered() {
        return begun() ? Optional.empty() : Optional.of(false);
    }

    /** One more test, which is shown. */
    void begin() {
        form.model().change(setup -> TrayTestDraft.added(setup, form.model().assessment(), form::numberText));
    }

    /** More runs into the trays of the last test, which is shown. */
    void addRuns(int more) {
        int last = size() - 1;
        form.model()
                .change(setup -> TrayTestDraft.withMoreRuns(
                        setup, last, more, form.model().assessment()));
        shown.show(last);
    }

    /** Whether the last test has no catch yet, so that it is still to be driven. */
    boolean lastIsToDrive() {
        List<TrayTestEntry> tests = LIST.get(form.model().setup());
        return !tests.isEmpty()
                && TrayPaths.TEST_CATCHES.isBlank(tests.get(tests.size() - 1).catches());
    }

    boolean byFactor() {
        return form.model().setup().machine().rateSetting().byFactor();
    }

    /** Where the trays of a test are, m; empty while it is not known. */
    public List<Double> placesM(int index) {
        List<List<Double>> all = form.model().assessment().trays().placesM();
        return index < all.size() ? all.get(index) : List.of();
    }

    /** The same; as planned while it is not known. */
    List<Double> placesOrPlannedM(int index) {
        return placesM(index).isEmpty() ? plannedM() : placesM(index);
    }

    /** Where the trays are to be put, m; empty without a tramline width. */
    List<Double> plannedM() {
        TrayLayout layout = form.model().assessment().trays().layout();
        return layout == null ? List.of() : layout.positionsM();
    }

    /** How many trays a test has; the same while a position is typed that cannot be read yet. */
    int trays(int index) {
        TrayTestEntry test = TrayPaths.TESTS.item(index).get(form.model().setup());
        int placed = test.positions().isEmpty()
                ? placesOrPlannedM(index).size()
                : test.positions().size();
        return Math.max(
                placed == 0 ? TrayLayouts.USUAL_TRAYS : placed, test.catches().size());
    }

    /** Whether a place is that of a test as a whole. */
    boolean isTest(String pointer) {
        return pointer.startsWith(LIST.pointer() + "/")
                && pointer.indexOf('/', LIST.pointer().length() + 1) < 0;
    }

    /**
     * Whether a place is in a test, or the list while it is empty.
     *
     * @param catches among catches and what belongs to them, else among the rest
     */
    boolean holds(String pointer, boolean catches) {
        String list = LIST.pointer();
        if (pointer.equals(list)) {
            return catches || size() == 0;
        }
        if (!pointer.startsWith(list + "/")) {
            return false;
        }
        String[] names = pointer.substring(list.length() + 1).split("/", -1);
        return names.length > 1
                && catches
                        == List.of(
                                        TrayPaths.TEST_CATCHES.name(),
                                        TrayPaths.TEST_POSITIONS.name(),
                                        TrayPaths.TEST_REMARK.name())
                                .contains(names[1]);
    }
}
