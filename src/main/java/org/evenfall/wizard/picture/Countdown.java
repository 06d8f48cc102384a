package org.evenfall.wizard.picture;

import java.util.function.LongSupplier;
import javafx.animation.AnimationTimer;
import javafx.geometry.Pos;
import javafx.scene.Scene;
import javafx.scene.control.Button;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyCodeCombination;
import javafx.scene.input.KeyCombination;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import org.evenfall.finding.Sentences;
import org.jspecify.annotations.Nullable;

/**
 * Counts down the seconds of a catch, and on until it is stopped; for a known weight it counts up. Started and stopped by its
 * button or Ctrl+T; it never takes the keyboard.
 */
public final class Countdown extends VBox {

    private static final KeyCombination KEY = new KeyCodeCombination(KeyCode.T, KeyCombination.SHORTCUT_DOWN);

    private final Sentences words;
    private final Stopwatch watch;
    private final CountdownFace face;
    private final Button button = new Button();
    private final AnimationTimer frames;
    private @Nullable Double seconds;
    private String note = "";

    /** @param nanoTime a clock, ns, such as {@link System#nanoTime} */
    public Countdown(Sentences words, LongSupplier nanoTime) {
        this.words = words;
        this.watch = new Stopwatch(nanoTime);
        this.face = new CountdownFace(words);
        this.frames = new AnimationTimer() {
            @Override
            public void handle(long now) {
                refresh();
            }
        };
        setAlignment(Pos.CENTER);
        setVgrow(face, javafx.scene.layout.Priority.ALWAYS);
        button.setId("countdown");
        button.setFocusTraversable(false);
        button.setMinSize(Region.USE_PREF_SIZE, Region.USE_PREF_SIZE);
        button.setOnAction(event -> toggle());
        getStyleClass().add("countdown");
        getChildren().addAll(face, button);
        sceneProperty().addListener((property, old, scene) -> moved(old, scene));
        refresh();
    }

    /**
     * While it runs it goes on with the new ones.
     *
     * @param wanted seconds to count down; null counts up
     * @param timing a small sentence on the error of timing; may be empty
     */
    public void set(@Nullable Double wanted, String timing) {
        seconds = wanted;
        note = timing;
        refresh();
    }

    /** The key works wherever the keyboard is, while this is on the page. */
    private void moved(@Nullable Scene old, @Nullable Scene scene) {
        if (old != null) {
            old.getAccelerators().remove(KEY);
        }
        if (scene != null) {
            scene.getAccelerators().put(KEY, this::byKey);
        } else {
            frames.stop();
        }
    }

    private void byKey() {
        boolean shown = true;
        for (javafx.scene.Node up = this; up != null; up = up.getParent()) {
            shown &= up.isVisible();
        }
        if (shown) {
            toggle();
        }
    }

    private void toggle() {
        watch.toggle();
        if (watch.state() == Stopwatch.State.RUNNING) {
            frames.start();
        } else {
            frames.stop();
        }
        refresh();
    }

    /** Shows the time now. */
    void refresh() {
        face.show(watch.state(), watch.elapsedS(), seconds, note);
        button.setText(words.text(
                watch.state() == Stopwatch.State.RUNNING ? "picture.countdown.stop" : "picture.countdown.start"));
    }

    /** The digits. */
    CountdownFace face() {
        return face;
    }
}
