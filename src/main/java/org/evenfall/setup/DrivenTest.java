package org.evenfall.setup;

import org.evenfall.setup.entry.TrayTestEntry;
import org.evenfall.setup.path.EntryPath;
import org.evenfall.setup.path.TrayPaths;
import org.evenfall.trays.Uniformity;

/**
 * A tray test as driven, before it is compared with the present settings.
 *
 * @param index which of the entered tests, from 0
 * @param evenness how even
 * @param stated settings of the machine as the test states them
 * @param conditions what it was driven under
 */
record DrivenTest(int index, Uniformity evenness, ReadSettings stated, TestConditionReader.Conditions conditions) {

    /** Place of the test. */
    EntryPath<TrayTestEntry> at() {
        return TrayPaths.TESTS.item(index);
    }

    /** Number of the test as it is shown, from 1. */
    int number() {
        return index + 1;
    }
}
