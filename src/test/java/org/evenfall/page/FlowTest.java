package org.evenfall.page;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Columns of 100 points filled with pieces of given heights. */
class FlowTest {

    private static final List<Flow.Column> TWO =
            List.of(new Flow.Column(0, 0, 50, 100), new Flow.Column(60, 10, 50, 110));

    private final List<String> drawn = new ArrayList<>();

    private final class Block implements Flow.Piece {
        private final String name;
        private final double height;
        private final double gap;
        private final boolean withNext;

        Block(String name, double height, double gap, boolean withNext) {
            this.name = name;
            this.height = height;
            this.gap = gap;
            this.withNext = withNext;
        }

        @Override
        public double height(Pen pen, double width) {
            return height;
        }

        @Override
        public void draw(Pen pen, double x, double top, double width) {
            drawn.add(name + " " + x + " " + top);
        }

        @Override
        public double gap() {
            return gap;
        }

        @Override
        public boolean withNext() {
            return withNext;
        }
    }

    private Flow.Filled fill(Flow.Piece... pieces) throws IOException {
        try (PageDocument document = new PageDocument()) {
            Flow.Filled filled =
                    document.page(SheetSize.ofMm(100, 100), (pen, face) -> Flow.fill(pen, List.of(pieces), TWO));
            document.finish("Blocks", "en", Instant.EPOCH, 1);
            return filled;
        }
    }

    @Test
    void aColumnIsFilledToItsLastPoint() throws Exception {
        Flow.Filled filled =
                fill(new Block("a", 60, 5, false), new Block("b", 35, 5, false), new Block("c", 20, 5, false));
        assertThat(drawn).containsExactly("a 0.0 0.0", "b 0.0 65.0", "c 60.0 10.0");
        assertThat(filled.undrawn()).isEmpty();
        assertThat(filled.end()).isEqualTo(100);
    }

    @Test
    void whatNeedsAPointMoreGoesToTheNextColumn() throws Exception {
        Flow.Filled filled =
                fill(new Block("a", 60, 5, false), new Block("b", 36, 5, false), new Block("c", 80, 5, false));
        assertThat(drawn).containsExactly("a 0.0 0.0", "b 60.0 10.0");
        assertThat(filled.undrawn()).hasSize(1);
        assertThat(filled.end()).isEqualTo(60);
    }

    @Test
    void aHeadingStaysWithItsText() throws Exception {
        fill(new Block("a", 60, 0, false), new Block("heading", 20, 0, true), new Block("text", 30, 0, false));
        assertThat(drawn).containsExactly("a 0.0 0.0", "heading 60.0 10.0", "text 60.0 30.0");
    }

    /** More than a column in one group: it is separated. */
    @Test
    void whatCannotStayTogetherIsSeparated() throws Exception {
        fill(new Block("heading", 20, 0, true), new Block("text", 90, 0, false));
        assertThat(drawn).containsExactly("heading 0.0 0.0", "text 60.0 10.0");
    }
}
