package org.evenfall;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.File;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The program itself, in a process with 256 MB, checks files that are built to overload it. */
class VerifyBoundsTest {

    private static final Duration LONGEST = Duration.ofSeconds(20);
    private static final int LARGE = 19_000_000;

    @TempDir
    private Path folder;

    /** Runs {@code verify}: exit code, a blank and what was reported, on standard output and standard error together. */
    private String verify(Path card) throws Exception {
        File out = folder.resolve("out").toFile();
        ProcessBuilder builder = new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-Xmx256m",
                        "-cp",
                        System.getProperty("java.class.path"),
                        "org.evenfall.Main",
                        "verify",
                        card.toString())
                .redirectErrorStream(true)
                .redirectOutput(out);
        builder.environment().put("EVENFALL_HOME", folder.resolve("home").toString());
        Process process = builder.start();
        try {
            assertThat(process.waitFor(LONGEST.toSeconds(), TimeUnit.SECONDS)).isTrue();
        } finally {
            process.destroyForcibly();
        }
        return process.exitValue() + " "
                + Files.readString(out.toPath())
                        .replace(card.toString(), "FILE")
                        .strip();
    }

    private String verify(String content) throws Exception {
        return verify(Files.write(folder.resolve("card.pdf"), content.getBytes(StandardCharsets.ISO_8859_1)));
    }

    /** 60 000 fields, each the only child of the one before. */
    private static String chainOfFields() {
        StringBuilder pdf = new StringBuilder("%PDF-1.6\n");
        int count = 60_000;
        StringBuilder table = new StringBuilder("0000000000 65535 f \n");
        for (int i = 1; i <= count + 2; i++) {
            table.append(String.format("%010d 00000 n \n", pdf.length()));
            String body = i == 1
                    ? "<</Type/Catalog/Pages 2 0 R/AcroForm<</Fields[3 0 R]>>>>"
                    : i == 2
                            ? "<</Type/Pages/Kids[]/Count 0>>"
                            : "<</T(a)" + (i < count + 2 ? "/Kids[" + (i + 1) + " 0 R]" : "/FT/Sig")
                                    + (i > 3 ? "/Parent " + (i - 1) + " 0 R" : "") + ">>";
            pdf.append(i).append(" 0 obj\n").append(body).append("\nendobj\n");
        }
        int start = pdf.length();
        return pdf.append("xref\n0 ")
                .append(count + 3)
                .append('\n')
                .append(table)
                .append("trailer\n<</Size ")
                .append(count + 3)
                .append("/Root 1 0 R>>\nstartxref\n")
                .append(start)
                .append("\n%%EOF\n")
                .toString();
    }

    @Test
    void aLongChainOfFieldsIsWalked() throws Exception {
        assertThat(verify(chainOfFields())).isEqualTo("4 Not signed.");
    }

    @Test
    void deepNestingIsRefused() throws Exception {
        String refused = "2 FILE: is no PDF file, or is damaged";
        String begin = "%PDF-1.6\n1 0 obj\n";
        String end = "\nendobj\ntrailer\n<</Root 1 0 R>>\nstartxref\n9\n%%EOF\n";
        assertThat(verify(begin + "[".repeat(LARGE) + end)).isEqualTo(refused);
        assertThat(verify(begin + "<</A".repeat(LARGE / 4) + end)).isEqualTo(refused);
    }

    @Test
    void largeFilesWithoutSenseAreRefused() throws Exception {
        String refused = "2 FILE: is no PDF file, or is damaged";
        assertThat(verify("\0".repeat(LARGE))).isEqualTo(refused);
        byte[] noise = new byte[LARGE];
        new Random(3).nextBytes(noise);
        assertThat(verify("%PDF-1.6\n" + new String(noise, StandardCharsets.ISO_8859_1)))
                .isEqualTo(refused);
        assertThat(verify("%PDF-1.6\n" + "1 0 obj\n".repeat(LARGE / 8))).isEqualTo(refused);
        assertThat(verify("%PDF-1.6\n" + "1 0 obj\n<</Type/XRef>>\nendobj\n".repeat(LARGE / 40)))
                .isEqualTo(refused);
    }
}
