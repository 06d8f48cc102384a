package org.evenfall.wizard.picture;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.evenfall.finding.Sentences;
import org.evenfall.flight.DrivingPattern;
import org.evenfall.granule.BulkDensities;
import org.evenfall.granule.ProductForm;
import org.evenfall.granule.PublishedBand;
import org.evenfall.granule.PublishedBands;
import org.evenfall.granule.Sieves;
import org.evenfall.machine.CheckItem;
import org.evenfall.machine.HeightResult;
import org.evenfall.machine.MachineCheckResult;
import org.evenfall.machine.Side;
import org.evenfall.machine.VaneCheck;
import org.evenfall.quantity.Interval;
import org.evenfall.rate.BucketResult;
import org.evenfall.reference.Direction;
import org.evenfall.reference.MatchResult;
import org.evenfall.reference.RankedProduct;
import org.evenfall.reference.Reachability;
import org.evenfall.reference.Verdict;
import org.evenfall.setup.Assessment;
import org.evenfall.setup.Assessor;
import org.evenfall.setup.BucketFacts;
import org.evenfall.setup.TestResults;
import org.evenfall.setup.TrayTestResult;
import org.evenfall.setup.entry.Setup;
import org.evenfall.store.SetupJson;
import org.evenfall.trays.TrayCatches;
import org.evenfall.trays.TrayLayouts;
import org.evenfall.trays.UniformityCalculator;
import org.evenfall.wizard.picture.PictureGalleryTest.Variant;

/** Inputs for the gallery: the invented demo, and what is worse. */
final class Samples {

    private static final String LONG =
            "Granular urea with a urease inhibitor, second delivery of the spring, from the far end of the shed";

    private Samples() {}

    static Setup demo() throws Exception {
        return new SetupJson().read(Files.readString(Path.of("demo", "setup.json")), "demo");
    }

    static Assessment assessed(Setup setup) {
        return Assessor.assess(setup);
    }

    static Assessment demoAssessed() throws Exception {
        return assessed(demo());
    }

    static Map<String, Variant> sieves(Sentences words) throws Exception {
        Assessment demo = demoAssessed();
        Map<String, Variant> all = new LinkedHashMap<>();
        List<PublishedBand> bands = demo.product().bands();
        for (double[] size : new double[][] {{28, 24, 15}, {17, 18, 15}, {18, 18, 30}}) {
            SievePicture picture = new SievePicture(words);
            picture.show(demo.product().sieve(), bands);
            all.put("demo " + size[0] + " " + size[2], new Variant(picture, size[0], size[1], size[2]));
        }
        all.put("empty", new Variant(new SievePicture(words), 28, 24, 15));
        all.put("one class", sieve(words, bands, List.of(2.0, 3.15, 4.5), List.of(0.0, 100.0, 0.0, 0.0)));
        all.put(
                "eight sieves",
                sieve(
                        words,
                        List.of(),
                        List.of(1.0, 1.4, 2.0, 2.36, 2.8, 3.15, 3.35, 4.75),
                        List.of(1.0, 2.0, 5.0, 11.0, 20.0, 22.0, 20.0, 18.0, 1.0)));
        all.put("fine", sieve(words, bands, List.of(0.5, 1.0), List.of(30.0, 60.0, 10.0)));
        all.put("coarse", sieve(words, bands, List.of(2.0, 3.15, 4.5), List.of(0.0, 4.0, 30.0, 66.0)));
        return all;
    }

    private static Variant sieve(
            Sentences words, List<PublishedBand> bands, List<Double> apertures, List<Double> shares) {
        SievePicture picture = new SievePicture(words);
        picture.show(Sieves.analyse(apertures, List.of(shares)), bands);
        return new Variant(picture, 28, 24, 15);
    }

