package org.evenfall.setup;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.evenfall.reference.ProgressMonitor;
import org.junit.jupiter.api.Test;

/** How much simulation goes into an assessment. */
class AssessOptionsTest {

    @Test
    void moreRedrawsKeepTheSeed() {
        ProgressMonitor half = done -> done < 0.5;
        AssessOptions closer = AssessOptions.closer(1234, half);
        assertThat(closer).isEqualTo(new AssessOptions(20270401, 1234, half));
        assertThat(AssessOptions.USUAL).isEqualTo(new AssessOptions(20270401, 400, ProgressMonitor.NONE));
    }

    @Test
    void oneRedrawIsTheLeast() {
        assertThat(new AssessOptions(7, 1, ProgressMonitor.NONE).redraws()).isEqualTo(1);
        assertThatThrownBy(() -> new AssessOptions(7, 0, ProgressMonitor.NONE))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("redraws")
                .hasMessageContaining("0");
    }
}
