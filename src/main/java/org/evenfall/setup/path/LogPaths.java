package org.evenfall.setup.path;

import org.evenfall.finding.Step;
import org.evenfall.setup.entry.LogEntries;
import org.evenfall.setup.entry.PassEntry;
import org.evenfall.setup.entry.Setup;

/** What was spread: entries after the card. */
public final class LogPaths {

    /** The record of the passes, asked for in the step of the card. */
    public static final Part<LogEntries> LOG = Part.top("log", Step.CARD, Setup::log, Setup::withLog);

    /** The passes. */
    public static final Rows<LogEntries, PassEntry> PASSES =
            LOG.rows("passes", "log.passes", PassEntry.EMPTY, LogEntries::passes, LogEntries::withPasses);

    /** The day, may be empty. */
    public static final Text<PassEntry> DATE =
            PASSES.row().date("date", "trays.date", PassEntry::date, PassEntry::withDate);

    /** The field or block. */
    public static final Text<PassEntry> FIELD = PASSES.row()
            .text("field", "start.field", PassEntry::field, PassEntry::withField)
            .keptPrivate();

    /** Area spread, ha or ac. */
    public static final Quantity<PassEntry> AREA =
            PASSES.row().quantity("area", Ranges.AREA, PassEntry::area, PassEntry::withArea);

    /** Product drawn from the stock, kg, t or lb. */
    public static final Quantity<PassEntry> PRODUCT_DRAWN = PASSES.row()
            .quantity("productDrawn", Ranges.PRODUCT_DRAWN, PassEntry::productDrawn, PassEntry::withProductDrawn);

    /** Free text. */
    public static final Text<PassEntry> NOTE = PASSES.row()
            .text("note", "log.note", PassEntry::note, PassEntry::withNote)
            .keptPrivate();

    private LogPaths() {}

    /** Whether a place of a setup is in the log: what is found there is about no card. */
    public static boolean holds(String pointer) {
        return pointer.startsWith(LOG.only().pointer() + "/");
    }
}
