package org.evenfall.setup.tool;

import org.evenfall.flight.DrivingPattern;
import org.evenfall.flight.SpreadPattern;
import org.evenfall.flight.WidthScan;
import org.evenfall.trays.OverlapResult;

/** One pass over a line of trays, overlapped with its neighbours at a working width. */
public final class SinglePassTool {

    /** More of the whole than this in an outermost tray, %: the line was too short. */
    public static final double EDGE_PERCENT = OverlapResult.EDGE_PERCENT;

    private SinglePassTool() {}

    /**
     * The distribution across the field when passes of this pattern follow each other.
     *
     * @param line amounts across one pass; positions and width in one unit of length
     * @param width working width, positive
     */
    public static OverlapResult overlap(SpreadPattern line, DrivingPattern driving, double width) {
        return OverlapResult.of(line, driving, width);
    }

    /** The working widths at which the coefficient of variation keeps its limits. */
    public static WidthScan widths(SpreadPattern line, DrivingPattern driving) {
        return OverlapResult.scan(line, driving);
    }
}
