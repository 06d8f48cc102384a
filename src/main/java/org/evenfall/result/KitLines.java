package org.evenfall.result;

import java.util.ArrayList;
import java.util.List;
import org.evenfall.finding.Arg;
import org.evenfall.finding.Sentences;
import org.evenfall.quantity.Unit;
import org.evenfall.setup.Assessment;
import org.evenfall.trays.StripLoad;
import org.evenfall.trays.TrayLayout;

/** What to bring to yard and field, in words; with numbers where the setup says them already. */
public final class KitLines {

    /** Assumption: tests that a first-time user drives, with product for each. */
    private static final int TESTS = 3;

    private KitLines() {}

    /** One line a thing. */
    public static List<String> of(Sentences words, Assessment assessment) {
        List<String> lines = new ArrayList<>();
        lines.add(words.text("kit.container"));
        lines.add(words.text("kit.scales"));
        lines.add(words.text("kit.sieves"));
        lines.add(words.text("kit.tape"));
        lines.add(words.text("kit.bucket"));
        TrayLayout layout = assessment.trays().layout();
        lines.add(
                layout == null
                        ? words.text("kit.traysOpen")
                        : words.text("kit.trays", Arg.count(layout.positionsM().size())));
        lines.add(words.text("kit.pegs"));
        lines.add(words.text("kit.gauge"));
        lines.add(words.text("kit.protection"));
        StripLoad strip = assessment.trays().strip();
        lines.add(
                strip == null
                        ? words.text("kit.productOpen")
                        : words.text(
                                "kit.product",
                                Arg.number(TESTS * strip.productUsedKg(), 0, Unit.KG),
                                Arg.count(TESTS)));
        return List.copyOf(lines);
    }
}
