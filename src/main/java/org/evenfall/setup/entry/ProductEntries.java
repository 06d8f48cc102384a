package org.evenfall.setup.entry;

import io.soabase.recordbuilder.core.RecordBuilder;
import java.util.List;
import java.util.Objects;
import org.evenfall.granule.ProductForm;
import org.evenfall.quantity.EnteredQuantity;

/**
 * Step 1: what is in the bag.
 *
 * @param name what the bag says, in the person's words
 * @param form what the granules are
 * @param treated treated with a urease inhibitor
 * @param inhibitor which
 * @param useBy use by, ISO date (2027-04-30)
 * @param nitrogen nitrogen share, %
 * @param delivery delivery or batch number
 * @param condition how it runs
 * @param blend a blend of different granules
 * @param nitrateBefore a nitrate product was in the machine before
 * @param cleanAndDry hopper, discs, trays and tubes emptied, clean and dry
 * @param bagsSampled bags from which the sample was taken
 * @param bagsDelivered bags delivered
 * @param containerVolume volume of the container, L or ml
 * @param containerEmpty its empty weight, kg or g
 * @param containerFull weight of each struck-level filling with the container, kg or g
 * @param apertures sieve apertures, mm or in, finest first; 2 to 8
 * @param sieveAmounts how the classes were read: MASS, PERCENT or HEIGHT
 * @param sievings one or more samples
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
        List<SievingEntry> sievings)
        implements ProductEntriesBuilder.With {

    /** Nothing typed yet. */
    public static final ProductEntries EMPTY = new ProductEntries(
            "",
            ProductForm.UNANSWERED,
            YesNo.UNANSWERED,
            "",
            "",
            EnteredQuantity.EMPTY,
            "",
            Condition.UNANSWERED,
            YesNo.UNANSWERED,
            YesNo.UNANSWERED,
            YesNo.UNANSWERED,
            EnteredQuantity.EMPTY,
            EnteredQuantity.EMPTY,
            EnteredQuantity.EMPTY,
            EnteredQuantity.EMPTY,
            List.of(),
            List.of(),
            AmountKind.UNANSWERED,
            List.of());

    public ProductEntries {
        name = Objects.requireNonNullElse(name, "");
        form = Objects.requireNonNullElse(form, ProductForm.UNANSWERED);
        treated = Objects.requireNonNullElse(treated, YesNo.UNANSWERED);
        inhibitor = Objects.requireNonNullElse(inhibitor, "");
        useBy = Objects.requireNonNullElse(useBy, "");
        nitrogen = EnteredQuantity.orEmpty(nitrogen);
        delivery = Objects.requireNonNullElse(delivery, "");
        condition = Objects.requireNonNullElse(condition, Condition.UNANSWERED);
        blend = Objects.requireNonNullElse(blend, YesNo.UNANSWERED);
        nitrateBefore = Objects.requireNonNullElse(nitrateBefore, YesNo.UNANSWERED);
        cleanAndDry = Objects.requireNonNullElse(cleanAndDry, YesNo.UNANSWERED);
        bagsSampled = EnteredQuantity.orEmpty(bagsSampled);
        bagsDelivered = EnteredQuantity.orEmpty(bagsDelivered);
        containerVolume = EnteredQuantity.orEmpty(containerVolume);
        containerEmpty = EnteredQuantity.orEmpty(containerEmpty);
        containerFull = Lists.typed(containerFull);
        apertures = Lists.typed(apertures);
        sieveAmounts = Objects.requireNonNullElse(sieveAmounts, AmountKind.UNANSWERED);
        sievings = Lists.of(sievings);
    }
}
