package org.evenfall.wizard.form;

import java.util.List;
import javafx.application.Platform;
import javafx.scene.Node;
import javafx.scene.control.TextField;
import javafx.scene.input.Clipboard;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.GridPane;
import org.jspecify.annotations.Nullable;

/** The keyboard in a grid of cells: Enter goes one cell down, a column pasted from a spreadsheet fills the cells below. */
public final class GridKeys {

    private final GridPane grid;

    /** @param grid its first row and column are headings */
    public GridKeys(GridPane grid) {
        this.grid = grid;
    }

    /** Puts a cell into the grid, in a row and column from 0, headings not counted. */
    public void add(Node cell, int row, int column) {
        cell.addEventFilter(KeyEvent.KEY_PRESSED, event -> key(event, row, column));
        grid.add(cell, column + 1, row + 1);
    }

    private void key(KeyEvent event, int row, int column) {
        if (event.getCode() == KeyCode.ENTER) {
            event.consume();
            focus(row + 1, column);
        } else if (event.isShortcutDown() && event.getCode() == KeyCode.V) {
            String pasted = Clipboard.getSystemClipboard().getString();
            if (pasted != null && pasted.strip().contains("\n")) {
                event.consume();
                paste(pasted.strip().lines().toList(), row, column);
            }
        }
    }

    /** Each pasted line goes into the same column of the next row, as if it were typed. */
    private void paste(List<String> lines, int row, int column) {
        for (int i = 0; i < lines.size(); i++) {
            if (at(row + i, column) instanceof TextField field) {
                field.setText(lines.get(i).split("\t", -1)[0].strip());
            }
        }
    }

    /** Puts the keyboard on a cell, if there is one, once the grid is laid out. */
    void focus(int row, int column) {
        Platform.runLater(() -> {
            Node cell = at(row, column);
            if (cell != null) {
                cell.requestFocus();
                if (cell instanceof TextField field) {
                    field.end();
                }
            }
        });
    }

    private @Nullable Node at(int row, int column) {
        for (Node cell : grid.getChildren()) {
            if (GridPane.getRowIndex(cell) == row + 1 && GridPane.getColumnIndex(cell) == column + 1) {
                return cell;
            }
        }
        return null;
    }
}
