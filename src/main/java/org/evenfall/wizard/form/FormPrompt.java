package org.evenfall.wizard.form;

import java.util.function.Supplier;
import javafx.scene.Node;

/** A prompt made of entries of a form, with a picture that other prompts of its step may share. */
public abstract class FormPrompt implements Prompt {

    private final String id;
    private final Form form;
    private final Supplier<? extends Node> picture;

    /**
     * @param id permanent name of the prompt
     * @param form makes its entries
     * @param picture next to them, made when it is first shown
     */
    protected FormPrompt(String id, Form form, Supplier<? extends Node> picture) {
        this.id = id;
        this.form = form;
        this.picture = picture;
    }

    /** Makes the entries. */
    protected final Form form() {
        return form;
    }

    @Override
    public final String id() {
        return id;
    }

    @Override
    public final Node picture() {
        return picture.get();
    }
}
