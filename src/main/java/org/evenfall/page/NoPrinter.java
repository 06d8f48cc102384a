package org.evenfall.page;

import java.io.IOException;

/** The system has no printer, or no display for the printer's dialog. */
public final class NoPrinter extends IOException {

    private static final long serialVersionUID = 1;

    /** With the reason, for the log. */
    public NoPrinter(String reason) {
        super(reason);
    }
}