    static Map<String, Variant> densities(Sentences words) throws Exception {
        Assessment demo = demoAssessed();
        Map<String, Variant> all = new LinkedHashMap<>();
        List<PublishedBand> bands = demo.product().bands();
        List<PublishedBand> both = new ArrayList<>(bands);
        both.addAll(PublishedBands.of(ProductForm.CALCIUM_AMMONIUM_NITRATE));
        DensityPicture usual = new DensityPicture(words);
        usual.show(demo.product().density(), both);
        all.put("demo", new Variant(usual, 28, 16, 15));
        all.put("one", density(words, List.of(1.5), 2, bands, 28));
        all.put("far apart", density(words, List.of(1.3, 1.9, 1.6, 1.4), 2, bands, 17));
        all.put(
                "many",
                density(
                        words,
                        IntStream.range(0, 14)
                                .mapToObj(i -> 1.5 + 0.01 * (i % 5))
                                .toList(),
                        2,
                        List.of(),
                        28));
        all.put("empty", new Variant(new DensityPicture(words), 28, 16, 15));
        DensityPicture big = new DensityPicture(words);
        big.show(demo.product().density(), both);
        all.put("projector", new Variant(big, 18, 13, 36));
        return all;
    }

    private static Variant density(
            Sentences words, List<Double> kg, double litres, List<PublishedBand> bands, double wide) {
        DensityPicture picture = new DensityPicture(words);
        picture.show(BulkDensities.of(kg, litres, 0.001), bands);
        return new Variant(picture, wide, 16, 15);
    }

    static Map<String, Variant> matches(Sentences words) throws Exception {
        Assessment demo = demoAssessed();
        Map<String, Variant> all = new LinkedHashMap<>();
        for (double[] size : new double[][] {{28, 32, 15}, {28, 22, 15}, {17, 26, 15}}) {
            MatchPicture picture = new MatchPicture(words);
            picture.show(demo.match(), demo.product(), demo().product().name());
            all.put("demo " + size[0] + " " + size[1], new Variant(picture, size[0], size[1], size[2]));
        }
        MatchPicture one = new MatchPicture(words);
        RankedProduct bare = new RankedProduct(
                "x",
                LONG,
                24,
                new RankedProduct.Properties(null, null, null),
                null,
                new RankedProduct.Difference(null, null, null, null),
                new RankedProduct.ThrowDifference(0, new Interval(-4, 4), 0),
                9,
                4,
                1,
                false,
                Verdict.FIRST_GUESS_ONLY,
                Direction.WIDER,
                null);
        RankedProduct far = new RankedProduct(
                "y",
                LONG + " (2)",
                24,
                new RankedProduct.Properties(1.08, null, null),
                9.0,
                new RankedProduct.Difference(-30.0, null, null, null),
                new RankedProduct.ThrowDifference(-6.2, new Interval(-9.9, -2.5), -30.0),
                9,
                6,
                0,
                false,
                Verdict.FIRST_GUESS_ONLY,
                Direction.WIDER,
                null);
        one.show(
                new MatchResult(
                        List.of(bare, far),
                        bare,
                        Verdict.FIRST_GUESS_ONLY,
                        Direction.WIDER,
                        null,
                        Direction.WIDER,
                        null,
                        null,
                        null,
                        Reachability.YES,
                        null,
                        null,
                        0),
                demo.product(),
                LONG);
        all.put("long", new Variant(one, 28, 28, 15));
        all.put("empty", new Variant(new MatchPicture(words), 28, 20, 15));
        return all;
    }

    static Map<String, Variant> yards(Sentences words) throws Exception {
        Map<String, Variant> all = new LinkedHashMap<>();
        MachineCheckPicture usual = new MachineCheckPicture(words);
        usual.show(demoAssessed().machineCheck());
        all.put("demo", new Variant(usual, 28, 26, 15));
        MachineCheckResult bad = new MachineCheckResult(
                List.of(
                        new VaneCheck(Side.LEFT, "long", 0.006, 2.0, true),
                        new VaneCheck(Side.LEFT, "short", 0.001, 0.4, false),
                        new VaneCheck(Side.RIGHT, "long with a very long label of its owner", null, null, false),
                        new VaneCheck(Side.RIGHT, "short", 0.0, 0.0, false)),
                List.of(CheckItem.GUARDS, CheckItem.DISCS),
                List.of(CheckItem.TYRES),
                List.of(CheckItem.BEARINGS, CheckItem.AGITATOR, CheckItem.TILT),
                0.035,
                0.3,
                512.0,
                853.0,
                true);
        for (double wide : new double[] {28, 17, 44}) {
            MachineCheckPicture picture = new MachineCheckPicture(words);
            picture.show(bad);
            all.put("bad " + wide, new Variant(picture, wide, wide < 20 ? 28 : 26, 15));
        }
        MachineCheckPicture open = new MachineCheckPicture(words);
        open.show(assessed(Setup.EMPTY).machineCheck());
        all.put("open", new Variant(open, 28, 26, 15));
        all.put("empty", new Variant(new MachineCheckPicture(words), 17, 12, 15));
        return all;
    }

