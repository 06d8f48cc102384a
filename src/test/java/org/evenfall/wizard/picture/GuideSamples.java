package org.evenfall.wizard.picture;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import java.util.function.Supplier;
import java.util.stream.IntStream;
import org.evenfall.finding.Arg;
import org.evenfall.finding.Sentences;
import org.evenfall.flight.DrivingPattern;
import org.evenfall.granule.ProductForm;
import org.evenfall.machine.FactorRule;
import org.evenfall.machine.FlowPoint;
import org.evenfall.machine.HeightResult;
import org.evenfall.machine.Lever;
import org.evenfall.machine.MachineProfile;
import org.evenfall.machine.RateSetting;
import org.evenfall.machine.Side;
import org.evenfall.machine.Widening;
import org.evenfall.quantity.Interval;
import org.evenfall.quantity.Unit;
import org.evenfall.rate.FieldUse;
import org.evenfall.rate.NitrogenSplits;
import org.evenfall.rate.PassUse;
import org.evenfall.rate.RatePlan;
import org.evenfall.rate.SpeedCheck;
import org.evenfall.reference.Direction;
import org.evenfall.reference.MatchResult;
import org.evenfall.reference.Reachability;
import org.evenfall.reference.Verdict;
import org.evenfall.setup.Assessment;
import org.evenfall.setup.BucketFacts;
import org.evenfall.setup.SeasonLogResult;
import org.evenfall.setup.entry.Condition;
import org.evenfall.setup.entry.YesNo;
import org.evenfall.wizard.picture.PictureGalleryTest.Variant;

/** Inputs for the pictures of steps 0 to 4 and 6: nothing typed, the invented demo, and what is worse. */
final class GuideSamples {

    private static final String LONG = "a lever with a long name that its owner gave it one day";

    private GuideSamples() {}

    /**
     * One picture.
     *
     * @param name of its file
     * @param data makes the picture with nothing, with typical and with the worst data, all different
     */
    record Sample(String name, List<Supplier<Picture>> data) {

        /** All data: narrow, wide, and in the large letters of a projector. */
        Map<String, Variant> variants() {
            Map<String, Variant> all = new LinkedHashMap<>();
            for (double[] size : new double[][] {{300, 420, 15}, {560, 640, 15}, {600, 540, 32}}) {
                for (int i = 0; i < data.size(); i++) {
                    all.put(
                            i + " at " + size[0],
                            new Variant(data.get(i).get(), size[0] / size[2], size[1] / size[2], size[2]));
                }
            }
            return all;
        }

        @Override
        public String toString() {
            return name;
        }
    }

    @SafeVarargs
    static <P extends Picture> Sample sample(String name, Supplier<P> made, Consumer<P>... shown) {
        List<Supplier<Picture>> data = new ArrayList<>();
        data.add(made::get);
        for (Consumer<P> show : shown) {
            data.add(() -> {
                P picture = made.get();
                show.accept(picture);
                return picture;
            });
        }
        return new Sample(name, data);
    }

    static List<Sample> all(Sentences words) throws Exception {
        List<Sample> all = new ArrayList<>(start(words));
        all.addAll(rate(words));
        all.addAll(product(words));
        all.addAll(machineAndHeight(words));
        all.addAll(TrayTestSamples.all(words));
        all.add(log(words));
        return all;
    }

    private static MachineProfile machine(double discRadiusM, double lowest, double highest) {
        return new MachineProfile(
                "x", List.of(), discRadiusM, 1234.0, lowest, highest, 2, 0.75, List.of(), List.of(), null);
    }

    private static List<Sample> start(Sentences words) throws Exception {
        MachineProfile demo = Samples.assessed(Samples.demo()).machine();
        List<Lever> many = IntStream.range(0, 9)
                .mapToObj(i -> new Lever(
                        LONG + " " + i, "scale", -i * 12.5, 100.0, i == 0 ? 0.1 : 12.5, Widening.values()[i % 4]))
                .toList();
        return List.of(
                sample(
                        "0b-passes",
                        () -> new PassesPicture(words),
                        p -> p.show(28.0, DrivingPattern.BACK_AND_FORTH),
                        p -> p.show(36.0, DrivingPattern.ROUND_AND_ROUND)),
                sample(
                        "0d-discs",
                        () -> new DiscsPicture(words),
                        p -> p.show(demo),
                        p -> p.show(machine(0.9, 400, 1000)),
                        p -> p.show(machine(0.2, 400, 1000))),
                sample(
                        "0e-rate-setting",
                        () -> new RateSettingPicture(words),
                        p -> p.show(RateSetting.OPENING, FactorRule.UNANSWERED),
                        p -> p.show(RateSetting.FACTOR, FactorRule.SHOWN_OVER_CAUGHT),
                        p -> p.show(RateSetting.WEIGHING, FactorRule.UNANSWERED)),
                sample("0f-levers", () -> new LeversPicture(words), p -> p.show(demo.levers()), p -> p.show(many)),
                sample(
                        "0g-openings",
                        () -> new OpeningTablePicture(words),
                        p -> p.show(demo.openings(), demo.tableDensityKgPerL()),
                        p -> p.show(
                                IntStream.rangeClosed(1, 40)
                                        .mapToObj(i -> new FlowPoint(i * 5, i * i * 0.7))
                                        .toList(),
                                null),
                        p -> p.show(List.of(new FlowPoint(3, 12)), null)),
                sample("0h-kit", () -> new KitPicture(words), p -> p.show(7), p -> p.show(99)));
    }

