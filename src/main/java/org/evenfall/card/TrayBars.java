package org.evenfall.card;

import java.util.List;
import java.util.stream.IntStream;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureElement;
import org.evenfall.page.MeanBars;
import org.evenfall.page.TextStyle;
import org.evenfall.trays.CvLimits;

/** Each tray against the mean, side by side, with the band of 10 % to either side. */
final class TrayBars {

    private static final double HEIGHT = 40;

    /** Highest bar that is not cut, % of the mean. */
    private static final double MOST_PERCENT = 130;

    /** Styles of the numbers, the largest first. */
    private static final List<TextStyle> STYLES =
            SmallText.SIZES.stream().map(SmallText::strong).toList();

    private TrayBars() {}

    /**
     * The bars.
     *
     * @param percent each tray, % of the mean
     * @param tag element of the figure, which has the same in words
     */
    static MeanBars of(List<Double> percent, PDStructureElement tag) {
        int trays = percent.size();
        List<MeanBars.Bar> bars = IntStream.range(0, trays)
                .mapToObj(i -> new MeanBars.Bar((i + 0.1) / trays, (i + 0.9) / trays, percent.get(i)))
                .toList();
        return new MeanBars(bars, List.of(CvLimits.GOOD_PERCENT), HEIGHT, MOST_PERCENT, STYLES, tag);
    }
}
