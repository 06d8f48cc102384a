package org.evenfall.setup;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.evenfall.finding.Step;
import org.evenfall.machine.CheckItem;
import org.evenfall.quantity.EnteredQuantity;
import org.evenfall.setup.Revisions.Change;
import org.evenfall.setup.entry.Setup;
import org.evenfall.setup.entry.SievingEntry;
import org.evenfall.setup.entry.TrayTestEntry;
import org.evenfall.setup.entry.YesNo;
import org.evenfall.store.SetupJson;
import org.evenfall.trays.AdviceKind;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Coming back from begin to end: what a change opens, and what is left to do once the new answers are typed. */
class ReopenedStepsTest {

    private static Setup demo;

    @BeforeAll
    static void readDemo() throws Exception {
        Setup signed = new SetupJson().read(Files.readString(Path.of("demo", "setup.json")), "demo");
        Setup next = Revisions.next(signed);
        demo = next.withCard(next.card().withDate("2027-04-24"));
    }

    private static Setup reopened(Change change) {
        return Revisions.reopen(demo, Assessor.assess(demo), Set.of(change), TestNumbers.ENGLISH);
    }

    private static List<EnteredQuantity> typed(String... texts) {
        return Stream.of(texts).map(EnteredQuantity::parse).toList();
    }

    /** Steps that keep a card from being made, the card itself left out. */
    private static List<Step> open(Setup setup) {
        List<Step> open = new ArrayList<>();
        Assessor.assess(setup).states().forEach((step, state) -> {
            if (step != Step.CARD && (state == StepState.OPEN || state == StepState.STOPPED)) {
                open.add(step);
            }
        });
        return open;
    }

    private static Setup delivered(String... fillings) {
        Setup open = reopened(Change.DELIVERY);
        return open.withProduct(open.product()
                .withDelivery("S-2001")
                .withBagsSampled(EnteredQuantity.parse("4"))
                .withContainerFull(typed(fillings))
                .withSievings(List.of(SievingEntry.EMPTY.withAmounts(typed("4 mm", "46 mm", "45 mm", "3 mm")))));
    }

    /** Measured alike, the tray test proves and the card says which delivery was tested; the bucket is caught anew. */
    @Test
    void anotherDeliveryThatMeasuresAlikeNeedsNoTrayTest() {
        Setup alike = delivered("1724 g", "1733 g", "1729 g");
        Assessment assessment = Assessor.assess(alike);
        assertThat(open(alike)).containsExactly(Step.RATE);
        assertThat(assessment.card().missing()).containsExactly("rate.differs.DELIVERY");
        assertThat(assessment.trays().proof()).isNotNull();
        assertThat(assessment.card().testedDelivery()).isEqualTo("S-1042");

        Setup begun = BucketTestDraft.added(alike, assessment, TestNumbers.ENGLISH);
        Setup caught = RateCheckAgain.toDo(begun)
                .set(
                        begun,
                        RateCheckAgain.toDo(begun)
                                .get(begun)
                                .withLeft(typed("17.2 kg"))
                                .withRight(typed("17.1 kg")));
        assertThat(Assessor.assess(caught).card().cardAllowed()).isTrue();
    }

    @Test
    void anotherDeliveryThatMeasuresUnlikeNeedsATrayTest() {
        Setup lighter = delivered("1624 g", "1633 g", "1629 g");
        assertThat(open(lighter)).containsExactly(Step.RATE, Step.TRAYS);
        assertThat(Assessor.assess(lighter).card().missing())
                .containsExactly("rate.differs.DELIVERY", "trays.differs.DENSITY");
    }

    /** What the bag of the delivery before stated is not printed as that of this one. */
    @Test
    void whatBelongsToTheDeliveryIsAskedAgain() {
        Setup open = reopened(Change.DELIVERY);
        assertThat(open.product().useBy()).isEmpty();
        assertThat(open.product().inhibitor()).isEqualTo(demo.product().inhibitor());
        assertThat(open.product().containerEmpty()).isEqualTo(demo.product().containerEmpty());
        assertThat(open(open)).containsExactly(Step.PRODUCT, Step.MATCH);
    }

    /** Two units of one width are the same width; another one needs a tray test and another opening. */
    @ParameterizedTest
    @CsvSource({"28.05 m,", "30 m, 'RATE TRAYS'", "24 m, 'RATE TRAYS'"})
    void anotherWidth(String width, String open) {
        Setup setup = reopened(Change.WIDTH);
        setup = setup.withStart(setup.start().withTramlineWidth(EnteredQuantity.parse(width)));
        assertThat(open(setup)).extracting(Step::name).containsExactlyElementsOf(names(open));
    }