    private static List<Sample> product(Sentences words) throws Exception {
        Assessment demo = Samples.assessed(Samples.demo());
        return List.of(
                sample(
                        "1a-granules",
                        () -> new GranulesPicture(words),
                        p -> p.show(ProductForm.GRANULAR_UREA),
                        p -> p.show(ProductForm.PRILLED_UREA),
                        p -> p.show(ProductForm.CALCIUM_AMMONIUM_NITRATE)),
                sample(
                        "1b-treated",
                        () -> new TreatedPicture(words),
                        p -> p.show(YesNo.YES, "urease inhibitor as named on the bag", "2027-09-30"),
                        p -> p.show(YesNo.YES, LONG + " " + LONG, "thirtieth of September 2027, says the driver"),
                        p -> p.show(YesNo.NO, "", "")),
                sample(
                        "1c-condition",
                        () -> new ConditionPicture(words),
                        p -> p.show(Condition.FREE_FLOWING),
                        p -> p.show(Condition.SLIGHTLY_DAMP),
                        p -> p.show(Condition.CAKED)),
                sample(
                        "1d-clean",
                        () -> new CleanPicture(words),
                        p -> p.show(YesNo.YES, YesNo.YES),
                        p -> p.show(YesNo.YES, YesNo.NO)),
                sample(
                        "1e-sample",
                        () -> new SamplePicture(words),
                        p -> p.show(22, 5, 5),
                        p -> p.show(10000, 3, 100),
                        p -> p.show(1, null, 1)),
                sample("1f-filling", () -> new FillingPicture(words), p -> p.show(2.0), p -> p.show(0.75)),
                sample(
                        "1g-sieves",
                        () -> new SievePicture(words),
                        p -> p.show(demo.product().sieve(), demo.product().bands()),
                        p -> p.show(demo.product().sieve(), List.of())),
                sample(
                        "1h-reach",
                        () -> new ReachPicture(words),
                        p -> p.show(demo.match(), 28.0),
                        p -> p.show(match(-9.4, new Interval(-14, -4.9), 21.2, Reachability.PROBABLY_NOT), 60.0),
                        p -> p.show(match(2.1, new Interval(-0.4, 4.4), null, null), null)));
    }

    private static MatchResult match(double againstM, Interval interval, Double widestM, Reachability reachability) {
        return new MatchResult(
                List.of(),
                null,
                Verdict.NO_REFERENCE,
                Direction.WIDER,
                null,
                Direction.WIDER,
                againstM,
                interval,
                widestM,
                reachability,
                null,
                null,
                0);
    }

    private static HeightResult height(double cropM, double laterM, double overM, double chainM) {
        return new HeightResult(
                new HeightResult.Crop(cropM, 0.1, laterM),
                overM,
                laterM + overM,
                new HeightResult.Now(null, null, null, null),
                chainM,
                null,
                null);
    }

    private static List<Sample> machineAndHeight(Sentences words) throws Exception {
        Assessment demo = Samples.assessed(Samples.demo());
        List<VanePicture.Vane> worn = IntStream.range(0, 12)
                .mapToObj(i -> new VanePicture.Vane(
                        i % 2 == 0 ? Side.LEFT : Side.RIGHT, LONG, 0.3 - 0.01 * i, i == 3 ? null : 0.42, i % 3 == 0))
                .toList();
        return List.of(
                sample(
                        "3b-vanes",
                        () -> new VanePicture(words),
                        p -> p.show(List.of(
                                new VanePicture.Vane(Side.LEFT, "long", 0.318, 0.32, false),
                                new VanePicture.Vane(Side.LEFT, "short", 0.22, 0.225, false),
                                new VanePicture.Vane(Side.RIGHT, "long", 0.305, 0.32, true),
                                new VanePicture.Vane(Side.RIGHT, "short", 0.224, 0.225, false))),
                        p -> p.show(worn)),
                sample(
                        "3c-level",
                        () -> new LevelPicture(words),
                        p -> p.show(new LevelPicture.Measured(0.91, 0.905, 0.0, 1.6, 1.6)),
                        p -> p.show(new LevelPicture.Measured(1.2, 1.02, 12.3, 1.25, 2.4))),
                sample(
                        "3d-pto",
                        () -> new PtoPicture(words),
                        p -> p.show(538.0, 540.0, 450.0, 600.0),
                        p -> p.show(1010.0, 540.0, 500.0, 560.0)),
                sample(
                        "4a-crop",
                        () -> new CropPicture(words),
                        p -> p.show(
                                List.of(0.24, 0.27, 0.26),
                                demo.height() == null ? null : demo.height().crop()),
                        p -> p.show(
                                IntStream.range(0, 20)
                                        .mapToObj(i -> 0.1 + 0.05 * i)
                                        .toList(),
                                new HeightResult.Crop(0.6, 0.9, 0.75)),
                        p -> p.show(List.of(0.02), new HeightResult.Crop(0.02, 0, 0.02))),
                sample(
                        "4c-chain",
                        () -> new ChainPicture(words),
                        p -> p.show(height(0.26, 0.26, 0.75, 0.65)),
                        p -> p.show(height(0.9, 1.1, 0.8, 0.1)),
                        p -> p.show(height(0, 0, 0.75, 1.05))));
    }

