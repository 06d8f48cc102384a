package org.evenfall.setup.path;

import java.util.List;
import org.evenfall.finding.Step;
import org.evenfall.granule.ProductForm;
import org.evenfall.setup.entry.AmountKind;
import org.evenfall.setup.entry.Condition;
import org.evenfall.setup.entry.ProductEntries;
import org.evenfall.setup.entry.Setup;
import org.evenfall.setup.entry.SievingEntry;
import org.evenfall.setup.entry.YesNo;

/** The product: entries of step 1. */
public final class ProductPaths {

    /** The record of this step. */
    public static final Part<ProductEntries> PRODUCT =
            Part.top("product", Step.PRODUCT, Setup::product, Setup::withProduct);

    /** What the bag says, in the person's words. */
    public static final Text<ProductEntries> NAME = PRODUCT.text(
                    "name", "product.name", ProductEntries::name, ProductEntries::withName)
            .needed("missing.productName");

    /** What the granules are. */
    public static final Choice<ProductEntries, ProductForm> FORM = PRODUCT.choice(
                    "form", "product.form", ProductForm.class, ProductEntries::form, ProductEntries::withForm)
            .needed("missing.form");

    /** Treated with a urease inhibitor. */
    public static final Choice<ProductEntries, YesNo> TREATED = PRODUCT.choice(
                    "treated", "product.treated", YesNo.class, ProductEntries::treated, ProductEntries::withTreated)
            .asked("missing.treated");

    /** Which. */
    public static final Text<ProductEntries> INHIBITOR =
            PRODUCT.text("inhibitor", "product.inhibitor", ProductEntries::inhibitor, ProductEntries::withInhibitor);

    /** Use by, ISO date (2027-04-30). */
    public static final Text<ProductEntries> USE_BY =
            PRODUCT.date("useBy", "product.useBy", ProductEntries::useBy, ProductEntries::withUseBy);

    /** Delivery or batch number. */
    public static final Text<ProductEntries> DELIVERY = PRODUCT.text(
                    "delivery", "product.delivery", ProductEntries::delivery, ProductEntries::withDelivery)
            .needed("missing.delivery");

    /** How it runs. */
    public static final Choice<ProductEntries, Condition> CONDITION = PRODUCT.choice(
                    "condition",
                    "product.condition",
                    Condition.class,
                    ProductEntries::condition,
                    ProductEntries::withCondition)
            .asked("missing.condition");

    /** A blend of different granules. */
    public static final Choice<ProductEntries, YesNo> BLEND =
            PRODUCT.choice("blend", "product.blendAsk", YesNo.class, ProductEntries::blend, ProductEntries::withBlend);

    /** A nitrate product was in the machine before. */
    public static final Choice<ProductEntries, YesNo> NITRATE_BEFORE = PRODUCT.choice(
                    "nitrateBefore",
                    "product.nitrateBefore",
                    YesNo.class,
                    ProductEntries::nitrateBefore,
                    ProductEntries::withNitrateBefore)
            .asked("missing.nitrateBefore");

    /** Hopper, discs, trays and tubes emptied, clean and dry. */
    public static final Choice<ProductEntries, YesNo> CLEAN_AND_DRY = PRODUCT.choice(
                    "cleanAndDry",
                    "product.cleanAndDry",
                    YesNo.class,
                    ProductEntries::cleanAndDry,
                    ProductEntries::withCleanAndDry)
            .neededByAssessment();

    /** Nitrogen share, %. */
    public static final Quantity<ProductEntries> NITROGEN = PRODUCT.quantity(
                    "nitrogen", Ranges.NITROGEN_SHARE, ProductEntries::nitrogen, ProductEntries::withNitrogen)
            .needed("missing.nitrogen");

    /** Bags from which the sample was taken. */
    public static final Quantity<ProductEntries> BAGS_SAMPLED = PRODUCT.quantity(
            "bagsSampled",
            "field.bagsSampled",
            Ranges.BAGS,
            ProductEntries::bagsSampled,
            ProductEntries::withBagsSampled);

    /** Bags delivered. */
    public static final Quantity<ProductEntries> BAGS_DELIVERED = PRODUCT.quantity(
            "bagsDelivered",
            "field.bagsDelivered",
            Ranges.BAGS,
            ProductEntries::bagsDelivered,
            ProductEntries::withBagsDelivered);

    /** Volume of the container, L or ml. */
    public static final Quantity<ProductEntries> CONTAINER_VOLUME = PRODUCT.quantity(
                    "containerVolume",
                    Ranges.CONTAINER_VOLUME,
                    ProductEntries::containerVolume,
                    ProductEntries::withContainerVolume)
            .neededByAssessment();

    /** Its empty weight, kg or g. */
    public static final Quantity<ProductEntries> CONTAINER_EMPTY = PRODUCT.quantity(
            "containerEmpty",
            Ranges.CONTAINER_EMPTY,
            ProductEntries::containerEmpty,
            ProductEntries::withContainerEmpty);

    /** Weight of each struck-level filling with the container, kg or g. */
    public static final QuantityList<ProductEntries> CONTAINER_FULL = PRODUCT.quantities(
                    "containerFull",
                    "product.filling",
                    Ranges.CONTAINER_FULL,
                    ProductEntries::containerFull,
                    ProductEntries::withContainerFull)
            .neededByAssessment();

    /** Sieve apertures, mm or in, finest first; 2 to 8. */
    public static final QuantityList<ProductEntries> APERTURES = PRODUCT.quantities(
            "apertures", "field.aperture", Ranges.APERTURE, ProductEntries::apertures, ProductEntries::withApertures);

    /** How the classes were read: MASS, PERCENT or HEIGHT. */
    public static final Choice<ProductEntries, AmountKind> SIEVE_AMOUNTS = PRODUCT.choice(
                    "sieveAmounts",
                    "product.sieveAmounts",
                    AmountKind.class,
                    ProductEntries::sieveAmounts,
                    ProductEntries::withSieveAmounts)
            .only(List.of(AmountKind.MASS, AmountKind.PERCENT, AmountKind.HEIGHT));

    /** One or more samples. */
    public static final Rows<ProductEntries, SievingEntry> SIEVINGS = PRODUCT.rows(
                    "sievings",
                    "product.sieveTitle",
                    SievingEntry.EMPTY,
                    ProductEntries::sievings,
                    ProductEntries::withSievings)
            .neededByAssessment();

    /** Amount in each class, finest class (through the finest sieve) first; one more than there are apertures; one unit throughout. */
    public static final QuantityList<SievingEntry> SIEVING_AMOUNTS = SIEVINGS.row()
            .quantities(
                    "amounts",
                    "product.sample",
                    RangeRules.SIEVE_AMOUNT,
                    SievingEntry::amounts,
                    SievingEntry::withAmounts);

    /** Median size that the bag or its specification sheet names, mm or SGN; it counts while nothing is sieved. */
    public static final Quantity<ProductEntries> MEDIAN_SIZE = PRODUCT.quantity(
            "medianSize",
            "product.medianSize",
            Ranges.MEDIAN_DIAMETER,
            ProductEntries::medianSize,
            ProductEntries::withMedianSize);

    private ProductPaths() {}
}
