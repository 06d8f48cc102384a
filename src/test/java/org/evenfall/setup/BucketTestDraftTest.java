package org.evenfall.setup;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import org.evenfall.machine.FactorRule;
import org.evenfall.machine.RateSetting;
import org.evenfall.quantity.EnteredQuantity;
import org.evenfall.quantity.NumberFormats;
import org.evenfall.quantity.Unit;
import org.evenfall.rate.BucketResult;
import org.evenfall.setup.entry.BucketEntry;
import org.evenfall.setup.entry.SettingsEntries;
import org.evenfall.setup.entry.Setup;
import org.evenfall.store.SetupJson;
import org.junit.jupiter.api.Test;

/** What a new bucket test begins with, from the demo of an invented farm. */
class BucketTestDraftTest {

    private static final NumberWriter POINT = (value, decimals) -> NumberFormats.decimals(value, decimals, Locale.ROOT);
    private static final NumberWriter COMMA =
            (value, decimals) -> NumberFormats.decimals(value, decimals, Locale.GERMANY);

    private static Setup demo() throws Exception {
        return new SetupJson().read(Files.readString(Path.of("demo", "setup.json")), "demo");
    }

    private static Setup with(Setup setup, List<BucketEntry> tests) {
        return setup.withRate(setup.rate().withBucketTests(tests));
    }

    private static BucketEntry last(Setup setup) {
        List<BucketEntry> tests = setup.rate().bucketTests();
        return tests.get(tests.size() - 1);
    }

    @Test
    void theFirstTestBeginsWithTheHandbooksOpeningAndTheTimeThatFillsTheBucket() throws Exception {
        Setup blank = with(demo(), List.of());
        Assessment assessment = Assessor.assess(blank);
        BucketEntry draft = last(BucketTestDraft.added(blank, assessment, POINT));
        String first = POINT.write(assessment.rate().plan().flow().firstOpening(), 1);
        assertThat(draft.openingLeft()).isEqualTo(new EnteredQuantity(first, Unit.NONE));
        assertThat(draft.openingRight()).isEqualTo(draft.openingLeft());
        assertThat(draft.time()).isEqualTo(new EnteredQuantity("20", Unit.S));
        assertThat(draft.bucketEmpty()).isEqualTo(EnteredQuantity.EMPTY);
    }

    @Test
    void withoutAPlanTheFirstTestIsBlank() {
        Setup draft = BucketTestDraft.added(Setup.EMPTY, Assessor.assess(Setup.EMPTY), POINT);
        assertThat(draft.rate().bucketTests()).containsExactly(BucketEntry.EMPTY);
    }

    @Test
    void theNextTestBeginsWithTheAdviceOfEachSideAndKeepsTimeAndBucket() throws Exception {
        BucketEntry uneven = demo().rate()
                .bucketTests()
                .get(0)
                .withOpeningRight(new EnteredQuantity("26.5", Unit.NONE))
                .withTime(new EnteredQuantity("0.35", Unit.MIN))
                .withBucketEmpty(new EnteredQuantity("1.30", Unit.KG))
                .withRight(List.of(new EnteredQuantity("15.0", Unit.KG)));
        Setup setup = with(demo(), List.of(uneven));
        Assessment assessment = Assessor.assess(setup);
        BucketResult result = assessment.rate().bucketTests().get(0);
        BucketEntry draft = last(BucketTestDraft.added(setup, assessment, COMMA));
        assertThat(result.next().left()).isNotEqualTo(result.next().right());
        assertThat(draft.openingLeft().text())
                .isEqualTo(asOnAScale(result.next().left()));
        assertThat(draft.openingRight().text())
                .isEqualTo(asOnAScale(result.next().right()));
        assertThat(draft.time()).isEqualTo(new EnteredQuantity("0.35", Unit.MIN));
        assertThat(draft.bucketEmpty()).isEqualTo(new EnteredQuantity("1.30", Unit.KG));
        assertThat(draft.left()).isEmpty();
        assertThat(draft.right()).isEmpty();
    }

