package org.evenfall.sheet;

import java.util.Optional;
import org.evenfall.sheet.SheetContent.Block;
import org.evenfall.sheet.SheetContent.Choices;
import org.evenfall.sheet.SheetContent.Entries;
import org.evenfall.sheet.SheetContent.Heading;
import org.evenfall.sheet.SheetContent.Plan;

/** What the blocks of a sheet have in common, for the tests of this room. */
final class SheetBlocks {

    private SheetBlocks() {}

    /** The heading of the prompt, for a block that has one. */
    static Optional<Heading> heading(Block block) {
        if (block instanceof Entries entries) {
            return Optional.of(entries.heading());
        }
        if (block instanceof Choices choices) {
            return Optional.of(choices.heading());
        }
        return block instanceof Plan plan ? Optional.of(plan.heading()) : Optional.empty();
    }
}
