package org.evenfall.wizard;

import org.evenfall.wizard.form.Navigation;

/**
 * Goes from a prompt to another by the frame, which is made after the prompts.
 *
 * @param document knows the frame once it is made
 */
record DocumentNavigation(SetupDocument document) implements Navigation {

    @Override
    public void show(String prompt) {
        document.frame().show(prompt);
    }

    @Override
    public void visit(String prompt) {
        document.frame().visit(prompt);
    }
}
