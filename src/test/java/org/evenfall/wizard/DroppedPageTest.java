package org.evenfall.wizard;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.evenfall.quantity.EnteredQuantity;
import org.evenfall.setup.entry.Setup;
import org.evenfall.setup.path.Entries;
import org.evenfall.setup.path.HeightPaths;
import org.evenfall.setup.path.MachinePaths;
import org.evenfall.setup.path.ProductPaths;
import org.evenfall.setup.path.StartPaths;
import org.junit.jupiter.api.Test;

class DroppedPageTest {

    private static final EnteredQuantity TYPED = EnteredQuantity.EMPTY.withText("24");

    private static final DroppedPage PAGE =
            new DroppedPage(Setup.EMPTY, List.of("/product/name", "/product/aperture/0"), true);

    @Test
    void itHoldsWhileNothingChangesThatItDependsOn() {
        assertThat(PAGE.isOf(Setup.EMPTY)).isTrue();
        assertThat(PAGE.isOf(HeightPaths.WANTED.path().set(Setup.EMPTY, TYPED))).isTrue();
        assertThat(PAGE.isOf(Setup.EMPTY.withGuide(Setup.EMPTY.guide().withCautionRead("1d"))))
                .isTrue();
    }

    @Test
    void anyEntryOfItsPartEndsIt() {
        assertThat(PAGE.isOf(ProductPaths.NAME.path().set(Setup.EMPTY, "Bag"))).isFalse();
        assertThat(PAGE.isOf(ProductPaths.CONTAINER_EMPTY.path().set(Setup.EMPTY, TYPED)))
                .isFalse();
    }

    @Test
    void theWidthAndTheMachineEndEveryPage() {
        assertThat(PAGE.isOf(StartPaths.TRAMLINE_WIDTH.path().set(Setup.EMPTY, TYPED)))
                .isFalse();
        assertThat(PAGE.isOf(MachinePaths.NAME.path().set(Setup.EMPTY, "Ours"))).isFalse();
        DroppedPage without = new DroppedPage(Setup.EMPTY, List.of(), false);
        assertThat(without.isOf(Setup.EMPTY)).isTrue();
        assertThat(without.isOf(MachinePaths.NAME.path().set(Setup.EMPTY, "Ours")))
                .isFalse();
    }

    @Test
    void aPlaceInTwoPartsDependsOnBoth() {
        DroppedPage two = new DroppedPage(Setup.EMPTY, List.of("/height/wanted", "/product/name"), false);
        assertThat(two.isOf(HeightPaths.WANTED.path().set(Setup.EMPTY, TYPED))).isFalse();
        assertThat(two.isOf(ProductPaths.NAME.path().set(Setup.EMPTY, "Bag"))).isFalse();
    }

    @Test
    void aPartThatIsNotKnownIsNotTrusted() {
        assertThat(new DroppedPage(Setup.EMPTY, List.of("/weather/rain"), true).isOf(Setup.EMPTY))
                .isFalse();
    }

    @Test
    void thePartOfEveryEntryIsKnown() {
        assertThat(Entries.ALL.stream().flatMap(entry -> entry.patterns().stream()))
                .isNotEmpty()
                .allMatch(place -> new DroppedPage(Setup.EMPTY, List.of(place), false).isOf(Setup.EMPTY));
    }
}
