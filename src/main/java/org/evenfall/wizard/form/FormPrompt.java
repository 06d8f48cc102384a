package org.evenfall.wizard.form;

import java.util.function.Supplier;
import javafx.scene.Node;

/** A prompt made of entries of a form, with a picture that other prompts of its step may share. */
public abstract class FormPrompt implements Prompt {

    private final String id;
    private final Form page;
    private final Supplier<? extends Node> picture;
    private Form form;

    /**
     * @param id permanent name of the prompt
     * @param page the form of the window; the entries are made with a part of it
     * @param picture next to them, made when it is first shown
     */
    protected FormPrompt(String id, Form page, Supplier<? extends Node> picture) {
        this.id = id;
        this.page = page;
        this.form = page.part();
        this.picture = picture;
    }

    /** Makes the entries. */
    protected final Form form() {
        return form;
    }

    @Override
    public boolean end() {
        form.end();
        form = page.part();
        return true;
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
