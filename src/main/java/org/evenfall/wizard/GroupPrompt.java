package org.evenfall.wizard;

import java.util.function.Supplier;
import javafx.scene.Node;
import org.evenfall.wizard.form.Prompt;

/** A prompt of entries made elsewhere, where nobody can be hurt unless it says so. */
record GroupPrompt(String id, Supplier<Node> made, Node picture, boolean mayHurt) implements Prompt {

    GroupPrompt(String id, Supplier<Node> made, Node picture) {
        this(id, made, picture, false);
    }

    @Override
    public boolean findingsAtEntries() {
        return false;
    }

    @Override
    public Node entries() {
        return made.get();
    }
}