    private static Sample log(Sentences words) {
        List<SeasonLogResult.Field> many = IntStream.range(0, 14)
                .mapToObj(i -> logged(i % 3 == 0 ? LONG + " " + i : "Far Bank " + i, 400 + 180 * i, 120))
                .toList();
        return sample(
                "7d-log",
                () -> new LogPicture(words),
                p -> p.show(List.of(logged("Far Bank", 1400, 150), logged("Long Reach", 700, 150)), name -> name),
                p -> p.show(List.of(logged("", 1400, 0)), name -> name),
                p -> p.show(many, name -> name));
    }

    /** A field of 10 ha with a product of 46 %; without a plan where none is given. */
    private static SeasonLogResult.Field logged(String name, double productKg, double plannedKgPerHa) {
        FieldUse use = FieldUse.of(List.of(PassUse.of(10, productKg, 46.0, null)));
        return new SeasonLogResult.Field(
                name,
                use,
                plannedKgPerHa == 0
                        ? null
                        : new SeasonLogResult.Plan(2, plannedKgPerHa, plannedKgPerHa - use.nitrogenKgPerHa()));
    }

    private static List<Sample> rate(Sentences words) throws Exception {
        Assessment demo = Samples.demoAssessed();
        RatePlan plan = demo.rate().plan();
        BucketFacts facts = BucketFacts.of(demo, 0);
        BucketFacts.Expected long60 =
                new BucketFacts.Expected(48, 62, 50, new Interval(47.5, 52.5), null, new Interval(59, 65), 0.0065);
        return List.of(
                sample(
                        "season",
                        () -> new SeasonPicture(words),
                        p -> p.show(plan.amounts(), demo.rate().nitrogenSplits()),
                        p -> p.show(
                                plan.amounts(),
                                NitrogenSplits.of(List.of(20.0, 80.0, 30.0, 25.0, 40.0, 3.0, 90.0), 80.0))),
                sample(
                        "run",
                        () -> new RunPicture(words),
                        p -> p.show(plan, 28.0),
                        p -> p.show(
                                new RatePlan(
                                        plan.amounts(),
                                        new RatePlan.Logistics(900.0, 200.0, 400.0, 400.0, 123.4, 2.0),
                                        new RatePlan.Flow(18.0, 312.5, 156.25, 40.0),
                                        plan.bucket(),
                                        plan.money()),
                                36.0)),
                sample(
                        "money",
                        () -> new MoneyPicture(words),
                        p -> p.show(plan.money(), ""),
                        p -> p.show(
                                new RatePlan.Money(1234.56, 9876.54, 99999.0, -12.0),
                                words.text("rate.againstMass", Arg.number(59, 0, Unit.PERCENT)))),
                sample(
                        "speed",
                        () -> new SpeedPicture(words),
                        p -> p.show(100.0, demo.rate().speed(), 12.0),
                        p -> p.show(250.0, new SpeedCheck(6.1, 30, -49.0, 4, 0.4), 12.0)),
                sample(
                        "bucket sequence",
                        () -> new BucketSequencePicture(words),
                        p -> p.show(facts, RateSetting.OPENING),
                        p -> p.show(new BucketFacts(true, 25.5, 27.0, long60, null), RateSetting.OPENING),
                        p -> p.show(new BucketFacts(false, 1.125, 1.125, long60, null), RateSetting.FACTOR)),
                sample(
                        "countdown",
                        () -> new CountdownFace(words),
                        p -> p.show(Stopwatch.State.RUNNING, 7.2, 20.0, ""),
                        p -> p.show(Stopwatch.State.RUNNING, 20.3, 20.0, words.text("rate.with.nothing")),
                        p -> p.show(Stopwatch.State.STOPPED, 187.4, null, "")));
    }
}
