package org.evenfall.fuzz;

import java.util.List;
import org.evenfall.flight.DrivingPattern;
import org.evenfall.flight.SpreadPattern;
import org.evenfall.setup.entry.MatchEntries;
import org.evenfall.setup.entry.Setup;
import org.evenfall.setup.entry.TestedProductEntry;
import org.evenfall.setup.tool.SinglePassTool;
import org.evenfall.store.InputFileException;
import org.evenfall.store.InputText;
import org.evenfall.store.LibraryCsv;
import org.evenfall.store.SinglePassCsv;

/** Tables: tested products, which are then assessed, and the trays of one pass, which is then overlapped with itself. */
final class TableTargets {

    private TableTargets() {}

    static void library(byte[] input) {
        List<TestedProductEntry> products;
        try {
            products = LibraryCsv.read(InputText.decode(input, "input"), "input");
        } catch (InputFileException refused) {
            return;
        }
        SetupTarget.assess(Setup.EMPTY.withMatch(MatchEntries.EMPTY.withLibrary(products)));
    }

    static void line(byte[] input) {
        SpreadPattern pass;
        try {
            pass = SinglePassCsv.read(InputText.decode(input, "input"), "input");
        } catch (InputFileException refused) {
            return;
        }
        double widthM = pass.rightmostM() - pass.leftmostM();
        for (DrivingPattern driving : DrivingPattern.values()) {
            SinglePassTool.overlap(pass, driving, widthM);
            SinglePassTool.widths(pass, driving);
        }
    }
}
