package org.evenfall.setup;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;
import org.evenfall.finding.Arg;
import org.evenfall.finding.Finding;
import org.evenfall.granule.BulkDensity;
import org.evenfall.granule.ParticleDensity;
import org.evenfall.granule.SieveReading;
import org.evenfall.granule.SieveResult;
import org.evenfall.granule.SizeDistribution;
import org.evenfall.machine.FlowPoint;
import org.evenfall.machine.Lever;
import org.evenfall.machine.MachineProfile;
import org.evenfall.quantity.EnteredQuantity;
import org.evenfall.quantity.Interval;
import org.evenfall.setup.entry.Setup;
import org.evenfall.setup.path.Entry;
import org.evenfall.setup.path.EntryPath;
import org.evenfall.setup.path.Quantity;
import org.evenfall.setup.path.QuantityList;
import org.evenfall.store.InputFileException;
import org.evenfall.store.SetupJson;

/** Types entries into a setup, one after another, and writes a finding as one line that a test can compare. */
record TypedSetup(Setup setup) {

    static TypedSetup blank() {
        return new TypedSetup(Setup.EMPTY);
    }

    /** The asymmetric demo. */
    static TypedSetup uneven() {
        return file(Path.of("demo", "uneven.json"));
    }

    /** The first demo. */
    static TypedSetup demo() {
        return file(Path.of("demo", "setup.json"));
    }

    static TypedSetup oneOutlet() {
        return file(Path.of("src", "test", "resources", "org", "evenfall", "setup", "one-outlet.json"));
    }

    private static TypedSetup file(Path path) {
        try {
            return new TypedSetup(new SetupJson().read(Files.readString(path), path.toString()));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } catch (InputFileException e) {
            throw new IllegalStateException(e);
        }
    }

    /** An empty text takes the entry out. */
    TypedSetup type(Quantity<?> entry, String line) {
        return new TypedSetup(entry.path().set(setup, EnteredQuantity.parse(line)));
    }

    <R> TypedSetup type(Quantity<R> entry, EntryPath<R> record, String line) {
        return new TypedSetup(entry.at(record).set(setup, EnteredQuantity.parse(line)));
    }

    <R> TypedSetup type(QuantityList<R> entry, EntryPath<R> record, String... lines) {
        return new TypedSetup(entry.at(record)
                .set(setup, Arrays.stream(lines).map(EnteredQuantity::parse).toList()));
    }

    <T> TypedSetup choose(Entry<?, T> entry, T value) {
        return new TypedSetup(entry.path().set(setup, value));
    }

    ReadSetup read() {
        return ReadingPass.read(setup);
    }

    /** FindingKind, step, key, place, arguments (value, unit, ~decimals) of each finding. */
    static List<String> lines(List<Finding> findings) {
        return findings.stream().map(TypedSetup::line).toList();
    }

    static String line(Finding finding) {
        String args = finding.args().stream().map(arg -> " " + written(arg)).collect(Collectors.joining());
        return finding.kind() + " " + finding.step() + " " + finding.key() + " at " + finding.field() + args;
    }

    private static String written(Arg arg) {
        if (arg instanceof Arg.Figure figure) {
            return rounded(figure.value()) + figure.unit().symbol() + "~" + figure.decimals();
        }
        if (arg instanceof Arg.Typed typed) {
            return "'" + (typed.digits() + " " + typed.unit().symbol()).strip() + "'";
        }
        if (arg instanceof Arg.Text text) {
            return "'" + text.text() + "'";
        }
        if (arg instanceof Arg.Word word) {
            return word.key();
        }
        if (arg instanceof Arg.Day day) {
            return day.date().toString();
        }
        if (arg instanceof Arg.Span span) {
            return rounded(span.low()) + ".." + rounded(span.high());
        }
        return ((Arg.Series) arg).args().stream().map(TypedSetup::written).collect(Collectors.joining(",", "[", "]"));
    }

    private static String rounded(double value) {
        BigDecimal four = BigDecimal.valueOf(value).setScale(4, RoundingMode.HALF_UP);
        return four.signum() == 0 ? "0" : four.stripTrailingZeros().toPlainString();
    }

    /** A product of which only density and nitrogen are known, or not even those. */
    static ProductResult product(Double kgPerL, Double nitrogenPercent) {
        return new ProductResult(density(kgPerL), null, null, null, nitrogenPercent, null, List.of(), null);
    }

    /** A product whose granules are known: median, geometric standard deviation, granule density. */
    static ProductResult sieved(Double kgPerL, double d50Mm, double geometricSd, Double granuleKgPerM3) {
        SieveResult sieve = new SieveResult(
                List.of(2.0, 4.0),
                List.of(10.0, 70.0, 20.0),
                1,
                SizeDistribution.exact(d50Mm, geometricSd),
                2,
                d50Mm,
                new Interval(d50Mm - 0.1, d50Mm + 0.1),
                4,
                new SieveResult.Indices(20, 300, 50),
                10,
                70,
                1,
                null,
                new SieveResult.ReadFrom(
                        SieveReading.CURVE,
                        SieveReading.CURVE,
                        SieveReading.CURVE,
                        SieveReading.CURVE,
                        SieveReading.FIT,
                        SieveReading.CURVE,
                        SieveReading.CURVE));
        ParticleDensity particle = granuleKgPerM3 == null
                ? null
                : new ParticleDensity(granuleKgPerM3, 20, 0.58, true, granuleKgPerM3, false);
        return new ProductResult(
                density(kgPerL),
                sieve,
                sieve == null ? null : sieve.distribution(),
                particle,
                46.0,
                null,
                List.of(),
                null);
    }

    private static BulkDensity density(Double kgPerL) {
        return kgPerL == null ? null : new BulkDensity(kgPerL, 0.002, 0.001, 0.5, 3, false, List.of(kgPerL));
    }

    static MachineProfile machine(int outlets, Double tableKgPerL, FlowPoint... openings) {
        return new MachineProfile(
                "test", List.of(), null, null, null, null, outlets, null, List.of(), List.of(openings), tableKgPerL);
    }

    static MachineProfile machine(Double ptoLowest, Double ptoHighest, int outlets) {
        return new MachineProfile(
                "test", List.of(), null, null, ptoLowest, ptoHighest, outlets, null, List.of(), List.of(), null);
    }

    static MachineProfile machine(Double wantedHeightM, Lever... levers) {
        return new MachineProfile(
                "test", List.of(), null, null, null, null, 2, wantedHeightM, List.of(levers), List.of(), null);
    }
}
