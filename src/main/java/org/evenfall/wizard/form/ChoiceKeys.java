package org.evenfall.wizard.form;

import java.util.List;
import java.util.Locale;
import java.util.OptionalInt;
import java.util.function.IntConsumer;
import java.util.function.IntSupplier;
import java.util.stream.IntStream;
import javafx.scene.Node;
import javafx.scene.input.KeyEvent;

/** The keyboard in a choice: a digit takes the answer of that number, a letter the next answer that begins with it. */
final class ChoiceKeys {

    private final List<String> answers;
    private final Locale locale;
    private final IntConsumer choose;

    /**
     * @param answers the words of the answers, in the order in which they are shown
     * @param locale language of the words
     * @param choose takes the index of the answer that was chosen, from 0
     */
    ChoiceKeys(List<String> answers, Locale locale, IntConsumer choose) {
        this.answers =
                answers.stream().map(answer -> answer.toLowerCase(locale)).toList();
        this.locale = locale;
        this.choose = choose;
    }

    /**
     * Listens while a node has the keyboard.
     *
     * @param at index of the answer that the keyboard is on; negative for none
     */
    void listen(Node node, IntSupplier at) {
        node.addEventHandler(KeyEvent.KEY_TYPED, event -> {
            if (!event.isAltDown() && !event.isShortcutDown() && !event.isMetaDown()) {
                answer(event.getCharacter(), at.getAsInt()).ifPresent(index -> {
                    choose.accept(index);
                    event.consume();
                });
            }
        });
    }

    /** The answer that a character chooses. */
    OptionalInt answer(String typed, int at) {
        if (typed.length() != 1 || !Character.isLetterOrDigit(typed.charAt(0))) {
            return OptionalInt.empty();
        }
        if (Character.isDigit(typed.charAt(0))) {
            int number = Character.digit(typed.charAt(0), 10);
            return number >= 1 && number <= answers.size() ? OptionalInt.of(number - 1) : OptionalInt.empty();
        }
        String letter = typed.toLowerCase(locale);
        int count = answers.size();
        return IntStream.rangeClosed(1, count)
                .map(step -> Math.floorMod(at + step, count))
                .filter(index -> answers.get(index).startsWith(letter))
                .findFirst();
    }
}
