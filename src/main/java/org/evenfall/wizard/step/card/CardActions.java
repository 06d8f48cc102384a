package org.evenfall.wizard.step.card;

import org.evenfall.finding.Finding;

/** What can be done with the card of the open setup. */
public interface CardActions {

    /** Signs it and writes it into the farm's folder. */
    void make();

    /** Signs it and writes it to a file that the person chooses. */
    void saveElsewhere();

    /** Opens the file written last. */
    void open();

    /** Signs it and sends it to a printer. */
    void print();

    /** Brings the prompts of what is still open to the front. */
    void mend(Finding finding);
}
