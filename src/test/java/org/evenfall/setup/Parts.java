package org.evenfall.setup;

import java.util.List;
import org.evenfall.bench.Work;
import org.evenfall.setup.entry.Setup;
import org.evenfall.setup.entry.YesNo;
import org.evenfall.setup.path.TrayPaths;
import org.evenfall.trays.AdviceInput;
import org.evenfall.trays.LeverRules;
import org.evenfall.trays.Tramlines;

/** Parts of an assessment by themselves, with all that comes before them done already. */
public final class Parts {

    private Parts() {}

    /** The ranking of the tested products of a setup. */
    public static Work match(Setup setup) {
        FieldResult field = Assessor.assessField(setup);
        return () -> MatchAssessor.assess(field.read(), field.machine(), field.product(), AssessOptions.USUAL)
                .present();
    }

    /** What the advice follows from after the first tray test of a setup. */
    public static AdviceInput firstAdvice(Setup setup) {
        FieldResult field = Assessor.assessField(setup);
        ReadSetup read = field.read();
        List<TrayTestResult> first = field.trays().tests().subList(0, 1);
        return new AdviceInput(
                DoneTests.of(read, first),
                new LeverRules(field.machine().levers(), read.get(TrayPaths.TWO_LEVERS) == YesNo.YES),
                OrderOfCure.of(
                        read,
                        field.machine(),
                        field.machineCheck(),
                        field.rate(),
                        field.start().ptoRpm()),
                new Tramlines(field.tramlineWidthM(), SetNow.driving(read)),
                field.trays().windLimits());
    }
}
