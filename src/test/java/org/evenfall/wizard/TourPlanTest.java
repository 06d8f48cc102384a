package org.evenfall.wizard;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** Any two circumstances of a prompt meet in a picture of the tour. */
class TourPlanTest {

    private static final List<String> PROMPTS =
            IntStream.range(0, 46).mapToObj(i -> "p" + i).toList();

    @Test
    void anyTwoMeet() {
        List<TourPlan.Shot> shots = TourPlan.shots(PROMPTS);
        Set<List<Object>> pairs = new HashSet<>();
        for (TourPlan.Shot shot : shots) {
            List<Object> parts = parts(shot);
            for (int i = 0; i < parts.size(); i++) {
                for (int j = i + 1; j < parts.size(); j++) {
                    pairs.add(List.of(i, parts.get(i), j, parts.get(j)));
                }
            }
        }
        int windows = 6;
        int themes = 2;
        int texts = 2;
        int fillings = 4;
        assertThat(pairs)
                .hasSize(PROMPTS.size() * (windows + themes + texts + fillings)
                        + windows * (themes + texts + fillings)
                        + themes * (texts + fillings)
                        + texts * fillings);
        assertThat(shots).hasSizeLessThan(300).doesNotHaveDuplicates();
    }

    @Test
    void everyPictureHasANameOfItsOwn() {
        assertThat(TourPlan.shots(PROMPTS)).extracting(TourPlan.Shot::name).doesNotHaveDuplicates();
    }

    private static List<Object> parts(TourPlan.Shot shot) {
        String window = shot.size().widthPx() + "x" + shot.size().heightPx()
                + shot.size().projector();
        return List.of(shot.prompt(), window, shot.dark(), shot.size().percent(), shot.filling());
    }
}
