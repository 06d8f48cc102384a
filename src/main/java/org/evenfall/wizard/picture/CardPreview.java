package org.evenfall.wizard.picture;

import java.awt.image.BufferedImage;
import java.util.List;
import javafx.beans.value.ObservableValue;
import javafx.embed.swing.SwingFXUtils;
import javafx.scene.AccessibleRole;
import javafx.scene.image.Image;
import javafx.scene.image.ImageView;
import javafx.scene.layout.Region;
import org.evenfall.finding.Arg;
import org.evenfall.finding.Sentences;

/** The pages of the PDF, one under the other, as wide as there is room: what is seen is what will be printed. */
public final class CardPreview extends Region implements InSight {

    private static final double GAP = 12;

    private final Sentences words;
    private final Runnable draw;
    private List<Image> pages = List.of();
    private boolean inSight;

    /**
     * Begins without a page, out of sight.
     *
     * @param draw called when it comes in sight, to show the pages as they are then
     */
    public CardPreview(Sentences words, Runnable draw) {
        this.words = words;
        this.draw = draw;
        getStyleClass().add("ev-card-preview");
        setAccessibleRole(AccessibleRole.IMAGE_VIEW);
        setAccessibleText(words.text("picture.card.empty"));
        ObservableValue<? extends Number> wide = widthProperty();
        wide.addListener(changed -> requestLayout());
    }

    @Override
    public void setInSight(boolean now) {
        if (inSight == now) {
            return;
        }
        inSight = now;
        if (now) {
            draw.run();
        } else {
            show(List.of());
        }
    }

    /** Whether somebody can look at it. */
    public boolean isInSight() {
        return inSight;
    }

    /** @param rendered pages of the PDF, rendered at any resolution */
    public void show(List<BufferedImage> rendered) {
        pages = rendered.stream()
                .map(page -> (Image) SwingFXUtils.toFXImage(page, null))
                .toList();
        getChildren().setAll(pages.stream().map(CardPreview::view).toList());
        setAccessibleText(
                pages.isEmpty()
                        ? words.text("picture.card.empty")
                        : words.text("picture.card.spoken", Arg.count(pages.size())));
        requestLayout();
    }

    private static ImageView view(Image page) {
        ImageView view = new ImageView(page);
        view.setPreserveRatio(true);
        view.setSmooth(true);
        view.getStyleClass().add("sheet");
        return view;
    }

    @Override
    protected void layoutChildren() {
        double width = getWidth();
        double y = 0;
        for (int i = 0; i < pages.size(); i++) {
            ImageView view = (ImageView) getChildren().get(i);
            view.setFitWidth(width);
            view.relocate(0, y);
            y += width * pages.get(i).getHeight() / pages.get(i).getWidth() + GAP;
        }
    }

    @Override
    protected double computePrefWidth(double height) {
        return 420;
    }

    @Override
    protected double computePrefHeight(double width) {
        double wide = width > 0 ? width : getWidth() > 0 ? getWidth() : computePrefWidth(-1);
        double high = 0;
        for (Image page : pages) {
            high += wide * page.getHeight() / page.getWidth() + GAP;
        }
        return Math.max(high, 0);
    }

    @Override
    public javafx.geometry.Orientation getContentBias() {
        return javafx.geometry.Orientation.HORIZONTAL;
    }
}
