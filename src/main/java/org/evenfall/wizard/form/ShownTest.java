package org.evenfall.wizard.form;

import java.util.function.IntSupplier;
import javafx.beans.property.IntegerProperty;
import javafx.beans.property.SimpleIntegerProperty;

/** Which test of a list its prompts show: the last, unless an earlier one was chosen. */
public final class ShownTest {

    private final IntSupplier count;
    private final IntegerProperty index = new SimpleIntegerProperty();
    private int counted;

    /**
     * @param form the form of the page, as long as the window
     * @param count how many tests there are, at least one
     */
    public ShownTest(Form form, IntSupplier count) {
        this.count = count;
        this.counted = count.getAsInt();
        index.set(counted - 1);
        form.follow(this::follow);
    }

    /** A new test is shown at once; of a shorter list the last. */
    private void follow() {
        int now = count.getAsInt();
        if (now > counted) {
            index.set(now - 1);
        } else {
            index.set(Math.min(index.get(), now - 1));
        }
        counted = now;
    }

    /** Shows the test of an index, or the nearest there is. */
    public void show(int wanted) {
        index.set(Math.max(0, Math.min(wanted, count.getAsInt() - 1)));
    }

    /** How many tests there are. */
    int count() {
        return count.getAsInt();
    }

    /** Index of the test shown, from 0. */
    public int index() {
        return index.get();
    }

    /** Runs now and whenever another test is shown, until the form is ended. */
    public void onShown(Form form, Runnable action) {
        form.until(index.subscribe(action));
    }
}
