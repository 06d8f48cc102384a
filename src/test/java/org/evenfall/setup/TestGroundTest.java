package org.evenfall.setup;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.evenfall.finding.Finding;
import org.evenfall.finding.FindingKind;
import org.evenfall.quantity.EnteredQuantity;
import org.evenfall.quantity.Unit;
import org.evenfall.setup.entry.Setup;
import org.evenfall.setup.entry.TrayTestEntry;
import org.evenfall.setup.entry.WindLimitEntries;
import org.evenfall.store.SetupJson;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** Before and between the tray tests: wind, wheel marks, repeats; and nothing typed is dropped without a word. */
class TestGroundTest {

    private Setup demo;

    @BeforeEach
    void read() throws Exception {
        demo = new SetupJson().read(Files.readString(Path.of("demo", "setup.json")), "demo");
    }

    private static EnteredQuantity wind(String metresPerSecond) {
        return new EnteredQuantity(metresPerSecond, Unit.M_PER_S);
    }

    private static List<Finding> findings(Setup setup, String key) {
        return Assessor.assess(setup).findings().stream()
                .filter(finding -> finding.key().equals(key))
                .toList();
    }

    @Test
    void tooMuchWindStopsATestStillToBeDriven() {
        Setup before = demo.withTrays(demo.trays().withTests(List.of()).withWind(wind("4.5")));
        assertThat(findings(before, "trays.windStop"))
                .singleElement()
                .extracting(Finding::kind)
                .isEqualTo(FindingKind.STOP);
        Setup after = demo.withTrays(demo.trays().withWind(wind("4.5")));
        assertThat(findings(after, "trays.windStop"))
                .singleElement()
                .extracting(Finding::kind)
                .isEqualTo(FindingKind.NOTE);
        assertThat(Assessor.assess(after).card().cardAllowed()).isTrue();
    }

    /** Above the owner's warning limit it is named, above the highest it proves nothing. */
    @Test
    void aTestDrivenInTooMuchWindIsDoubted() {
        List<TrayTestEntry> tests = new ArrayList<>(demo.trays().tests());
        tests.set(1, tests.get(1).withWind(wind("4.5")));
        Setup windy = demo.withTrays(demo.trays().withTests(tests));
        assertThat(findings(windy, "trays.differs.WIND")).hasSize(1);
        assertThat(findings(windy, "trays.drivenInWind")).isEmpty();
        assertThat(findings(demo, "trays.differs.WIND")).isEmpty();
        Setup own = windy.withTrays(windy.trays().withWindLimits(WindLimitEntries.EMPTY.withStop(wind("5"))));
        assertThat(findings(own, "trays.differs.WIND")).isEmpty();
        assertThat(findings(own, "trays.drivenInWind")).hasSize(1);
    }

    @Test
    void limitsThatDoNotRiseAreNotTaken() {
        Setup odd = demo.withTrays(demo.trays()
                .withWind(wind("2.5"))
                .withWindLimits(WindLimitEntries.EMPTY.withNote(wind("4")).withWarn(wind("3"))));
        assertThat(findings(odd, "trays.windLimitsRise")).hasSize(1);
        assertThat(findings(odd, "trays.windNote")).hasSize(1);
    }

    @Test
    void aRepeatIsKnownAsOneAndAChangeIsWeighed() {
        assertThat(findings(demo, "trays.against")).hasSize(1);
        List<TrayTestEntry> tests = new ArrayList<>(demo.trays().tests());
        TrayTestEntry last = tests.get(1);
        tests.add(last);
        assertThat(findings(demo.withTrays(demo.trays().withTests(tests)), "trays.repeatsWell"))
                .hasSize(1);
        tests.set(
                2,
                last.withCatches(List.of(
                        new EnteredQuantity("12", Unit.G),
                        new EnteredQuantity("23", Unit.G),
                        new EnteredQuantity("11", Unit.G),
                        new EnteredQuantity("22", Unit.G),
                        new EnteredQuantity("12", Unit.G),
                        new EnteredQuantity("24", Unit.G),
                        new EnteredQuantity("13", Unit.G))));
        assertThat(findings(demo.withTrays(demo.trays().withTests(tests)), "trays.repeatsBadly"))
                .hasSize(1);
    }

    @Test
    void theCostOfUnevennessIsARange() {
        TraysResult trays = Assessor.assess(demo).trays();
        assertThat(trays.loss()).isNotNull();
        assertThat(trays.loss().lowKgPerHa()).isLessThan(trays.loss().highKgPerHa());
        assertThat(trays.comparisons()).hasSize(1);
        assertThat(trays.comparisons().get(0).change().chanceSecondMoreEven()).isGreaterThan(0.95);
    }

    @Test
    void aSieveWithoutApertureIsReported() {
        List<EnteredQuantity> apertures = new ArrayList<>(demo.product().apertures());
        apertures.set(1, EnteredQuantity.EMPTY);
        Setup blank = demo.withProduct(demo.product().withApertures(apertures));
        assertThat(findings(blank, "product.apertureBlank"))
                .singleElement()
                .extracting(Finding::field)
                .isEqualTo("/product/apertures/1");
    }
}
