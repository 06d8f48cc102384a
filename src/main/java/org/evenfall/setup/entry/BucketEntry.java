package org.evenfall.setup.entry;

import io.soabase.recordbuilder.core.RecordBuilder;
import java.util.List;
import org.evenfall.quantity.EnteredQuantity;

/**
 * One bucket test. Every attempt is kept.
 *
 * @param openingLeft opening on the left, number on the opening scale, or the factor of a terminal
 * @param openingRight opening on the right, number on the opening scale
 * @param method how the flow was measured
 * @param time time for which the outlets were open, s or min
 * @param bucketEmpty weight of the empty bucket, kg, g or lb
 * @param knownWeight weight that ran through one outlet and was timed, kg, t or lb
 * @param left weight of the bucket with its catch on the left, one for each repeat, kg, g or lb
 * @param right weight of the bucket with its catch on the right, one for each repeat, kg, g or lb
 * @param leftTimes time in which the known weight ran through on the left, one for each repeat, s or min
 * @param rightTimes time in which the known weight ran through on the right, one for each repeat, s or min
 * @param shown weight that the terminal shows for one catch of all outlets together, kg, g or lb
 * @param bulkDensity bulk density of the product when it was caught, kg/L or kg/m³
 * @param delivery delivery of the product that was caught
 * @param settings settings of the machine in the test
 * @param date date of the test as typed (30.4.2027, 2027-04-30), may be empty
 * @param unknownKeys keys of this object in the file that this version does not know
 */
@RecordBuilder
public record BucketEntry(
        EnteredQuantity openingLeft,
        EnteredQuantity openingRight,
        BucketMethod method,
        EnteredQuantity time,
        EnteredQuantity bucketEmpty,
        EnteredQuantity knownWeight,
        List<EnteredQuantity> left,
        List<EnteredQuantity> right,
        List<EnteredQuantity> leftTimes,
        List<EnteredQuantity> rightTimes,
        EnteredQuantity shown,
        EnteredQuantity bulkDensity,
        String delivery,
        SettingsEntries settings,
        String date,
        UnknownKeys unknownKeys)
        implements BucketEntryBuilder.With {

    /** Nothing typed yet. */
    public static final BucketEntry EMPTY = Blank.of(BucketEntry.class);

    /** Copies what can change, so that no entry changes afterwards. */
    public BucketEntry {
        left = List.copyOf(left);
        right = List.copyOf(right);
        leftTimes = List.copyOf(leftTimes);
        rightTimes = List.copyOf(rightTimes);
    }
}