    static Map<String, Variant> heights(Sentences words) throws Exception {
        Map<String, Variant> all = new LinkedHashMap<>();
        HeightResult demo = demoAssessed().height();
        all.put("demo", height(words, demo, "lower edge of the disc", 28));
        all.put(
                "raise",
                height(
                        words,
                        new HeightResult(
                                new HeightResult.Crop(0.62, 0.2, 0.68),
                                0.8,
                                1.48,
                                new HeightResult.Now(0.04, -0.02, 0.62, 0.24),
                                0.55,
                                0.15,
                                new Interval(0.05, 0.3)),
                        "",
                        28));
        all.put(
                "lower",
                height(
                        words,
                        new HeightResult(
                                new HeightResult.Crop(0.05, 0.01, 0.05),
                                0.5,
                                0.55,
                                new HeightResult.Now(-0.015, null, 0.62, -0.12),
                                0.9,
                                0.15,
                                new Interval(0.05, 0.3)),
                        LONG,
                        28));
        all.put("narrow", height(words, demo, "lower edge of the disc", 18));
        all.put("empty", height(words, null, "", 28));
        all.put(
                "no crop",
                height(
                        words,
                        new HeightResult(
                                new HeightResult.Crop(0, 0, 0),
                                0.75,
                                0.75,
                                new HeightResult.Now(null, null, null, null),
                                0,
                                null,
                                null),
                        "frame",
                        28));
        return all;
    }

    private static Variant height(Sentences words, HeightResult result, String point, double wide) {
        HeightPicture picture = new HeightPicture(words);
        picture.show(result, point);
        return new Variant(picture, wide, 26, 15);
    }

    static Map<String, Variant> buckets(Sentences words) throws Exception {
        Assessment demo = demoAssessed();
        Map<String, Variant> all = new LinkedHashMap<>();
        all.put("demo", bucket(words, demo, demo.rate().bucketTests(), 28, 26));
        all.put("plan", bucket(words, demo, List.of(), 28, 20));
        List<BucketResult> many = new ArrayList<>(demo.rate().bucketTests());
        for (int i = 0; i < 6; i++) {
            many.add(new BucketResult(
                    20,
                    21,
                    new BucketResult.Flow(40.0 + i, 60.0 - 2 * i, 100 - i),
                    190.0 + i,
                    3.0,
                    new BucketResult.Agreement(12.0 - 3 * i, -20.0, 1.0, i == 5, null, null),
                    new BucketResult.Next(22.0, 22.0, null),
                    null));
        }
        all.put("many", bucket(words, demo, many, 28, 26));
        all.put("narrow", bucket(words, demo, demo.rate().bucketTests(), 17, 24));
        BucketPicture bare = new BucketPicture(words);
        bare.show(
                null,
                false,
                List.of(new BucketResult(
                        20,
                        20,
                        new BucketResult.Flow(44.0, null, 88),
                        null,
                        null,
                        new BucketResult.Agreement(null, null, null, false, null, null),
                        new BucketResult.Next(null, null, null),
                        null)));
        all.put("no plan", new Variant(bare, 28, 16, 15));
        all.put("empty", new Variant(new BucketPicture(words), 28, 16, 15));
        return all;
    }

    private static Variant bucket(
            Sentences words, Assessment demo, List<BucketResult> tests, double wide, double high) {
        BucketPicture picture = new BucketPicture(words);
        picture.show(BucketFacts.of(demo, 1).expected(), false, tests);
        return new Variant(picture, wide, high, 15);
    }

    static TrayTestResult test(int index, double width, double... grams) {
        List<Double> catches =
                IntStream.range(0, grams.length).mapToObj(i -> grams[i]).toList();
        List<Double> positions = TrayLayouts.of(width, grams.length, 0.25, DrivingPattern.BACK_AND_FORTH)
                .positionsM();
        return TestResults.proving(
                index,
                "2027-03-18",
                width,
                UniformityCalculator.of(
                        new TrayCatches(positions, catches, width, DrivingPattern.BACK_AND_FORTH, 0.25, 2, 0.02, 0.1)),
                new org.evenfall.setup.ReadSettings(java.util.Map.of(), null, null, null));
    }

