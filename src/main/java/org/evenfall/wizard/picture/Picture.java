package org.evenfall.wizard.picture;

import java.util.List;
import java.util.Objects;
import javafx.css.CssMetaData;
import javafx.css.Styleable;
import javafx.css.StyleableProperty;
import javafx.css.StyleablePropertyFactory;
import javafx.scene.AccessibleRole;
import javafx.scene.canvas.Canvas;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.layout.Region;
import javafx.scene.paint.Color;
import javafx.scene.text.Font;
import javafx.scene.text.TextAlignment;
import org.evenfall.finding.Sentences;

/**
 * A drawing that follows its size, its text size and the colours of the theme. A subclass keeps the result record it was
 * given and draws it; {@link #redraw(String)} after each change.
 */
public abstract class Picture extends Region implements InSight {

    private static final StyleablePropertyFactory<Picture> CSS =
            new StyleablePropertyFactory<>(Region.getClassCssMetaData());

    private final StyleableProperty<Color> paper = colour("paper", "#FAF8F3");
    private final StyleableProperty<Color> ink = colour("ink", "#1C2326");
    private final StyleableProperty<Color> soft = colour("soft", "#55606A");
    private final StyleableProperty<Color> line = colour("line", "#D8D4C8");
    private final StyleableProperty<Color> accent = colour("accent", "#1F4E79");
    private final StyleableProperty<Color> straw = colour("straw", "#8A5A00");
    private final StyleableProperty<Color> good = colour("good", "#0B6B53");
    private final StyleableProperty<Color> warn = colour("warn", "#9A4A00");
    private final StyleableProperty<Color> stop = colour("stop", "#9B1C31");
    private final StyleableProperty<Font> font;
    private final StyleableProperty<Number> noteEm;
    private final double heightToWidth;
    private boolean inSight = true;

    /** Words for what is drawn. */
    protected final Sentences words;

    /** @param heightToWidth height wanted, in widths */
    protected Picture(Sentences words, double heightToWidth) {
        this.words = words;
        this.heightToWidth = heightToWidth;
        font = CSS.createStyleableFontProperty(
                this, "font", "-fx-font", picture -> picture.font, Font.getDefault(), true);
        ((javafx.beans.value.ObservableValue<?>) font).addListener(changed -> requestLayout());
        noteEm = CSS.createStyleableNumberProperty(
                this, "note", "-picture-note", picture -> picture.noteEm, Brush.NOTE_EM);
        ((javafx.beans.value.ObservableValue<?>) noteEm).addListener(changed -> requestLayout());
        getStyleClass().addAll("picture", "ev-picture");
        setAccessibleRole(AccessibleRole.IMAGE_VIEW);
        getChildren().add(freshCanvas());
    }

    /** Out of sight there is no drawing, and no letter typed makes one. */
    @Override
    public final void setInSight(boolean now) {
        if (inSight == now) {
            return;
        }
        inSight = now;
        if (now) {
            getChildren().setAll(freshCanvas());
            requestLayout();
        } else {
            getChildren().clear();
        }
    }

    /** Draws everything anew. The canvas is clean, the paper drawn. */
    abstract void draw(Brush brush, double width, double height);

    /** Draw again soon, and let a screen reader say this instead of the drawing. */
    final void redraw(String spoken) {
        setAccessibleText(spoken);
        requestLayout();
    }

    /** What is drawn in place of a picture that has nothing to show yet. */
    final void nothingYet(Brush brush, double width, double height, String sentence) {
        Lettering lettering = brush.body().in(brush.palette().soft());
        double inset = 1.5 * brush.em();
        double high = brush.wrapped(sentence, width - 2 * inset, lettering).size() * lettering.lineEm() * brush.em();
        brush.paragraph(
                sentence,
                width / 2,
                Math.max(0, (height - high) / 2),
                width - 2 * inset,
                lettering,
                TextAlignment.CENTER);
    }

    @Override
    protected final void layoutChildren() {
        if (!inSight) {
            return;
        }
        double width = Math.max(1, getWidth());
        double height = Math.max(1, getHeight());
        Canvas canvas = (Canvas) getChildren().get(0);
        canvas.setWidth(width);
        canvas.setHeight(height);
        Palette palette = palette();
        GraphicsContext graphics = canvas.getGraphicsContext2D();
        graphics.clearRect(0, 0, width, height);
        Brush brush =
                new Brush(graphics, palette, font.getValue(), noteEm.getValue().doubleValue());
        brush.box(0, 0, width, height, palette.paper());
        draw(brush, width, height);
    }

    private static Canvas freshCanvas() {
        Canvas canvas = new Canvas();
        canvas.setManaged(false);
        return canvas;
    }

    @Override
    protected final double computeMinWidth(double height) {
        return 12 * font.getValue().getSize();
    }

    @Override
    protected final double computeMinHeight(double width) {
        return 5 * font.getValue().getSize();
    }

    @Override
    protected final double computePrefWidth(double height) {
        return 28 * font.getValue().getSize();
    }

    @Override
    protected final double computePrefHeight(double width) {
        return heightToWidth * (width > 0 ? width : computePrefWidth(-1));
    }

    @Override
    public final List<CssMetaData<? extends Styleable, ?>> getCssMetaData() {
        return CSS.getCssMetaData();
    }

    /** The picture's own names for the theme's colours. */
    @Override
    public final String getUserAgentStylesheet() {
        return Objects.requireNonNull(Picture.class.getResource("/org/evenfall/wizard/picture/picture.css"))
                .toExternalForm();
    }

    private Palette palette() {
        return new Palette(
                paper.getValue(),
                ink.getValue(),
                soft.getValue(),
                line.getValue(),
                accent.getValue(),
                straw.getValue(),
                good.getValue(),
                warn.getValue(),
                stop.getValue());
    }

    private StyleableProperty<Color> colour(String name, String usual) {
        StyleableProperty<Color> property = CSS.createStyleableColorProperty(
                this, name, "-picture-" + name, picture -> picture.named(name), Color.web(usual));
        ((javafx.beans.value.ObservableValue<?>) property).addListener(changed -> requestLayout());
        return property;
    }

    private StyleableProperty<Color> named(String name) {
        return switch (name) {
            case "paper" -> paper;
            case "ink" -> ink;
            case "soft" -> soft;
            case "line" -> line;
            case "accent" -> accent;
            case "straw" -> straw;
            case "good" -> good;
            case "warn" -> warn;
            default -> stop;
        };
    }
}
