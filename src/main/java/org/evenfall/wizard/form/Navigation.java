package org.evenfall.wizard.form;

/** The way from one prompt to another that is not the next. */
public interface Navigation {

    /** Brings a prompt to the front. */
    void show(String prompt);

    /** Brings a prompt to the front; the way on from it leads back to the one in front now. */
    void visit(String prompt);
}
