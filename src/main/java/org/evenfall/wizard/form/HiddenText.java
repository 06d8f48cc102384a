package org.evenfall.wizard.form;

import javafx.scene.control.TextField;
import javafx.scene.control.skin.TextFieldSkin;
import org.evenfall.setup.path.PrivateEntries;

/** Dots in the fields of names and prices while these are hidden; what is typed stays. */
final class HiddenText {

    private static final String DOT = "\u2022";

    private HiddenText() {}

    /** Lets a field follow, if the entry at its place is a name or a price. */
    static void follow(Form form, TextField field, String pointer) {
        if (PrivateEntries.at(pointer)) {
            form.follow(() -> draw(field, form.model().namesHidden()));
        }
    }

    private static void draw(TextField field, boolean hidden) {
        if (hidden != field.getSkin() instanceof Dots) {
            field.setSkin(hidden ? new Dots(field) : new TextFieldSkin(field));
        }
    }

    /** Draws a dot for each letter. */
    private static final class Dots extends TextFieldSkin {

        Dots(TextField field) {
            super(field);
        }

        @Override
        protected String maskText(String typed) {
            return DOT.repeat(typed.length());
        }
    }
}
