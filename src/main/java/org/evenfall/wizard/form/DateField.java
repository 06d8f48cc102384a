package org.evenfall.wizard.form;

import java.time.LocalDate;
import javafx.geometry.Bounds;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.DateCell;
import javafx.scene.control.DatePicker;
import javafx.scene.control.TextField;
import javafx.scene.control.Tooltip;
import javafx.scene.control.skin.DatePickerSkin;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.input.MouseEvent;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Region;
import javafx.stage.Popup;
import org.evenfall.quantity.DateReading;
import org.evenfall.quantity.DateText;
import org.evenfall.setup.path.EntryPath;

/**
 * A date: a field in which it is typed as people write it, and a button that opens a calendar. The calendar writes the form
 * of ISO 8601 into the field. It is opened by the mouse, or by Alt+Down in the field; the button is no Tab stop.
 */
public final class DateField extends HBox {

    /** Width of the field, in letters. */
    private static final int COLUMNS = 14;

    private final Form form;
    private final EntryPath<String> path;
    private final TextField field;

    /**
     * A field with its calendar.
     *
     * @param form the form it belongs to
     * @param label what the date is called
     * @param path where it is kept, as it was typed
     */
    public DateField(Form form, String label, EntryPath<String> path) {
        this.form = form;
        this.path = path;
        this.field = TextEntry.field(form, label, path, COLUMNS);
        getStyleClass().addAll("with-unit", "date");
        setAlignment(Pos.CENTER_LEFT);
        getChildren().addAll(field, button(label));
        field.addEventFilter(KeyEvent.KEY_PRESSED, event -> {
            if (event.isAltDown() && event.getCode() == KeyCode.DOWN) {
                open();
                event.consume();
            }
        });
    }

    private Button button(String label) {
        String calendar = form.words().text("form.calendar");
        Region sheet = new Region();
        sheet.getStyleClass().add("calendar-sheet");
        Button button = new Button();
        button.setGraphic(sheet);
        button.setId("form.calendar");
        button.getStyleClass().add("quiet");
        button.setAccessibleText(label + ": " + calendar);
        button.setTooltip(new Tooltip(calendar));
        button.setMinWidth(Region.USE_PREF_SIZE);
        button.setFocusTraversable(false);
        button.setOnAction(event -> open());
        return button;
    }

    private void open() {
        DatePicker picker = new DatePicker();
        if (DateText.read(field.getText()) instanceof DateReading.Value value) {
            picker.setValue(value.date());
        }
        Node calendar = new DatePickerSkin(picker).getPopupContent();
        // outside the window, so that it needs the colours by itself
        calendar.getStyleClass().add("calendar");
        Popup popup = new Popup();
        popup.setAutoHide(true);
        popup.getContent().add(calendar);
        picker.valueProperty().addListener((property, old, date) -> {
            form.model().set(path, date.toString());
            close(popup);
        });
        // the day that is in the field already changes no value
        calendar.addEventHandler(MouseEvent.MOUSE_RELEASED, event -> {
            if (event.getPickResult().getIntersectedNode() instanceof DateCell cell && isDay(cell, picker.getValue())) {
                close(popup);
            }
        });
        calendar.addEventFilter(KeyEvent.KEY_PRESSED, event -> {
            boolean same = event.getCode() == KeyCode.ENTER
                    && calendar.getScene().getFocusOwner() instanceof DateCell cell
                    && isDay(cell, picker.getValue());
            if (same || event.getCode() == KeyCode.ESCAPE) {
                close(popup);
                event.consume();
            }
        });
        Bounds place = field.localToScreen(field.getBoundsInLocal());
        popup.show(field, place.getMinX(), place.getMaxY());
        focus(calendar, picker.getValue());
    }

    private static boolean isDay(DateCell cell, LocalDate date) {
        return cell.getStyleClass().contains("day-cell")
                && cell.getItem() != null
                && cell.getItem().equals(date);
    }

    /** Puts the keyboard on the day of the field, else on today. */
    private static void focus(Node calendar, LocalDate date) {
        calendar.lookupAll(".day-cell").stream()
                .filter(cell -> date == null ? cell.getStyleClass().contains("today") : isDay((DateCell) cell, date))
                .findFirst()
                .ifPresent(Keyboard::to);
    }

    private void close(Popup popup) {
        popup.hide();
        field.requestFocus();
        field.end();
    }
}
