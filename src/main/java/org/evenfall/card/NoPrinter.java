package org.evenfall.card;

import java.io.IOException;

/** There is no printer to print on. */
public final class NoPrinter extends IOException {

    private static final long serialVersionUID = 1;

    NoPrinter(String why) {
        super(why);
    }
}
