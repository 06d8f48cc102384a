package org.evenfall.wizard;

import org.evenfall.finding.Step;

/** What the pages ask of the window around them. */
interface Frame {

    /** Shows a sentence at the foot until the next change of prompt; empty removes it. */
    void showNotice(String sentence);

    /** Brings the first prompt of a step to the front. */
    void go(Step step);

    /** Brings the first prompt to the front that is still open. */
    void goOn();

    /** Shows whether today is a day to spread. */
    void showDay();
}