    static Map<String, Variant> comparisons(Sentences words) {
        Map<String, Variant> all = new LinkedHashMap<>();
        TrayTestResult own = test(1, 28, 16, 17, 18, 19, 18, 16, 17);
        TrayTestResult other = test(0, 24, 12.9, 15.4, 18.9, 22.6, 19.6, 15.1, 13.4);
        all.put(
                "two",
                comparison(words, own, "this setup", other, "Thornmarsh Farm · winter wheat · urea of last year", 36));
        all.put("narrow", comparison(words, own, "this setup", other, "another setup with a long name", 18));
        all.put("hall", comparison(words, own, "this setup", test(0, 28, 0, 0, 80, 3, 5, 2, 1), "spilt on", 60));
        all.put("empty", new Variant(new TestComparisonPicture(words), 28, 12, 15));
        return all;
    }

    private static Variant comparison(
            Sentences words, TrayTestResult own, String name, TrayTestResult other, String otherName, double wide) {
        TestComparisonPicture picture = new TestComparisonPicture(words);
        picture.show(
                new TestComparisonPicture.Test(name, own.evenness(), 28),
                new TestComparisonPicture.Test(otherName, other.evenness(), 28));
        return new Variant(picture, wide, 20, 15);
    }

    static Map<String, Variant> trayBars(Sentences words) throws Exception {
        Map<String, Variant> all = new LinkedHashMap<>();
        all.put("demo", trayBars(words, demoAssessed().trays().tests(), 28));
        all.put("one", trayBars(words, demoAssessed().trays().tests().subList(0, 1), 28));
        all.put(
                "four",
                trayBars(
                        words,
                        List.of(
                                test(0, 28, 12.9, 15.4, 18.9, 22.6, 19.6, 15.1, 13.4),
                                test(1, 28, 14, 16, 18, 20, 19, 16, 14),
                                test(2, 28, 15, 17, 18, 19, 18, 17, 15),
                                test(3, 28, 17, 17, 18, 18, 17.5, 17, 17)),
                        28));
        double[] many = IntStream.range(0, 33)
                .mapToDouble(i -> 20 + 8 * Math.sin(i / 4.0))
                .toArray();
        all.put("33 trays", trayBars(words, List.of(test(0, 36, many)), 28));
        all.put("spilt on", trayBars(words, List.of(test(0, 28, 0, 0, 80, 3, 5, 2, 1)), 17));
        all.put("empty", new Variant(new TrayBarsPicture(words), 28, 14, 15));
        return all;
    }

    private static Variant trayBars(Sentences words, List<TrayTestResult> tests, double wide) {
        TrayBarsPicture picture = new TrayBarsPicture(words);
        picture.show(tests);
        return new Variant(picture, wide, 21, 15);
    }

    static Map<String, Variant> patterns(Sentences words) {
        Map<String, Variant> all = new LinkedHashMap<>();
        PatternPicture.Pattern own = pattern("Granular urea, treated", 9, 0);
        PatternPicture.Pattern other = pattern("Granular 27 % N, dense", 11, 0.4);
        PatternPicture both = new PatternPicture(words);
        both.show(List.of(own, other), 28.0);
        all.put("two", new Variant(both, 28, 18, 15));
        PatternPicture one = new PatternPicture(words);
        one.show(List.of(own), 28.0);
        all.put("one", new Variant(one, 28, 18, 15));
        PatternPicture narrow = new PatternPicture(words);
        narrow.show(List.of(pattern(LONG, 14, 3), pattern(LONG, 8, -2)), null);
        all.put("narrow", new Variant(narrow, 17, 15, 15));
        all.put("empty", new Variant(new PatternPicture(words), 28, 12, 15));
        return all;
    }

    private static PatternPicture.Pattern pattern(String name, double reach, double shift) {
        List<Double> x = new ArrayList<>();
        List<Double> y = new ArrayList<>();
        for (double at = -30; at <= 30; at += 0.25) {
            x.add(at);
            double side = Math.abs(at - shift);
            y.add(Math.exp(-Math.pow(side / reach, 4)) * (1 + 0.25 * Math.cos(side / 2)));
        }
        return new PatternPicture.Pattern(name, x, y);
    }
}
