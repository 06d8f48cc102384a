package org.evenfall.setup;

import org.evenfall.flight.DrivingPattern;
import org.evenfall.machine.HeightResult;
import org.evenfall.machine.MachineCheckResult;
import org.evenfall.machine.MachineProfile;
import org.evenfall.rate.BucketResult;
import org.evenfall.setup.path.ProductPaths;
import org.evenfall.setup.path.StartPaths;
import org.evenfall.trays.Tramlines;
import org.jspecify.annotations.Nullable;

/** What the setup is set to now: the conditions that a measurement made today would have. */
final class SetNow {

    private SetNow() {}

    /**
     * What is set now: measured where it was measured, else as planned.
     *
     * @param start settings to start from
     * @param widthM tramline width, m
     */
    static MachineSet of(
            ReadSetup read,
            double widthM,
            MachineProfile machine,
            ProductResult product,
            ReadSettings start,
            MachineCheckResult check,
            @Nullable HeightResult height,
            RateResult rate) {
        BucketResult bucket = rate.lastBucket();
        return new MachineSet(
                new TestConditions(
                        new Tramlines(widthM, driving(read)),
                        heightM(machine, start, height),
                        speedKmPerH(rate),
                        rate.plan() == null ? null : rate.plan().amounts().productKgPerHa(),
                        read.get(ProductPaths.NAME).strip(),
                        read.get(ProductPaths.DELIVERY).strip(),
                        product.density() == null ? null : product.density().meanKgPerL(),
                        product.sieve() == null
                                ? null
                                : product.sieve().distribution().d50Mm(),
                        false),
                new ReadSettings(
                        start.levers(),
                        check.ptoRpm() == null ? start.ptoRpm() : check.ptoRpm(),
                        heightM(machine, start, height),
                        start.tiltDeg()),
                bucket == null ? new Openings(null, null) : Openings.of(bucket.openingLeft(), bucket.openingRight()));
    }

    /** How the passes follow each other; back and forth while it is not answered. */
    static DrivingPattern driving(ReadSetup read) {
        return read.get(StartPaths.DRIVING_PATTERN) == DrivingPattern.ROUND_AND_ROUND
                ? DrivingPattern.ROUND_AND_ROUND
                : DrivingPattern.BACK_AND_FORTH;
    }

    /** The measured forward speed, else the planned one, km/h; null while neither is known. */
    static @Nullable Double speedKmPerH(RateResult rate) {
        if (rate.speed() != null) {
            return rate.speed().meanKmPerH();
        }
        return rate.plan() == null ? null : rate.plan().flow().speedKmPerH();
    }

    /** The height wanted over the crop, m: of the height step, else of the settings, else of the handbook. */
    static @Nullable Double heightM(MachineProfile machine, ReadSettings start, @Nullable HeightResult height) {
        if (height != null) {
            return height.wantedOverCropM();
        }
        return start.heightOverCropM() == null ? machine.wantedHeightM() : start.heightOverCropM();
    }
}