    /** By 5 % another opening is needed, by more than 10 % also another pattern. */
    @ParameterizedTest
    @CsvSource({
        "82 kg/ha, 12 km/h,",
        "84 kg/ha, 12 km/h, RATE",
        "87 kg/ha, 12 km/h, RATE",
        "100 kg/ha, 12 km/h, 'RATE TRAYS'",
        "80 kg/ha, 12.4 km/h,",
        "80 kg/ha, 13 km/h, RATE",
        "80 kg/ha, 14 km/h, 'RATE TRAYS'"
    })
    void anotherRateOrSpeed(String nitrogen, String speed, String open) {
        Setup setup = reopened(Change.RATE_OR_SPEED);
        assertThat(open(setup)).containsExactly(Step.RATE);
        setup = setup.withRate(setup.rate()
                .withPlan(setup.rate()
                        .plan()
                        .withNitrogenRate(EnteredQuantity.parse(nitrogen))
                        .withSpeed(EnteredQuantity.parse(speed))));
        assertThat(open(setup)).extracting(Step::name).containsExactlyElementsOf(names(open));
    }

    private static List<String> names(String steps) {
        return steps == null ? List.of() : List.of(steps.split(" "));
    }

    /** The machine goes up with the crop, so everything else holds. */
    @Test
    void aTallerCropNeedsItsHeightAlone() {
        Setup setup = reopened(Change.CROP_TALLER);
        assertThat(open(setup)).containsExactly(Step.HEIGHT);
        setup = setup.withHeight(setup.height().withCropHeights(typed("41 cm", "44 cm", "40 cm")));
        assertThat(open(setup)).isEmpty();
    }

    private static Setup checked(Setup setup) {
        return setup.withMachineCheck(demo.machineCheck());
    }

    /** After the machine check the tests are there, prove nothing and advise nothing; a new one does. */
    @Test
    void aChangedPartNeedsMachineCheckAndTrayTest() {
        Setup setup = reopened(Change.MACHINE_PART);
        assertThat(open(setup)).containsExactly(Step.MACHINE, Step.TRAYS);
        setup = checked(setup);
        Assessment checked = Assessor.assess(setup);
        assertThat(open(setup)).containsExactly(Step.TRAYS);
        assertThat(checked.card().missing()).containsExactly("trays.differs.MACHINE_PART");
        assertThat(checked.trays().tests()).hasSize(2);
        assertThat(checked.trays().comparisons()).as("they stay to compare").hasSize(1);
        assertThat(checked.trays().advice().kind()).isEqualTo(AdviceKind.DO_A_TEST);
        assertThat(checked.trays().loss()).isNull();
        assertThat(checked.card().settings().levers()).as("still set so").containsEntry("long vane", 10.5);

        Setup driven = driven(setup, checked);
        Assessment after = Assessor.assess(driven);
        assertThat(after.trays().proof().index()).isEqualTo(2);
        assertThat(after.trays().advice().kind()).isEqualTo(AdviceKind.KEEP);
        assertThat(after.trays().comparisons().get(1).sameSettings())
                .as("not a repeat: another part")
                .isFalse();
        assertThat(after.card().cardAllowed()).isTrue();
    }

    private static Setup driven(Setup setup, Assessment assessment) {
        Setup begun = TrayTestDraft.added(setup, assessment, TestNumbers.ENGLISH);
        List<TrayTestEntry> tests = new ArrayList<>(begun.trays().tests());
        TrayTestEntry last = tests.get(2);
        assertThat(last.conditions().partChanged()).isEqualTo(YesNo.UNANSWERED);
        tests.set(
                2,
                last.withRuns(EnteredQuantity.parse("4"))
                        .withCatches(demo.trays().tests().get(1).catches()));
        return begun.withTrays(begun.trays().withTests(tests));
    }

    /** An uneven test of the machine as it was does not stop the machine as it is. */
    @Test
    void anUnevenTestBeforeAPartWasChangedStopsNothing() {
        Setup uneven = demo.withTrays(demo.trays()
                .withTests(List.of(demo.trays()
                        .tests()
                        .get(1)
                        .withCatches(typed("9 g", "12 g", "20 g", "27 g", "20 g", "12 g", "9 g")))));
        assertThat(Assessor.assess(uneven).states()).containsEntry(Step.TRAYS, StepState.STOPPED);
        Setup changed = checked(
                Revisions.reopen(uneven, Assessor.assess(uneven), Set.of(Change.MACHINE_PART), TestNumbers.ENGLISH));
        assertThat(Assessor.assess(changed).states()).containsEntry(Step.TRAYS, StepState.OPEN);
    }

    /** A part that is answered as not changed proves as before. */
    @ParameterizedTest
    @CsvSource({"YES, false", "NO, true", "UNANSWERED, true"})
    void onlyAChangedPartCounts(YesNo changed, boolean proves) {
        Setup setup = demo.withTrays(demo.trays()
                .withTests(demo.trays().tests().stream()
                        .map(test -> test.withConditions(test.conditions().withPartChanged(changed)))
                        .toList()));
        assertThat(Assessor.assess(setup).trays().proof() != null).isEqualTo(proves);
    }

    @Test
    void guardsAreLookedAtAgain() {
        assertThat(demo.machineCheck().checks()).anyMatch(check -> check.item() == CheckItem.GUARDS);
        assertThat(Assessor.assess(reopened(Change.MACHINE_PART)).card().missing())
                .contains("missing.guards", "missing.vanes");
    }
}
