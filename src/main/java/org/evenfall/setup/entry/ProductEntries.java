package org.evenfall.setup.entry;

import io.soabase.recordbuilder.core.RecordBuilder;
import java.util.List;
import org.evenfall.granule.ProductForm;
import org.evenfall.quantity.EnteredQuantity;

/**
 * Step 1: the product in the bag.
 *
 * @param name name of the product, free text
 * @param form kind of granules
 * @param treated whether it is treated with a urease inhibitor
 * @param inhibitor name of the inhibitor, free text
 * @param useBy use-by date as typed (30.4.2027, 2027-04-30)
 * @param nitrogen nitrogen content, %
 * @param delivery delivery or batch number
 * @param condition how the product flows
 * @param blend whether it is a blend of different granules
 * @param nitrateBefore whether a nitrate product was in the machine before
 * @param cleanAndDry whether hopper, discs, trays and tubes are empty, clean and dry
 * @param bagsSampled number of bags from which the sample was taken
 * @param bagsDelivered number of bags delivered
 * @param containerVolume volume of the container, L or ml
 * @param containerEmpty weight of the empty container, g or kg
 * @param containerFull weight of the container with each struck-level filling, g or kg
 * @param apertures sieve apertures, finest first, mm or in; 2 to 8
 * @param sieveAmounts how the sieve classes were measured: MASS, PERCENT or HEIGHT
 * @param sievings sieved samples, one or more
 * @param medianSize median size that the bag or its specification sheet names, mm or SGN; counts while nothing is sieved
 * @param unknownKeys keys of this object in the file that this version does not know
 */
@RecordBuilder
public record ProductEntries(
        String name,
        ProductForm form,
        YesNo treated,
        String inhibitor,
        String useBy,
        EnteredQuantity nitrogen,
        String delivery,
        Condition condition,
        YesNo blend,
        YesNo nitrateBefore,
        YesNo cleanAndDry,
        EnteredQuantity bagsSampled,
        EnteredQuantity bagsDelivered,
        EnteredQuantity containerVolume,
        EnteredQuantity containerEmpty,
        List<EnteredQuantity> containerFull,
        List<EnteredQuantity> apertures,
        AmountKind sieveAmounts,
        List<SievingEntry> sievings,
        EnteredQuantity medianSize,
        UnknownKeys unknownKeys)
        implements ProductEntriesBuilder.With {

    /** Nothing typed yet. */
    public static final ProductEntries EMPTY = Blank.of(ProductEntries.class);

    /** Copies what can change, so that no entry changes afterwards. */
    public ProductEntries {
        containerFull = List.copyOf(containerFull);
        apertures = List.copyOf(apertures);
        sievings = List.copyOf(sievings);
    }
}
