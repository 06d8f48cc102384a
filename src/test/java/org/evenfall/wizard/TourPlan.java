package org.evenfall.wizard;

import java.util.ArrayList;
import java.util.List;

/**
 * Which pictures the tour takes: each prompt in each size of window, with each filling, in light and dark, with usual and
 * large text, so that any two of these meet in at least one picture.
 */
final class TourPlan {

    private static final List<WindowSize> SIZES = List.of(
            new WindowSize(1024, 700, false, 100),
            new WindowSize(1366, 768, false, 100),
            new WindowSize(1280, 720, true, 100),
            new WindowSize(1366, 768, true, 100),
            new WindowSize(1920, 1080, true, 100),
            new WindowSize(3840, 2160, true, 100));

    private static final List<Filling> FILLINGS = List.of(Filling.EMPTY, Filling.HALF, Filling.DEMO, Filling.UNEVEN);

    private TourPlan() {}

    /** One picture. */
    record Shot(String prompt, WindowSize size, boolean dark, Filling filling) {

        /** Of its file, without the ending. */
        String name() {
            return prompt + "-" + size.toString().replace(" ", "-").replace("-%", "") + (dark ? "-dark" : "-light")
                    + "-" + filling.name().toLowerCase(java.util.Locale.ROOT);
        }
    }

    /** The pictures of these prompts, those of one window and setup one after the other. */
    static List<Shot> shots(List<String> prompts) {
        List<Shot> shots = new ArrayList<>();
        for (int s = 0; s < SIZES.size(); s++) {
            for (int p = 0; p < prompts.size(); p++) {
                // different strides, so that no two of them go together
                WindowSize size = SIZES.get(s);
                boolean dark = (s + p) % 2 == 1;
                int percent = (s / 2 + p / 2) % 2 == 0 ? 100 : 150;
                Filling filling = FILLINGS.get((s + p / 4 + p) % FILLINGS.size());
                shots.add(new Shot(
                        prompts.get(p),
                        new WindowSize(size.widthPx(), size.heightPx(), size.projector(), percent),
                        dark,
                        filling));
            }
        }
        sort(shots);
        return shots;
    }

    /** Every prompt in every circumstance, to choose from, the worst too. */
    static List<Shot> every(List<String> prompts) {
        List<Shot> shots = new ArrayList<>();
        for (WindowSize size : SIZES) {
            for (int percent : List.of(100, 150)) {
                for (Filling filling : Filling.values()) {
                    for (boolean dark : List.of(false, true)) {
                        prompts.forEach(prompt -> shots.add(new Shot(
                                prompt,
                                new WindowSize(size.widthPx(), size.heightPx(), size.projector(), percent),
                                dark,
                                filling)));
                    }
                }
            }
        }
        sort(shots);
        return shots;
    }

    private static void sort(List<Shot> shots) {
        shots.sort(java.util.Comparator.comparing((Shot shot) -> shot.size().toString())
                .thenComparing(Shot::dark)
                .thenComparing(Shot::filling));
    }
}
