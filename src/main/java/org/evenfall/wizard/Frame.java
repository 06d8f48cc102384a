package org.evenfall.wizard;

import java.util.List;
import java.util.function.Supplier;
import org.evenfall.finding.Finding;
import org.evenfall.finding.Step;

/** What the pages ask of the window around them. */
interface Frame {

    /** Shows a sentence at the foot until the next change of prompt; empty removes it. */
    void showNotice(String sentence);

    /** Whether the open setup can only be read: nothing on the pages can be changed then. */
    void readOnly(boolean on);

    /** Shows a sentence above all pages, with what the person can do about it; an empty one removes it. It is asked for again when names are hidden. */
    void ask(Supplier<String> sentence, List<Choice> choices);

    /**
     * Something that the person can do.
     *
     * @param name words on the button
     * @param action what it does
     */
    record Choice(String name, Runnable action) {}

    /** Brings the first prompt of a step to the front. */
    void go(Step step);

    /** Brings a prompt to the front by its id. */
    void show(String prompt);

    /** Brings a prompt to the front by its id; the way on from it leads back to the one in front now. */
    void visit(String prompt);

    /** Brings the prompt to the front that a finding is about; the way on from it leads back. */
    void mend(Finding finding);

    /** Every prompt that is asked before the card, with its state and all that was answered there. */
    List<Review> review();

    /**
     * One prompt as it is answered.
     *
     * @param step its step
     * @param prompt its id
     * @param state its state
     * @param answers one line an entry or row
     * @param findings what is found about them
     */
    record Review(Step step, String prompt, PromptState state, List<String> answers, List<Finding> findings) {}

    /** Brings the first prompt to the front that is still open. */
    void goOn();

    /** Shows whether today is a day to spread. */
    void showDay();
}
