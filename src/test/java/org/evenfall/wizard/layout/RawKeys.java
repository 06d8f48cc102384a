package org.evenfall.wizard.layout;

import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import javafx.scene.Node;
import javafx.scene.control.Control;
import javafx.scene.control.Labeled;
import javafx.scene.control.TextInputControl;
import javafx.scene.text.Text;

/** Texts that are the key of a sentence that is missing or was not looked up. */
public final class RawKeys {

    private static final Pattern KEY = Pattern.compile("^[a-z]+(\\.\\w+)+$");

    private RawKeys() {}

    /** Such texts, read or heard. */
    public static List<String> in(Node root) {
        return texts(root).stream().filter(RawKeys::looksLikeAKey).toList();
    }

    /** Whether a text is one. */
    public static boolean looksLikeAKey(String text) {
        return KEY.matcher(text).matches();
    }

    private static Set<String> texts(Node root) {
        Set<String> texts = new TreeSet<>();
        for (Node node : Shown.nodes(root)) {
            add(node.getAccessibleText(), texts);
            add(node.getAccessibleHelp(), texts);
            if (node instanceof Labeled labeled) {
                add(labeled.getText(), texts);
            }
            if (node instanceof Text text) {
                add(text.getText(), texts);
            }
            if (node instanceof TextInputControl input) {
                add(input.getPromptText(), texts);
            }
            if (node instanceof Control control && control.getTooltip() != null) {
                add(control.getTooltip().getText(), texts);
            }
        }
        return texts;
    }

    private static void add(String text, Set<String> texts) {
        if (text != null && !text.isBlank()) {
            texts.add(text);
        }
    }
}
