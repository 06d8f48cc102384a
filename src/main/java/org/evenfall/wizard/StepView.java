package org.evenfall.wizard;

import javafx.scene.Node;
import org.evenfall.finding.Step;

/**
 * One step of the wizard: its entries in the middle, its live picture at the right. A new step is one class that
 * implements this and one line in {@link StepViews}.
 */
interface StepView {

    Step step();

    /** The entries, made once. Keys {@code step.NAME.question} and {@code step.NAME.why} head them. */
    Node entries();

    /** The picture, made once; it follows the model by itself. */
    Node picture();

    /** One line of result for the rail, or empty. */
    String result();

    /** Called when the step comes to the front. */
    default void shown() {}
}
