package org.evenfall.command;

import org.evenfall.publish.SheetService.SheetPaper;

/** A paper as it is typed on the command line. */
enum PaperOption {
    a4(SheetPaper.A4),
    letter(SheetPaper.LETTER);

    private final SheetPaper sheet;

    PaperOption(SheetPaper sheet) {
        this.sheet = sheet;
    }

    SheetPaper sheet() {
        return sheet;
    }
}
