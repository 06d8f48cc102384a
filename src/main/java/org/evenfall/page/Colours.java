package org.evenfall.page;

import java.awt.Color;

/** The colours of a page. */
public final class Colours {

    /** Text. */
    public static final Color INK = new Color(0x11, 0x15, 0x18);

    /** Titles, headings and bars. */
    public static final Color ACCENT = new Color(0x1F, 0x3F, 0x63);

    /** Thin rules without meaning of their own. */
    public static final Color LINE = new Color(0x8A, 0x8A, 0x84);

    private Colours() {}
}
