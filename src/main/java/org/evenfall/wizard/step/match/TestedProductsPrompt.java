package org.evenfall.wizard.step.match;

import javafx.scene.Node;
import org.evenfall.wizard.form.Help;
import org.evenfall.wizard.form.Prompt;

/**
 * The products tested on this machine.
 *
 * @param entries the library
 * @param picture of the step
 */
public record TestedProductsPrompt(Node entries, Node picture) implements Prompt {

    @Override
    public String id() {
        return "2b";
    }

    @Override
    public Help help() {
        return Help.terms("testedProduct");
    }
}
