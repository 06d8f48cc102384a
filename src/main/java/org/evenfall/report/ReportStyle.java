package org.evenfall.report;

import java.awt.Color;
import org.evenfall.page.Colours;
import org.evenfall.page.TextStyle;
import org.evenfall.page.Typefaces.Weight;

/** Letters and measures of the report, points. */
final class ReportStyle {

    /** Points of one millimetre. */
    static final double MM = 72 / 25.4;

    /** Margin without print on all sides; wide enough for the holes of a file. */
    static final double MARGIN = 17 * MM;

    /** Space above a section, and between a table or picture and what follows. */
    static final double WIDE_GAP = 5 * MM;

    /** Space above a part of a section. */
    static final double GAP = 2.5 * MM;

    /** Space between two lines that belong together. */
    static final double SMALL_GAP = 0.8 * MM;

    /** Share of the width that the labels have. */
    static final double LABELS = 0.36;

    private static final Color SOFT = new Color(0x45, 0x4E, 0x56);

    static final TextStyle TITLE = new TextStyle(Weight.BOLD, 18, Colours.ACCENT);
    static final TextStyle SECTION = new TextStyle(Weight.BOLD, 12.5, Colours.ACCENT);
    static final TextStyle PART = new TextStyle(Weight.BOLD, 10, Colours.INK);
    static final TextStyle TEXT = new TextStyle(Weight.REGULAR, 9.5, Colours.INK);
    static final TextStyle LABEL = new TextStyle(Weight.REGULAR, 9.5, SOFT);
    static final TextStyle HEAD = new TextStyle(Weight.BOLD, 9, Colours.INK);
    static final TextStyle FIGURE = new TextStyle(Weight.BOLD, 9, Colours.INK);
    static final TextStyle NOTE = new TextStyle(Weight.REGULAR, 9, Colours.INK);

    private ReportStyle() {}
}
