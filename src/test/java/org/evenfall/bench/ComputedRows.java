package org.evenfall.bench;

import java.util.List;
import org.evenfall.flight.LandingPattern;
import org.evenfall.flight.PassConditions;
import org.evenfall.flight.TwinDisc;
import org.evenfall.granule.SizeDistribution;
import org.evenfall.setup.Parts;
import org.evenfall.trays.AdviceInput;
import org.evenfall.trays.AdviceKind;
import org.evenfall.trays.Advisor;

/** The computations of the trade, each against the same plain loop, so that they compare. */
final class ComputedRows {

    private static final SizeDistribution UREA = new SizeDistribution(3.2, 1.2, 0.03, 0.05, false);
    private static final double UREA_KG_PER_M3 = 1340;
    private static final PassConditions IN_WIND =
            new PassConditions(TwinDisc.usual(0.4, 850).fans(), 0.75, 1, 3.3, 1, 3);

    private ComputedRows() {}

    static List<Row> all() {
        return List.of(
                row(
                        "pattern: landing pattern of one pass in cross wind",
                        () -> LandingPattern.of(UREA, UREA_KG_PER_M3, IN_WIND)),
                row("match: ranking of the 9 tested products of " + Demo.NAME, Parts.match(Demo.setup())),
                row("evenness: field CV of a test of 13 trays", new DrawnTests(13)),
                row("advice: the move after the first tray test of " + Demo.NAME, advice()));
    }

    private static Row row(String measured, Work work) {
        return new PlainRow(measured, PlainLoop.NAME, work, PlainLoop::run);
    }

    private static Work advice() {
        AdviceInput input = Parts.firstAdvice(Demo.setup());
        if (Advisor.advise(input).kind() != AdviceKind.MOVE_LEVER) {
            throw new IllegalStateException("the demo moves no lever after its first test");
        }
        return () -> Advisor.advise(input);
    }
}
