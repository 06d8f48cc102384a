package org.evenfall.bench;

import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/**
 * Prints one table of times, each against a bare baseline measured in turns with it, and writes it to
 * target/bench/table.txt: mvn -B -Pbench test. No time is asserted; it fails where something to be measured fails.
 */
@Tag("bench")
class BenchTest {

    private static final Path TABLE = Path.of("target", "bench", "table.txt");

    @Test
    void table() throws Exception {
        Files.createDirectories(TABLE.getParent());
        BenchTable table = new BenchTable(ThisComputer.name());
        for (Row row : Rows.all()) {
            try {
                table.add(row, row.measure());
            } catch (NotMeasuredException reason) {
                table.missing(row, reason);
            }
        }
        Files.writeString(TABLE, table.text());
        System.out.println(table.text());
    }
}
