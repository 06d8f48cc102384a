package org.evenfall.wizard.step.match;

import java.util.function.Supplier;
import javafx.scene.Node;
import org.evenfall.wizard.form.Help;
import org.evenfall.wizard.form.Prompt;

/** The products tested on this machine. */
public final class TestedProductsPrompt implements Prompt {

    private final Supplier<? extends Node> entries;
    private final Supplier<? extends Node> picture;

    /**
     * @param entries the library, made when the page is
     * @param picture of the step
     */
    public TestedProductsPrompt(Supplier<? extends Node> entries, Supplier<? extends Node> picture) {
        this.entries = entries;
        this.picture = picture;
    }

    @Override
    public String id() {
        return "2b";
    }

    @Override
    public Node entries() {
        return entries.get();
    }

    @Override
    public Node picture() {
        return picture.get();
    }

    @Override
    public Help help() {
        return Help.terms("testedProduct");
    }
}
