package org.evenfall.setup;

import java.util.ArrayList;
import java.util.List;
import org.evenfall.finding.Arg;
import org.evenfall.finding.Finding;
import org.evenfall.finding.Step;
import org.evenfall.quantity.EnteredQuantity;
import org.evenfall.quantity.Unit;
import org.evenfall.rate.BucketAssessment;
import org.evenfall.rate.BucketWeight;
import org.evenfall.rate.Timing;
import org.evenfall.setup.entry.BucketEntry;
import org.evenfall.setup.path.EntryPath;
import org.evenfall.setup.path.QuantityList;
import org.evenfall.setup.path.RatePaths;

/** Step 5: whether the last bucket test was caught long enough, and could be carried. */
final class BucketCatchFindings {

    private final ReadSetup read;
    private final EntryPath<BucketEntry> test;
    private final boolean timed;
    private final List<Finding> findings = new ArrayList<>();

    private BucketCatchFindings(ReadSetup read, EntryPath<BucketEntry> test) {
        this.read = read;
        this.test = test;
        this.timed = BucketCatchReader.isTimed(read, test);
    }

    /** @param caught the same test as it was read */
    static List<Finding> of(ReadSetup read, EntryPath<BucketEntry> test, BucketAssessment.Catch caught) {
        BucketCatchFindings of = new BucketCatchFindings(read, test);
        of.shortTime(caught);
        if (!of.timed) {
            of.heavyBucket();
        }
        return of.findings;
    }

    /** A terminal that counts what it lets out counts over the same time: only without it the time matters. */
    private void shortTime(BucketAssessment.Catch caught) {
        if (caught.timeS() < Timing.SHORT_S && caught.shownKg() == null) {
            findings.add(Finding.warn(
                            Step.RATE,
                            timed ? "rate.shortTimed" : "rate.shortTime",
                            Arg.number(caught.timeS(), 0, Unit.S),
                            Arg.number(100 * Timing.errorShare(caught.timeS()), 0, Unit.PERCENT))
                    .from("source.timing")
                    .at((timed ? RatePaths.BUCKET_KNOWN_WEIGHT : RatePaths.BUCKET_TIME)
                            .at(test)
                            .pointer()));
        }
    }

    /** The heaviest catch, where it is too heavy to be carried: one warning a test, since warnings are printed. */
    private void heavyBucket() {
        double tareKg = BucketCatchReader.tareKg(read, test);
        EntryPath<EnteredQuantity> heaviest = null;
        double heaviestKg = BucketWeight.HEAVIEST_KG;
        for (EntryPath<List<EnteredQuantity>> list :
                List.of(RatePaths.BUCKET_LEFT.at(test), RatePaths.BUCKET_RIGHT.at(test))) {
            for (int i = 0; i < list.get(read.setup()).size(); i++) {
                Double kg = read.number(QuantityList.item(list, i));
                double net = kg == null ? 0 : kg - tareKg;
                if (BucketWeight.tooHeavy(net) && net > heaviestKg) {
                    heaviest = QuantityList.item(list, i);
                    heaviestKg = net;
                }
            }
        }
        if (heaviest != null) {
            findings.add(Finding.warn(
                            Step.RATE,
                            "rate.heavyBucket",
                            Arg.number(heaviestKg, 1, Unit.KG),
                            Arg.number(BucketWeight.HEAVIEST_KG, 0, Unit.KG))
                    .from("source.heavyBucket")
                    .at(heaviest.pointer()));
        }
    }
}
