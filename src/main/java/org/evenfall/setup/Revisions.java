package org.evenfall.setup;

import java.util.List;
import java.util.Set;
import org.evenfall.quantity.EnteredQuantity;
import org.evenfall.setup.entry.CheckEntry;
import org.evenfall.setup.entry.Setup;

/** Coming back: a new revision, and what a change re-opens. What a change does not touch stays. */
public final class Revisions {

    /** What may have changed since the card was signed. */
    public enum Change {
        /** Another delivery of the product. */
        DELIVERY,
        /** A part of the machine was replaced or worn. */
        MACHINE_PART,
        /** The crop has grown. */
        CROP_TALLER,
        /** Another rate or speed. */
        RATE_OR_SPEED,
        /** Another tramline width. */
        WIDTH
    }

    private Revisions() {}

    /** The next revision, everything kept, to be dated and signed anew. */
    public static Setup next(Setup setup) {
        return setup.withCard(setup.card()
                .withRevision(Math.max(1, setup.card().revision()) + 1)
                .withDate(""));
    }

    /** Takes out exactly the measurements that a change makes worthless; entries of other steps stay. */
    public static Setup reopen(Setup setup, Set<Change> changes) {
        Setup open = setup;
        if (changes.contains(Change.DELIVERY)) {
            open = open.withProduct(open.product()
                    .withDelivery("")
                    .withContainerFull(List.of())
                    .withSievings(List.of())
                    .withBagsSampled(EnteredQuantity.EMPTY));
        }
        if (changes.contains(Change.MACHINE_PART)) {
            open = open.withMachineCheck(
                    open.machineCheck().withVanes(List.of()).withChecks(List.<CheckEntry>of()));
        }
        if (changes.contains(Change.CROP_TALLER)) {
            open = open.withHeight(open.height().withCropHeights(List.of()));
        }
        if (changes.contains(Change.DELIVERY)
                || changes.contains(Change.RATE_OR_SPEED)
                || changes.contains(Change.WIDTH)) {
            open = open.withRate(open.rate().withBucketTests(List.of()));
        }
        boolean pattern = changes.contains(Change.DELIVERY)
                || changes.contains(Change.MACHINE_PART)
                || changes.contains(Change.WIDTH)
                || changes.contains(Change.RATE_OR_SPEED);
        if (pattern) {
            open = open.withTrays(open.trays().withTests(List.of()));
        }
        return open;
    }
}
