package org.evenfall.bench;

import javafx.application.Application;
import javafx.scene.Scene;
import javafx.scene.control.Label;
import javafx.scene.layout.StackPane;
import javafx.stage.Stage;

/** A window with one word, and without an argument not even that: what the start of the program is held against. */
public final class BareStart {

    private BareStart() {}

    /** The window. */
    public static final class Window extends Application {

        @Override
        public void start(Stage stage) {
            stage.setTitle("bare");
            stage.setScene(new Scene(new StackPane(new Label("bare")), BareWindow.WIDTH, BareWindow.HEIGHT));
            stage.show();
        }
    }

    /** With an argument the window opens; without, a line is printed. */
    public static void main(String[] args) {
        if (args.length == 0) {
            System.out.println("bare");
        } else {
            Application.launch(Window.class);
        }
    }
}
