package org.evenfall.wizard;

import java.util.function.Supplier;
import javafx.scene.Node;
import org.evenfall.wizard.form.Prompt;

/** A prompt of entries made elsewhere. */
record GroupPrompt(String id, Supplier<Node> made, Node picture) implements Prompt {

    @Override
    public Node entries() {
        return made.get();
    }
}
