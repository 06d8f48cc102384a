package org.evenfall.setup;

import java.util.List;
import org.evenfall.flight.WidthScan;
import org.evenfall.trays.OverlapResult;

/**
 * One pass over a line of trays, overlapped with its neighbours by arithmetic.
 *
 * @param overlap at the tramline width
 * @param atMost10 working widths with a CV of at most 10 %, m
 * @param atMost15 at most 15 %, m
 * @param positionsM trays of the line, m, from left to right
 * @param amountsG what they caught, g
 */
public record SinglePassTest(
        OverlapResult overlap,
        List<WidthScan.Interval> atMost10,
        List<WidthScan.Interval> atMost15,
        List<Double> positionsM,
        List<Double> amountsG) {

    /** Copies the lists. */
    public SinglePassTest {
        atMost10 = List.copyOf(atMost10);
        atMost15 = List.copyOf(atMost15);
        positionsM = List.copyOf(positionsM);
        amountsG = List.copyOf(amountsG);
    }
}
