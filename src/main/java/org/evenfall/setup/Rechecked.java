package org.evenfall.setup;

import java.time.LocalDate;
import java.util.List;
import org.evenfall.finding.Step;
import org.evenfall.quantity.DateReading;
import org.evenfall.quantity.DateText;
import org.evenfall.rate.BucketResult;
import org.evenfall.setup.entry.BucketEntry;
import org.jspecify.annotations.Nullable;

/**
 * What was checked again since the card before this revision, and what of it still holds.
 *
 * <p>A dated measurement was made again when its date is after that of the card before. One of the same day counts as that
 * of the card before, since a date has no hour. Density, sieves, machine check and height have no dates of their own: of
 * them it is known only whether they hold, and that another delivery was measured.
 *
 * @param revision of the card, 2 or more
 * @param previousDate of the card before, in the form of ISO 8601 (2027-04-30)
 * @param parts in the order of the steps
 */
public record Rechecked(int revision, String previousDate, List<Part> parts) {

    /** Copies the list. */
    public Rechecked {
        parts = List.copyOf(parts);
    }

    /** One of the parts. */
    public Part part(What what) {
        return parts.stream().filter(part -> part.what() == what).findFirst().orElseThrow();
    }

    /** What may be checked again, in the order of the steps. */
    public enum What {
        /** Density and sieves of the product. */
        PRODUCT,
        /** The machine check. */
        MACHINE_CHECK,
        /** The height over the crop. */
        HEIGHT,
        /** The rate, by bucket. */
        RATE,
        /** The tray test. */
        TRAY_TEST
    }

    /** What became of it. */
    public enum State {
        /** Checked again since the card before. */
        AGAIN,
        /** Not checked again, and it still proves. */
        HOLDS,
        /** It no longer proves, or is not done. */
        NO_LONGER
    }

    /**
     * One part.
     *
     * @param what part
     * @param state what became of it
     * @param date when it was done, in the form of ISO 8601; empty where that is not known, and where it holds no longer
     */
    public record Part(What what, State state, String date) {}

    /** Of a revision after the first that knows the date of the card before; null else. */
    public static @Nullable Rechecked of(Assessment assessment) {
        int revision = assessment.read().setup().card().revision();
        String before = assessment.read().setup().card().previousDate();
        if (revision < 2 || !(DateText.read(before) instanceof DateReading.Value previous)) {
            return null;
        }
        return new Rechecked(
                revision,
                previous.date().toString(),
                List.of(
                        product(assessment),
                        undated(What.MACHINE_CHECK, holds(assessment, Step.MACHINE)),
                        undated(What.HEIGHT, assessment.height() != null && holds(assessment, Step.HEIGHT)),
                        rate(assessment, previous.date()),
                        trayTest(assessment, previous.date())));
    }

    private static boolean holds(Assessment assessment, Step step) {
        StepState state = assessment.states().get(step);
        return state != StepState.OPEN && state != StepState.STOPPED;
    }

    private static Part undated(What what, boolean holds) {
        return new Part(what, holds ? State.HOLDS : State.NO_LONGER, "");
    }

    /** Another delivery that was tested on an earlier one was measured anew, as the test would not prove otherwise. */
    private static Part product(Assessment assessment) {
        boolean measured = assessment.product().density() != null && holds(assessment, Step.PRODUCT);
        boolean another = assessment.trays().tests().stream()
                .anyMatch(test -> test.proof().differences().contains(ConditionKind.DENSITY));
        return measured && (another || !assessment.card().testedDelivery().isEmpty())
                ? new Part(What.PRODUCT, State.AGAIN, "")
                : undated(What.PRODUCT, measured);
    }

    /** By the last bucket test that counts: within the tolerance, every outlet caught, and nothing set otherwise since. */
    private static Part rate(Assessment assessment, LocalDate previous) {
        BucketResult last = assessment.rate().lastBucket();
        List<Integer> counted = assessment.rate().bucketIndexes();
        if (last == null
                || !last.agreement().withinTolerance()
                || BucketProgress.differs(assessment, counted.get(counted.size() - 1))) {
            return undated(What.RATE, false);
        }
        BucketEntry test = assessment.read().setup().rate().bucketTests().get(counted.get(counted.size() - 1));
        return dated(What.RATE, test.date(), previous);
    }

    private static Part trayTest(Assessment assessment, LocalDate previous) {
        TrayTestResult proof = assessment.trays().proof();
        return proof == null ? undated(What.TRAY_TEST, false) : dated(What.TRAY_TEST, proof.date(), previous);
    }

    private static Part dated(What what, String typed, LocalDate previous) {
        if (!(DateText.read(typed) instanceof DateReading.Value value)) {
            return undated(what, true);
        }
        return new Part(
                what,
                value.date().isAfter(previous) ? State.AGAIN : State.HOLDS,
                value.date().toString());
    }
}
