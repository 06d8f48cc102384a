package org.evenfall.setup;

import java.time.LocalDate;
import java.util.List;
import org.evenfall.quantity.DateReading;
import org.evenfall.quantity.DateText;
import org.evenfall.quantity.EnteredQuantity;
import org.evenfall.setup.entry.BucketEntry;
import org.evenfall.setup.entry.CardEntries;
import org.evenfall.setup.entry.GuideEntries;
import org.evenfall.setup.entry.HeightEntries;
import org.evenfall.setup.entry.LogEntries;
import org.evenfall.setup.entry.MachineCheckEntries;
import org.evenfall.setup.entry.MatchEntries;
import org.evenfall.setup.entry.ProductEntries;
import org.evenfall.setup.entry.RateEntries;
import org.evenfall.setup.entry.Setup;
import org.evenfall.setup.entry.SpeedRunEntry;
import org.evenfall.setup.entry.TestedProductEntry;
import org.evenfall.setup.entry.TrayEntries;
import org.evenfall.setup.entry.YesNo;
import org.evenfall.trays.Surface;

/**
 * The setup of another season from an earlier one. Farm, machine, tested products, equipment, plan and people stay; what was
 * measured, what belongs to the product and the card go. The product joins the tested products where its tray test passed.
 * Unknown keys stay at what is kept.
 */
public final class NextSeason {

    private static final int DIGITS_OF_A_YEAR = 4;

    private NextSeason() {}

    /**
     * The setup of a season.
     *
     * @param from setup of an earlier season
     * @param assessment its assessment
     * @param season year of the season
     */
    public static Setup of(Setup from, Assessment assessment, int season) {
        List<TestedProductEntry> library = KeptProducts.join(
                from.match().library(),
                KeptProducts.of(from, assessment).stream().toList());
        return from.withStart(from.start().withSeason(Integer.toString(season)).withCrop(""))
                .withProduct(equipment(from.product()))
                .withMatch(MatchEntries.EMPTY
                        .withLibrary(library)
                        .withUnknownKeys(from.match().unknownKeys()))
                .withMachineCheck(MachineCheckEntries.EMPTY)
                .withHeight(HeightEntries.EMPTY
                        .withReferencePoint(from.height().referencePoint())
                        .withChainPoint(from.height().chainPoint())
                        .withUnknownKeys(from.height().unknownKeys()))
                .withRate(plan(from.rate()))
                .withTrays(equipment(from.trays()))
                .withCard(people(from.card()))
                .withLog(LogEntries.EMPTY)
                .withGuide(GuideEntries.EMPTY
                        .withInvented(from.guide().invented())
                        .withUnknownKeys(from.guide().unknownKeys()));
    }

    /**
     * The season after that of a setup; where it names none, after that of its card, else after that of the day.
     *
     * @param today counts where the setup tells nothing
     */
    public static int after(Setup from, LocalDate today) {
        String season = from.start().season().strip();
        if (season.matches("\\d{" + DIGITS_OF_A_YEAR + "}")) {
            return Integer.parseInt(season) + 1;
        }
        LocalDate day = DateText.read(from.card().date()) instanceof DateReading.Value value ? value.date() : today;
        return Seasons.of(day) + 1;
    }

    /** Container and sieves, which the person has. */
    private static ProductEntries equipment(ProductEntries product) {
        return ProductEntries.EMPTY
                .withContainerVolume(product.containerVolume())
                .withContainerEmpty(product.containerEmpty())
                .withApertures(product.apertures())
                .withSieveAmounts(product.sieveAmounts());
    }

    /** A rate that was given as product belongs to that product. */
    private static RateEntries plan(RateEntries rate) {
        return rate.withPlan(rate.plan().withProductRate(EnteredQuantity.EMPTY))
                .withSpeedRuns(List.<SpeedRunEntry>of())
                .withBucketTests(List.<BucketEntry>of())
                .withHopperUsed(EnteredQuantity.EMPTY)
                .withAreaDone(EnteredQuantity.EMPTY);
    }

    /** Trays, scale, tractor and border device; where to switch on and off is found again with each product. */
    private static TrayEntries equipment(TrayEntries trays) {
        return trays.withWind(EnteredQuantity.EMPTY)
                .withSurface(Surface.UNANSWERED)
                .withTraysLevel(YesNo.UNANSWERED)
                .withTubesDry(YesNo.UNANSWERED)
                .withClearOfWheelmarks(YesNo.UNANSWERED)
                .withTests(List.of())
                .withLine(List.of())
                .withSwitchOn(EnteredQuantity.EMPTY)
                .withSwitchOff(EnteredQuantity.EMPTY);
    }

    private static CardEntries people(CardEntries card) {
        return card.withDate("")
                .withRevision(0)
                .withPreviousDate("")
                .withRemarks("")
                .withUnevenReason("");
    }
}
