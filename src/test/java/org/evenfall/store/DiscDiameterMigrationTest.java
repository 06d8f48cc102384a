package org.evenfall.store;

import static org.assertj.core.api.Assertions.assertThat;

import org.evenfall.quantity.EnteredQuantity;
import org.evenfall.setup.entry.MachineEntries;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The radius of an earlier program is read as a diameter. */
class DiscDiameterMigrationTest {

    private static MachineEntries machine(String json) throws Exception {
        return new SetupJson()
                .read("{\"evenfall\": 1, \"machine\": {" + json + "}}", "old.json")
                .machine();
    }

    /** Twice the number as typed, with its decimals, decimal sign and unit; never a text that can be read two ways. */
    @ParameterizedTest
    @CsvSource(
            delimiter = ';',
            value = {
                "42 cm; 84 cm",
                "42; 84",
                "15,5 in; 31,0 in",
                "0.415 m; 0.830 m",
                "0.605 m; 1.2100 m",
                "42.125 cm; 84.2500 cm",
                "42cm; 84 cm",
                "'420 mm'; 840 mm",
                "0,4 m; 0,8 m",
                "42,50 cm; 85,00 cm"
            })
    void aRadiusBecomesADiameter(String radius, String diameter) throws Exception {
        MachineEntries machine = machine("\"discRadius\": \"" + radius + "\"");
        assertThat(machine.discDiameter().toString()).isEqualTo(diameter);
        assertThat(machine.unknownKeys().jsonByKey()).isEmpty();
    }

    @Test
    void aPlainNumberIsDoubledToo() throws Exception {
        assertThat(machine("\"discRadius\": 41.5").discDiameter().text()).isEqualTo("83.0");
    }

    @Test
    void whatIsNoNumberIsKeptAsItIs() throws Exception {
        MachineEntries machine = machine("\"discRadius\": \"wide\"");
        assertThat(machine.discDiameter()).isEqualTo(EnteredQuantity.EMPTY);
        assertThat(machine.unknownKeys().jsonByKey()).containsEntry("discRadius", "\"wide\"");
    }

    @Test
    void aDiameterGoesBeforeARadius() throws Exception {
        MachineEntries machine = machine("\"discRadius\": \"42 cm\", \"discDiameter\": \"80 cm\"");
        assertThat(machine.discDiameter().toString()).isEqualTo("80 cm");
        assertThat(machine.unknownKeys().jsonByKey()).containsEntry("discRadius", "\"42 cm\"");
    }
}
