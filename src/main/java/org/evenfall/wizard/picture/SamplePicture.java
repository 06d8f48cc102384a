package org.evenfall.wizard.picture;

import java.util.BitSet;
import org.evenfall.finding.Arg;
import org.evenfall.finding.Sentences;
import org.jspecify.annotations.Nullable;

/** The bags that were delivered, in rows, and which of them are opened for the sample. */
public final class SamplePicture extends Picture {

    /** Most bags that are drawn one by one. */
    private static final int MOST_BAGS = 60;

    private @Nullable Integer delivered;
    private @Nullable Integer sampled;
    private @Nullable Integer wanted;

    /** Begins with nothing to show. */
    public SamplePicture(Sentences words) {
        super(words, 0.95);
        show(null, null, null);
    }

    /**
     * Draws this delivery.
     *
     * @param bagsDelivered bags delivered; null while not typed
     * @param bagsSampled bags that were sampled; null while not typed
     * @param bagsToSample bags that should be
     */
    public void show(@Nullable Integer bagsDelivered, @Nullable Integer bagsSampled, @Nullable Integer bagsToSample) {
        delivered = bagsDelivered;
        sampled = bagsSampled;
        wanted = bagsToSample;
        redraw(sentence());
    }

    private String sentence() {
        if (delivered == null || wanted == null) {
            return words.text("picture.sample.empty");
        }
        String all = wanted >= delivered
                ? words.text("picture.sample.all", Arg.count(delivered))
                : words.text("picture.sample.open", Arg.count(wanted), Arg.count(delivered));
        if (delivered > MOST_BAGS) {
            all += " " + words.text("picture.sample.drawn", Arg.count(MOST_BAGS));
        }
        return sampled == null
                ? all
                : all
                        + " "
                        + words.text(
                                sampled < wanted ? "picture.sample.few" : "picture.sample.enough", Arg.count(sampled));
    }

    @Override
    void draw(Brush brush, double width, double full) {
        if (delivered == null || wanted == null) {
            nothingYet(brush, width, full, sentence());
            return;
        }
        boolean few = sampled != null && sampled < wanted;
        Lettering lettering = few ? brush.body().in(brush.palette().warn()) : brush.body();
        double height = new Caption(sentence()).draw(brush, width, full, lettering);
        double em = brush.em();
        int bags = Math.min(MOST_BAGS, delivered);
        int columns = columns(bags, width - 2 * em, height - em);
        int rows = (bags + columns - 1) / columns;
        double cell = Math.min(6 * em, Math.min((width - 2 * em) / columns, (height - em) / rows / 1.1));
        double left = (width - columns * cell) / 2;
        double top = (height - rows * cell * 1.1) / 2;
        BitSet opened = opened(bags);
        Parts parts = new Parts(brush);
        for (int bag = 0; bag < bags; bag++) {
            double x = left + (bag % columns + 0.16) * cell;
            double y = top + (Math.floorDiv(bag, columns) + 0.1) * cell * 1.1;
            parts.bag(x, y, 0.68 * cell, 0.85 * cell, opened.get(bag));
        }
    }

    /** As many in a row as makes the bags largest. */
    private static int columns(int bags, double width, double height) {
        int best = 1;
        double largest = 0;
        for (int columns = 1; columns <= bags; columns++) {
            int rows = (bags + columns - 1) / columns;
            double cell = Math.min(width / columns, height / rows / 1.1);
            if (cell > largest + 1e-6) {
                largest = cell;
                best = columns;
            }
        }
        return best;
    }

    /** The opened ones, evenly among all that are drawn. */
    private BitSet opened(int bags) {
        BitSet opened = new BitSet(bags);
        if (delivered != null && wanted != null) {
            for (int i = 0; i < wanted; i++) {
                int at = (int) Math.floor((i + 0.5) * delivered / wanted);
                if (at < bags) {
                    opened.set(at);
                }
            }
        }
        return opened;
    }
}