    private static String asOnAScale(double opening) {
        return COMMA.write(opening, Math.abs(opening - Math.rint(opening)) < 0.05 ? 0 : 1);
    }

    /** 12 % too little at 25: the factor that follows, 25 ÷ 0.88…, with three decimals, once for both sides. */
    @Test
    void theNextFactorIsWrittenOnceWithThreeDecimals() throws Exception {
        Setup first = with(demo(), List.of(demo().rate().bucketTests().get(0)));
        Setup factor = first.withMachine(
                first.machine().withRateSetting(RateSetting.FACTOR).withFactorRule(FactorRule.SHOWN_OVER_CAUGHT));
        Assessment assessment = Assessor.assess(factor);
        BucketEntry draft = last(BucketTestDraft.added(factor, assessment, COMMA));
        double next = assessment.rate().bucketTests().get(0).next().left();
        assertThat(draft.openingLeft().text()).isEqualTo(COMMA.write(next, 3)).matches("\\d+,\\d{3}");
        assertThat(draft.openingRight()).isEqualTo(EnteredQuantity.EMPTY);
        // and it can be read again: three decimals are no thousands group here
        assertThat(Assessor.assess(BucketTestDraft.added(factor, assessment, COMMA))
                        .findings())
                .noneMatch(finding -> finding.key().equals("entry.ambiguous"));
        // before any test nothing is known of the factor: the table is of openings
        Setup none = with(factor, List.of());
        assertThat(last(BucketTestDraft.added(none, Assessor.assess(none), COMMA))
                        .openingLeft())
                .isEqualTo(EnteredQuantity.EMPTY);
    }

    /** Levers and PTO speed as in the last tray test begun; density and delivery as now; the date of the card. */
    @Test
    void itCarriesItsConditions() throws Exception {
        Setup demo = demo();
        BucketEntry draft = last(BucketTestDraft.added(demo, Assessor.assess(demo), COMMA));
        assertThat(draft.bulkDensity()).isEqualTo(EnteredQuantity.parse("0,7572 kg/L"));
        assertThat(draft.delivery()).isEqualTo("S-1042");
        assertThat(draft.date()).isEqualTo("2027-03-18");
        assertThat(draft.settings())
                .isEqualTo(SettingsEntries.EMPTY
                        .withLevers(demo.trays().tests().get(1).settings().levers())
                        .withPtoSpeed(EnteredQuantity.parse("540 rpm")));
        Setup first = demo.withTrays(demo.trays().withTests(List.of()));
        assertThat(last(BucketTestDraft.added(first, Assessor.assess(first), COMMA))
                        .settings()
                        .levers())
                .isEqualTo(demo.match().settings().levers());
    }

    @Test
    void theEarlierTestsStayAsTheyAre() throws Exception {
        Setup setup = demo();
        Setup draft = BucketTestDraft.added(setup, Assessor.assess(setup), POINT);
        int before = setup.rate().bucketTests().size();
        assertThat(draft.rate().bucketTests()).hasSize(before + 1);
        assertThat(draft.rate().bucketTests().subList(0, before))
                .isEqualTo(setup.rate().bucketTests());
    }

    @Test
    void whereNothingIsAdvisedTheLastOpeningIsKept() throws Exception {
        // a test whose catches cannot be read gives no advice; the plan gives none either
        BucketEntry typed = BucketEntry.EMPTY
                .withOpeningLeft(new EnteredQuantity("31", Unit.NONE))
                .withOpeningRight(new EnteredQuantity("32", Unit.NONE));
        Setup setup = with(Setup.EMPTY, List.of(typed));
        BucketEntry draft = last(BucketTestDraft.added(setup, Assessor.assess(setup), POINT));
        assertThat(draft.openingLeft().text()).isEqualTo("31");
        assertThat(draft.openingRight().text()).isEqualTo("32");
    }
}
