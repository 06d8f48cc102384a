package org.evenfall.card;

import java.util.List;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import org.evenfall.page.TextStyle;

/**
 * How all but the figures that the driver sets is printed. The first of the sizes that keeps a card to two sides is
 * taken, and the largest where none does.
 *
 * @param sizePt font size on the back, which is read before the work, points
 * @param dayInFull whether the lines of the day to spread are printed, not only where to read them
 */
record SmallText(double sizePt, boolean dayInFull) {

    /** Points, from the largest down. Assumption: 9 points is the smallest that is read in the hand. */
    private static final double[] SIZES_PT = {TextStyle.SMALLEST, 13, 12, 11, 10.5, 10, 9.5, 9};

    /** The sizes from the largest down with the day in full, then without it. */
    static final List<SmallText> SIZES = Stream.of(true, false)
            .flatMap(inFull -> DoubleStream.of(SIZES_PT).mapToObj(size -> new SmallText(size, inFull)))
            .toList();

    /** Smallest size for which a larger sheet has no second page, points. Assumption: below, two pages are read better. */
    private static final double ONE_PAGE_PT = 11;

    /** Smallest size on the front, points. Assumption: legible on the dashboard while the machine is not moving. */
    private static final double FRONT_PT = 12;

    /** The sizes with which all may be on one page: on a larger sheet only those that are read well, on a finding any. */
    static List<SmallText> onePage(CardContent.Sheet sheet) {
        return SIZES.stream()
                .filter(SmallText::dayInFull)
                .filter(small -> sheet.findingOnly() || (sheet.isLarge() && small.sizePt() >= ONE_PAGE_PT))
                .toList();
    }

    /** The lines of the day, or where to read them. */
    CardContent.Section day(CardContent.Day day) {
        return new CardContent.Section(
                day.title(), dayInFull || day.lines().isEmpty() ? day.lines() : List.of(day.elsewhere()));
    }

    TextStyle body() {
        return TextStyle.BODY.sized(sizePt);
    }

    TextStyle strong() {
        return TextStyle.STRONG.sized(sizePt);
    }

    TextStyle heading() {
        return TextStyle.HEADING.sized(sizePt);
    }

    /** The same on the front. */
    SmallText front() {
        return new SmallText(Math.max(FRONT_PT, sizePt), dayInFull);
    }
}
