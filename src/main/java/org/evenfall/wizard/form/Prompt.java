package org.evenfall.wizard.form;

import java.util.Optional;
import javafx.scene.Node;

/**
 * One task of the guide on one page: a question, its entries, its picture. Keys {@code prompt.ID.question} and {@code
 * prompt.ID.how} head it; where one can go on without it, {@code prompt.ID.without} says what that means. A new prompt is one class in a package of its step and one line in the list of the steps.
 */
public interface Prompt {

    /** Its permanent name, for example 1f: the number of the step and a letter. */
    String id();

    /** The entries; they follow the model by themselves. Made once, or once more after each {@link #end}. */
    Node entries();

    /**
     * Ends what the entries follow, before they are dropped.
     *
     * @return false where the entries have to stay, because they hold something that is kept nowhere else
     */
    default boolean end() {
        return false;
    }

    /** The picture, made once; it follows the model by itself. Prompts of a step may share one. */
    Node picture();

    /** Whether it is asked in this setup. */
    default boolean asked() {
        return true;
    }

    /** Whether somebody can be hurt here: the cautions of the step come before the first such prompt. */
    default boolean mayHurt() {
        return false;
    }

    /** Whether it takes the whole window, without steps and picture. */
    default boolean alone() {
        return false;
    }

    /** Sources and terms of its help; why and how are texts under its id. */
    default Help help() {
        return Help.NONE;
    }

    /** Whether its answers are known already, so that the way on passes it; the list of prompts still leads to it. */
    default boolean known() {
        return false;
    }

    /**
     * Whether a place of the setup belongs to this prompt though it is not on its page now, such as an earlier test.
     *
     * @param pointer pointer of an entry or a group of entries
     */
    default boolean holds(String pointer) {
        return false;
    }

    /** Whether it is answered, where that does not follow from what is typed in it; empty where it does. */
    default Optional<Boolean> answered() {
        return Optional.empty();
    }

    /** Whether findings of its step that are about no entry are shown here, and not on the last page of the step. */
    default boolean holdsRest() {
        return false;
    }

    /** Called when it comes to the front. */
    default void shown() {}
}
