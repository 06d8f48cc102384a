package org.evenfall.wizard;

import java.util.List;
import org.evenfall.wizard.form.Form;

/** The steps in their fixed order. A new step is one class and one line here. */
final class StepViews {

    private StepViews() {}

    static List<StepView> all(Form form, WizardContext context, SetupDocument document) {
        SheetWriter sheets = new SheetWriter(context, document);
        return List.of(
                new StartStep(
                        form,
                        document,
                        new RecentSetups(document, context),
                        new RecordWriter(context, document),
                        sheets),
                new ProductStep(form),
                new MatchStep(form, document),
                new MachineCheckStep(form),
                new HeightStep(form),
                new RateStep(form),
                new TraysStep(form, context, document, sheets),
                new CardStep(form, context, document));
    }
}
