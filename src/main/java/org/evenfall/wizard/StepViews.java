package org.evenfall.wizard;

import java.util.List;

/** The steps in their fixed order. A new step is one class and one line here. */
final class StepViews {

    private StepViews() {}

    static List<StepView> all(Form form, WizardContext context, Desk desk) {
        return List.of(
                new StartStep(form, desk),
                new ProductStep(form),
                new MatchStep(form, desk),
                new YardStep(form),
                new HeightStep(form),
                new RateStep(form),
                new TraysStep(form, context, desk),
                new CardStep(form, context, desk));
    }
}
