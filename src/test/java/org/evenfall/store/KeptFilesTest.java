package org.evenfall.store;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import org.evenfall.flight.DrivingPattern;
import org.evenfall.machine.CheckAnswer;
import org.evenfall.machine.CheckItem;
import org.evenfall.machine.Side;
import org.evenfall.machine.Widening;
import org.evenfall.quantity.EnteredQuantity;
import org.evenfall.quantity.Unit;
import org.evenfall.setup.entry.AmountKind;
import org.evenfall.setup.entry.MachineCheckEntries;
import org.evenfall.setup.entry.Paper;
import org.evenfall.setup.entry.RateBasis;
import org.evenfall.setup.entry.Setup;
import org.evenfall.setup.entry.TestedProductEntry;
import org.evenfall.setup.entry.TrayEntries;
import org.evenfall.setup.entry.TrayTestEntry;
import org.evenfall.setup.entry.YesNo;
import org.evenfall.trays.Surface;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Files of earlier programs, never edited: they open, mean the same, and are written back the same. */
class KeptFilesTest {

    private final SetupJson json = new SetupJson();

    private static String text(String name) throws Exception {
        try (InputStream in = KeptFilesTest.class.getResourceAsStream(name)) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        }
    }

    private Setup setup(String name) throws Exception {
        return json.read(text(name), name);
    }

    private static EnteredQuantity typed(String number, Unit unit) {
        return new EnteredQuantity(number, unit);
    }

    @ParameterizedTest
    @ValueSource(strings = {"kept-1-complete.json", "kept-1-unfinished.json"})
    void writtenBackEqual(String name) throws Exception {
        ObjectMapper mapper = new ObjectMapper();
        JsonNode before = mapper.readTree(text(name));
        // an empty text is not typed and is left out
        if (before.at("/card/remarks").asText().isEmpty()) {
            ((ObjectNode) before.get("card")).remove("remarks");
        }
        // the radius of the disc has become its diameter
        ObjectNode machine = (ObjectNode) before.get("machine");
        assertThat(machine.remove("discRadius").textValue()).isEqualTo("42 cm");
        machine.put("discDiameter", "84 cm");
        assertThat(mapper.readTree(json.write(json.read(text(name), name)))).isEqualTo(before);
    }

    @Test
    void theCompleteFileMeansTheSame() throws Exception {
        Setup setup = setup("kept-1-complete.json");
        assertThat(setup.start().field()).isEqualTo("Long Reach");
        assertThat(setup.start().tramlineWidth()).isEqualTo(typed("28", Unit.M));
        assertThat(setup.start().drivingPattern()).isEqualTo(DrivingPattern.BACK_AND_FORTH);
        assertThat(setup.machine().workingWidths())
                .containsExactly(typed("24", Unit.M), typed("28", Unit.M), typed("30", Unit.M));
        assertThat(setup.machine().discDiameter()).isEqualTo(typed("84", Unit.CM));
        assertThat(setup.machine().levers()).hasSize(2);
        assertThat(setup.machine().levers().get(0).step()).isEqualTo(typed("0.5", Unit.NONE));
        assertThat(setup.machine().levers().get(0).widerWhen()).isEqualTo(Widening.HIGHER);
        assertThat(setup.machine().openings().get(1).flow()).isEqualTo(typed("52", Unit.KG_PER_MIN));
        assertThat(setup.product().containerFull())
                .containsExactly(typed("1722", Unit.G), typed("1731", Unit.G), typed("1726", Unit.G));
        assertThat(setup.product().sieveAmounts()).isEqualTo(AmountKind.HEIGHT);
        assertThat(setup.product().sievings().get(1).amounts())
                .containsExactly(typed("3", Unit.MM), typed("47", Unit.MM), typed("45", Unit.MM), typed("4", Unit.MM));
        assertThat(setup.match().library()).hasSize(9);
        TestedProductEntry can = setup.match().library().get(0);
        assertThat(can.id()).isEqualTo("can27");
        assertThat(can.bulkDensity()).isEqualTo(typed("1.02", Unit.KG_PER_L));
        assertThat(setup.match().chosen()).isEqualTo("urea-b");
        assertThat(setup.match().settings().levers())
                .containsEntry("long vane", typed("9", Unit.NONE))
                .containsEntry("drop point", typed("5", Unit.NONE));
        MachineCheckEntries check = setup.machineCheck();
        assertThat(check.heightRight()).isEqualTo(typed("80.5", Unit.CM));
        assertThat(check.vanes().get(0).disc()).isEqualTo(Side.LEFT);
        assertThat(check.vanes().get(0).length()).isEqualTo(typed("331", Unit.MM));
        assertThat(check.checks()).hasSize(10);
        assertThat(check.checks().get(0).item()).isEqualTo(CheckItem.GUARDS);
        assertThat(check.checks().get(0).answer()).isEqualTo(CheckAnswer.GOOD);
        assertThat(setup.height().chainPoint()).isEqualTo(typed("-10", Unit.CM));
        assertThat(setup.rate().plan().basis()).isEqualTo(RateBasis.NITROGEN);
        assertThat(setup.rate().plan().price()).isEqualTo(typed("560", Unit.PER_T));
        assertThat(setup.rate().speedRuns().get(1).time()).isEqualTo(typed("30.1", Unit.S));
        assertThat(setup.rate().bucketTests().get(0).right())
                .containsExactly(typed("15.5", Unit.KG), typed("15.3", Unit.KG));
        TrayEntries trays = setup.trays();
        assertThat(trays.surface()).isEqualTo(Surface.SHORT_CROP);
        assertThat(trays.borderSide()).isEqualTo(Side.LEFT);
        assertThat(trays.tests()).hasSize(2);
        TrayTestEntry first = trays.tests().get(0);
        assertThat(first.date()).isEqualTo("2027-03-18");
        assertThat(first.settings().tilt()).isEqualTo(typed("0", Unit.DEG));
        assertThat(first.catches()).hasSize(7);
        assertThat(setup.card().paper()).isEqualTo(Paper.A5_LANDSCAPE);
        assertThat(setup.card().revision()).isEqualTo(1);
        assertThat(setup.card().windStop()).isEqualTo(typed("4", Unit.M_PER_S));
        assertThat(setup.unknownKeys().jsonByKey()).containsOnlyKeys("note");
    }

    @Test
    void theUnfinishedFileMeansTheSame() throws Exception {
        Setup setup = setup("kept-1-unfinished.json");
        assertThat(setup.start().crop()).isEqualTo("spring barley");
        assertThat(setup.product().containerFull()).containsExactly(typed("1722", Unit.G), typed("1790", Unit.G));
        assertThat(setup.match().chosen()).isEmpty();
        assertThat(setup.match().trayTestOnly()).isEqualTo(YesNo.UNANSWERED);
        assertThat(setup.machineCheck()).isEqualTo(MachineCheckEntries.EMPTY);
        assertThat(setup.rate().plan().nitrogenRate()).isEqualTo(typed("60", Unit.KG_PER_HA));
        assertThat(setup.rate().plan().speed()).isEqualTo(EnteredQuantity.EMPTY);
        assertThat(setup.trays()).isEqualTo(TrayEntries.EMPTY);
    }
}
