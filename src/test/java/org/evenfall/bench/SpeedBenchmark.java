package org.evenfall.bench;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.Locale;
import java.util.ResourceBundle;
import java.util.concurrent.TimeUnit;
import org.evenfall.card.CardContents;
import org.evenfall.card.CardPdf;
import org.evenfall.finding.Sentences;
import org.evenfall.setup.Assessment;
import org.evenfall.setup.Assessor;
import org.evenfall.setup.entry.Setup;
import org.evenfall.sign.PdfSigner;
import org.evenfall.sign.SigningKey;
import org.evenfall.sign.SigningKeys;
import org.evenfall.store.SetupJson;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import org.openjdk.jmh.runner.Runner;
import org.openjdk.jmh.runner.options.OptionsBuilder;

/** Warm time of one assessment with all steps, and of one signed card. Run its main method. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 3, time = 2)
@Measurement(iterations = 4, time = 2)
@Fork(1)
public class SpeedBenchmark {

    private final Setup setup;
    private final SigningKey key;
    private final Sentences words =
            new Sentences(ResourceBundle.getBundle("org.evenfall.words", Locale.ENGLISH), Locale.UK);
    private final Assessment assessment;

    public SpeedBenchmark() {
        try {
            setup = new SetupJson().read(Files.readString(Path.of("demo", "setup.json")), "demo");
            key = SigningKeys.make("A. Marlow", "", Instant.EPOCH);
            assessment = Assessor.assess(setup);
        } catch (Exception broken) {
            throw new IllegalStateException(broken);
        }
    }

    @Benchmark
    public Assessment assessment() {
        return Assessor.assess(setup);
    }

    @Benchmark
    public byte[] signedCard() throws Exception {
        return PdfSigner.sign(
                CardPdf.draw(CardContents.of(setup, assessment, words, key.code()), Instant.EPOCH),
                key,
                "A. Marlow",
                Instant.EPOCH);
    }

    public static void main(String[] args) throws Exception {
        new Runner(new OptionsBuilder()
                        .include(SpeedBenchmark.class.getSimpleName())
                        .build())
                .run();
    }
}
