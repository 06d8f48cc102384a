package org.evenfall.setup;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.evenfall.quantity.EnteredQuantity;
import org.evenfall.setup.Rechecked.Part;
import org.evenfall.setup.Rechecked.State;
import org.evenfall.setup.Rechecked.What;
import org.evenfall.setup.Revisions.Change;
import org.evenfall.setup.entry.BucketEntry;
import org.evenfall.setup.entry.Setup;
import org.evenfall.setup.entry.SievingEntry;
import org.evenfall.setup.entry.TrayTestEntry;
import org.evenfall.store.SetupJson;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What a revision says of the measurements before it. The dates of bucket and tray test differ. */
class RecheckedTest {

    private static Setup signed;

    @BeforeAll
    static void readDemo() throws Exception {
        Setup demo = new SetupJson().read(Files.readString(Path.of("demo", "setup.json")), "demo");
        signed = dated(demo, "2027-04-05", "2027-04-02")
                .withCard(demo.card().withDate("5.4.2027").withRevision(1));
    }

    /** The last tests of bucket and trays on these days. */
    private static Setup dated(Setup setup, String bucket, String trays) {
        List<BucketEntry> buckets = new ArrayList<>(setup.rate().bucketTests());
        buckets.set(2, buckets.get(2).withDate(bucket));
        List<TrayTestEntry> tests = new ArrayList<>(setup.trays().tests());
        tests.set(1, tests.get(1).withDate(trays));
        return setup.withRate(setup.rate().withBucketTests(buckets))
                .withTrays(setup.trays().withTests(tests));
    }

    private static Setup next(Setup before) {
        Setup next = Revisions.next(before);
        return next.withCard(next.card().withDate("2027-05-20"));
    }

    private static Rechecked of(Setup setup) {
        return Rechecked.of(Assessor.assess(setup));
    }

    private static Setup reopened(Change change) {
        Setup next = next(signed);
        return Revisions.reopen(next, Assessor.assess(next), Set.of(change), TestNumbers.ENGLISH);
    }

    @Test
    void nothingChangedAllHolds() {
        Rechecked since = of(next(signed));
        assertThat(since.revision()).isEqualTo(2);
        assertThat(since.previousDate()).isEqualTo("2027-04-05");
        assertThat(since.parts())
                .containsExactly(
                        new Part(What.PRODUCT, State.HOLDS, ""),
                        new Part(What.MACHINE_CHECK, State.HOLDS, ""),
                        new Part(What.HEIGHT, State.HOLDS, ""),
                        new Part(What.RATE, State.HOLDS, "2027-04-05"),
                        new Part(What.TRAY_TEST, State.HOLDS, "2027-04-02"));
    }

    @Test
    void theFirstRevisionSaysNothing() {
        assertThat(of(signed)).isNull();
        assertThat(of(signed.withCard(signed.card().withRevision(2))))
                .as("no card before")
                .isNull();
        assertThat(of(signed.withCard(signed.card().withPreviousDate("2027-04-05"))))
                .as("no revision")
                .isNull();
    }

    /** A date has no hour: one of the same day counts as that of the card before. */
    @ParameterizedTest
    @CsvSource({
        "2027-04-06, 2027-04-02, AGAIN, HOLDS",
        "2027-04-05, 2027-04-06, HOLDS, AGAIN",
        "7.4.2027, 2027-04-05, AGAIN, HOLDS",
        "'', '', HOLDS, HOLDS",
        "3/4/27, 2027-05-20, HOLDS, AGAIN"
    })
    void aLaterDateIsAgain(String bucket, String trays, State rate, State test) {
        Rechecked since = of(dated(next(signed), bucket, trays));
        assertThat(since.part(What.RATE).state()).isEqualTo(rate);
        assertThat(since.part(What.TRAY_TEST).state()).isEqualTo(test);
        assertThat(since.part(What.RATE).date().isEmpty()).isEqualTo(bucket.isEmpty() || bucket.contains("/"));
    }

    @Test
    void aChangedPartEndsMachineCheckAndTrayTest() {
        Rechecked since = of(reopened(Change.MACHINE_PART));
        assertThat(since.parts().stream().map(Part::state))
                .containsExactly(State.HOLDS, State.NO_LONGER, State.HOLDS, State.HOLDS, State.NO_LONGER);
        assertThat(since.part(What.TRAY_TEST).date()).isEmpty();
    }

    @Test
    void aTallerCropEndsTheHeight() {
        assertThat(of(reopened(Change.CROP_TALLER)).parts().stream().map(Part::state))
                .containsExactly(State.HOLDS, State.HOLDS, State.NO_LONGER, State.HOLDS, State.HOLDS);
    }

    @Test
    void anotherDeliveryIsMeasuredAgain() {
        Setup open = reopened(Change.DELIVERY);
        assertThat(of(open).part(What.PRODUCT).state()).isEqualTo(State.NO_LONGER);
        Setup measured = open.withProduct(open.product()
                .withDelivery("S-2001")
                .withContainerFull(quantities("1724 g", "1733 g", "1729 g"))
                .withSievings(List.of(SievingEntry.EMPTY.withAmounts(quantities("4 mm", "46 mm", "45 mm", "3 mm")))));
        assertThat(of(measured).parts().stream().map(Part::state))
                .containsExactly(State.AGAIN, State.HOLDS, State.HOLDS, State.NO_LONGER, State.HOLDS);
        Setup lighter =
                measured.withProduct(measured.product().withContainerFull(quantities("1624 g", "1633 g", "1629 g")));
        assertThat(of(lighter).parts().stream().map(Part::state))
                .containsExactly(State.AGAIN, State.HOLDS, State.HOLDS, State.NO_LONGER, State.NO_LONGER);
    }

    private static List<EnteredQuantity> quantities(String... texts) {
        return List.of(texts).stream().map(EnteredQuantity::parse).toList();
    }

    /** Off the tolerance, or caught with other levers than the card's, a rate check holds no longer. */
    @Test
    void aRateCheckThatDoesNotAgreeHoldsNoLonger() {
        Setup next = next(signed);
        Setup faster = next.withRate(
                next.rate().withPlan(next.rate().plan().withNitrogenRate(EnteredQuantity.parse("86 kg/ha"))));
        assertThat(of(faster).part(What.RATE)).isEqualTo(new Part(What.RATE, State.NO_LONGER, ""));
        assertThat(of(faster).part(What.TRAY_TEST).state()).isEqualTo(State.HOLDS);
        List<BucketEntry> two = next.rate().bucketTests().subList(0, 2);
        assertThat(of(next.withRate(next.rate().withBucketTests(two)))
                        .part(What.RATE)
                        .state())
                .as("long vane 9, the card says 10.5")
                .isEqualTo(State.NO_LONGER);
        assertThat(of(next.withRate(next.rate().withBucketTests(List.of())))
                        .part(What.RATE)
                        .state())
                .isEqualTo(State.NO_LONGER);
    }
}
