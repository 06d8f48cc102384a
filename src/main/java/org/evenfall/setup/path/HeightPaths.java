package org.evenfall.setup.path;

import org.evenfall.finding.Step;
import org.evenfall.setup.entry.HeightEntries;
import org.evenfall.setup.entry.Setup;

/** The height over the crop: entries of step 4. */
public final class HeightPaths {

    /** The record of this step. */
    public static final Part<HeightEntries> HEIGHT = Part.top("height", Step.HEIGHT, Setup::height, Setup::withHeight);

    /** Height of the crop, several places, cm, m or in. */
    public static final QuantityList<HeightEntries> CROP_HEIGHTS = HEIGHT.quantities(
                    "cropHeights",
                    "field.cropHeight",
                    Ranges.CROP_HEIGHT,
                    HeightEntries::cropHeights,
                    HeightEntries::withCropHeights)
            .neededByAssessment();

    /** Growth expected until the next pass. */
    public static final Quantity<HeightEntries> GROWTH =
            HEIGHT.quantity("growth", Ranges.GROWTH, HeightEntries::growth, HeightEntries::withGrowth);

    /** Wanted height of the reference point over the top of the crop. */
    public static final Quantity<HeightEntries> WANTED = HEIGHT.quantity(
                    "wanted",
                    "height.wanted",
                    Ranges.HEIGHT_OVER_CROP,
                    HeightEntries::wanted,
                    HeightEntries::withWanted)
            .neededByAssessment();

    /** Where on the machine that is measured from. */
    public static final Text<HeightEntries> REFERENCE_POINT = HEIGHT.text(
            "referencePoint", "height.reference", HeightEntries::referencePoint, HeightEntries::withReferencePoint);

    /** Height of the reference point over the ground now, left. */
    public static final Quantity<HeightEntries> LEFT = HEIGHT.quantity(
                    "left", "height.left", Ranges.HITCH_HEIGHT, HeightEntries::left, HeightEntries::withLeft)
            .neededByAssessment();

    /** Right. */
    public static final Quantity<HeightEntries> RIGHT = HEIGHT.quantity(
                    "right", "height.right", Ranges.HITCH_HEIGHT, HeightEntries::right, HeightEntries::withRight)
            .neededByAssessment();

    /** Front. */
    public static final Quantity<HeightEntries> FRONT = HEIGHT.quantity(
            "front", "height.front", Ranges.HITCH_HEIGHT, HeightEntries::front, HeightEntries::withFront);

    /** Rear. */
    public static final Quantity<HeightEntries> REAR =
            HEIGHT.quantity("rear", "height.rear", Ranges.HITCH_HEIGHT, HeightEntries::rear, HeightEntries::withRear);

    /** Where the chain hangs from, over the reference point (negative: below). */
    public static final Quantity<HeightEntries> CHAIN_POINT =
            HEIGHT.quantity("chainPoint", Ranges.CHAIN_POINT, HeightEntries::chainPoint, HeightEntries::withChainPoint);

    private HeightPaths() {}
}
