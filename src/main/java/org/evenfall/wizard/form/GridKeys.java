package org.evenfall.wizard.form;

import java.util.List;
import java.util.function.IntConsumer;
import java.util.stream.Stream;
import javafx.scene.Node;
import javafx.scene.control.ChoiceBox;
import javafx.scene.control.TextField;
import javafx.scene.input.Clipboard;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.GridPane;
import org.jspecify.annotations.Nullable;

/**
 * The keyboard in a grid of cells. Enter goes along the row and then to the next row, or down the column and, from its end or
 * an empty cell, to the next column; from an empty last row or the last column it leaves the grid, for the frame to go on. The arrows go up and down, Ctrl+Delete removes a row. Numbers pasted as
 * a line or a block fill the cells from there on.
 */
public final class GridKeys {

    /** Key of the property of a cell that is its grid. */
    private static final String GRID = "evenfall.grid";

    private final GridPane grid;
    private final boolean alongRows;
    private final IntConsumer remove;

    /**
     * @param grid its first row and column are headings
     * @param alongRows whether Enter goes along the row, else down the column
     * @param remove removes a row, from 0; does nothing where rows cannot be removed
     */
    public GridKeys(GridPane grid, boolean alongRows, IntConsumer remove) {
        this.grid = grid;
        this.alongRows = alongRows;
        this.remove = remove;
    }

    /** Puts a cell into the grid, in a row and column from 0, headings not counted. */
    public void add(Node cell, int row, int column) {
        cell.getProperties().put(GRID, grid);
        cell.addEventFilter(KeyEvent.KEY_PRESSED, event -> key(event, row, column));
        grid.add(cell, column + 1, row + 1);
    }

    /** Whether two cells belong to one grid. */
    public static boolean sameGrid(Node one, Node other) {
        Object its = one.getProperties().get(GRID);
        return its != null && its.equals(other.getProperties().get(GRID));
    }

    private void key(KeyEvent event, int row, int column) {
        boolean handled = switch (event.getCode()) {
            case ENTER -> enter(row, column);
            case UP -> at(row, column) instanceof TextField && focus(row - 1, column);
            case DOWN -> at(row, column) instanceof TextField && focus(row + 1, column);
            case DELETE -> event.isShortcutDown() && removed(row);
            case V -> event.isShortcutDown() && pasted(row, column);
            default -> false;
        };
        if (handled) {
            event.consume();
        }
    }

    /** False where Enter leaves the grid. */
    private boolean enter(int row, int column) {
        if (alongRows) {
            boolean end = isBlank(row) && at(row + 1, 0) == null;
            return !end && (focus(row, column + 1) || focus(row + 1, 0));
        }
        boolean end = isEmpty(at(row, column)) && isEmpty(at(row + 1, column));
        return (!end && focus(row + 1, column)) || focus(0, column + 1) || focus(1, column + 1);
    }

    private static boolean isEmpty(@Nullable Node cell) {
        return cell == null
                || (cell instanceof TextField field && field.getText().isBlank());
    }

    /** Whether nothing is typed in a row; what is chosen does not count, since a choice always shows a word. */
    private boolean isBlank(int row) {
        return grid.getChildren().stream()
                .filter(cell -> cell instanceof TextField && GridPane.getRowIndex(cell) == row + 1)
                .allMatch(cell -> ((TextField) cell).getText().isBlank());
    }

    private boolean removed(int row) {
        remove.accept(row);
        return true;
    }

    private boolean pasted(int row, int column) {
        String text = Clipboard.getSystemClipboard().getString();
        if (text == null || !text.strip().matches("(?s).*[\\t\\n; ].*")) {
            return false;
        }
        paste(text.strip().lines().map(GridKeys::values).toList(), row, column);
        return true;
    }

    private static List<String> values(String line) {
        return Stream.of(line.split("[\\t; ]+", -1)).map(String::strip).toList();
    }

    /** One line goes on as Enter does; of a block each line is a row. As if it were typed. */
    void paste(List<List<String>> lines, int row, int column) {
        for (int i = 0; i < lines.size(); i++) {
            for (int j = 0; j < lines.get(i).size(); j++) {
                boolean down = lines.size() == 1 && !alongRows;
                if (at(row + i + (down ? j : 0), column + (down ? 0 : j)) instanceof TextField field) {
                    field.setText(lines.get(i).get(j));
                }
            }
        }
    }

    /** Puts the keyboard on a cell at once, so that no key overtakes it; false where there is none. */
    boolean focus(int row, int column) {
        Node cell = at(row, column);
        if (cell instanceof TextField field) {
            Keyboard.to(field);
            field.selectAll();
            return true;
        }
        if (cell instanceof ChoiceBox<?>) {
            Keyboard.to(cell);
            return true;
        }
        return false;
    }

    private @Nullable Node at(int row, int column) {
        for (Node cell : grid.getChildren()) {
            if (cell.isVisible()
                    && !cell.isDisabled()
                    && GridPane.getRowIndex(cell) == row + 1
                    && GridPane.getColumnIndex(cell) == column + 1) {
                return cell;
            }
        }
        return null;
    }
}
