package org.evenfall.wizard.picture;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.evenfall.granule.SizeCurve.Point;
import org.junit.jupiter.api.Test;

class CurvePartsTest {

    private static Point at(double mm, double perMm) {
        return new Point(mm, perMm, 10 * mm);
    }

    @Test
    void aCurveThatFitsIsOnePart() {
        List<Point> curve = List.of(at(1, 2), at(2, 5), at(3, 1));
        assertThat(CurveParts.below(5, curve)).containsExactly(curve);
        assertThat(CurveParts.below(6, curve)).containsExactly(curve);
    }

    @Test
    void aPeakIsCutWhereTheCurveCrossesTheLevel() {
        List<Point> curve = List.of(at(1, 2), at(2, 6), at(3, 12), at(4, 0));
        assertThat(CurveParts.below(9, curve))
                .containsExactly(List.of(at(1, 2), at(2, 6), at(2.5, 9)), List.of(at(3.25, 9), at(4, 0)));
    }

    @Test
    void aCurveMayBeginOrEndAboveTheLevel() {
        List<Point> curve = List.of(at(1, 8), at(2, 4), at(3, 8));
        assertThat(CurveParts.below(6, curve)).containsExactly(List.of(at(1.5, 6), at(2, 4), at(2.5, 6)));
    }

    @Test
    void aCurveThatIsAboveThroughoutHasNoPart() {
        assertThat(CurveParts.below(1, List.of(at(1, 8), at(2, 4)))).isEmpty();
        assertThat(CurveParts.below(1, List.of())).isEmpty();
    }

    @Test
    void eachPeakIsCut() {
        List<Point> curve = List.of(at(0, 0), at(1, 4), at(2, 0), at(3, 4), at(4, 0));
        assertThat(CurveParts.below(2, curve))
                .containsExactly(
                        List.of(at(0, 0), at(0.5, 2)),
                        List.of(at(1.5, 2), at(2, 0), at(2.5, 2)),
                        List.of(at(3.5, 2), at(4, 0)));
    }
}
