package org.evenfall.wizard;

import java.util.List;
import org.evenfall.finding.Step;
import org.evenfall.wizard.form.Prompt;

/** One step of the wizard: its prompts in their order. A new step is one class that implements this and one line in {@link StepViews}. */
interface StepView {

    Step step();

    /** The prompts, made once. */
    List<Prompt> prompts();

    /** One line of result for the rail, or empty. */
    String result();
}
