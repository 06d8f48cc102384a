package org.evenfall.machine;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * The machine check before the field. The limits of the handbook come before those given here.
 */
public final class MachineCheck {

    /** Wear of a vane above which it fails, m. Common practice: the pattern shows it. */
    public static final double WORST_VANE_WEAR_M = 0.005;

    /** Allowed difference of left and right frame height, m. Common practice: 2 cm. */
    public static final double WORST_LEVEL_M = 0.02;

    /** Allowed difference of left and right tyre pressure, bar. Common practice: 0.2 bar. */
    public static final double WORST_TYRE_BAR = 0.2;

    /** Allowed deviation of the measured PTO speed from the wanted one, %. Common practice: a few per cent. */
    public static final double WORST_PTO_PERCENT = 3;

    /** PTO speed to which disc speeds of the handbook refer, rpm. Source (from memory): ISO 500-1, PTO type 1. */
    private static final double RATED_PTO_RPM = 540;

    /** Rounding that does not count against a limit. */
    private static final double ROUNDING = 1e-9;

    private MachineCheck() {}

    /**
     * One vane as measured.
     *
     * @param side which disc
     * @param label which vane
     * @param lengthM its length, m, or null
     * @param lengthNewM its length when new, m, or null
     * @param answer straight, smooth and without holes
     */
    public record MeasuredVane(
            Side side,
            String label,
            @Nullable Double lengthM,
            @Nullable Double lengthNewM,
            CheckAnswer answer) {}

    /**
     * Everything found at the machine check.
     *
     * @param vanes vanes
     * @param answers answer by item
     * @param withReason items whose failure is overridden with a typed reason
     * @param vanesOverridden a reason was typed for failed vanes
     * @param levelOverridden a reason was typed for level, tyres or PTO speed
     * @param heightLeftM frame height left, m
     * @param heightRightM frame height right, m
     * @param tyreLeftBar tyre pressure left, bar
     * @param tyreRightBar tyre pressure right, bar
     * @param ptoRpm measured PTO speed, rpm
     * @param ptoWantedRpm wanted PTO speed, rpm
     */
    public record Found(
            List<MeasuredVane> vanes,
            Map<CheckItem, CheckAnswer> answers,
            Set<CheckItem> withReason,
            boolean vanesOverridden,
            boolean levelOverridden,
            @Nullable Double heightLeftM,
            @Nullable Double heightRightM,
            @Nullable Double tyreLeftBar,
            @Nullable Double tyreRightBar,
            @Nullable Double ptoRpm,
            @Nullable Double ptoWantedRpm) {}

    /** Items whose failure affects the pattern or people; the agitator affects only the flow. */
    public static Set<CheckItem> spoilPattern() {
        return EnumSet.complementOf(EnumSet.of(CheckItem.AGITATOR));
    }

    /** A missing guard is never overridden: it can maim. */
    public static boolean mayBeOverridden(CheckItem item) {
        return item != CheckItem.GUARDS;
    }

    /**
     * Assesses the machine check. What was not measured neither fails nor passes.
     *
     * @param found everything found
     * @param discSpeedAt540Rpm disc speed at 540 rpm of the PTO, rpm; null when not known
     */
    public static MachineCheckResult assess(Found found, @Nullable Double discSpeedAt540Rpm) {
        List<VaneCheck> vanes = found.vanes().stream().map(MachineCheck::vane).toList();
        List<CheckItem> failed = new ArrayList<>();
        List<CheckItem> overridden = new ArrayList<>();
        List<CheckItem> unanswered = new ArrayList<>();
        for (CheckItem item : CheckItem.values()) {
            switch (found.answers().getOrDefault(item, CheckAnswer.UNANSWERED)) {
                case FAILED -> {
                    boolean overriddenWithReason = found.withReason().contains(item) && mayBeOverridden(item);
                    (overriddenWithReason ? overridden : failed).add(item);
                }
                case UNANSWERED -> unanswered.add(item);
                case GOOD, NOT_FITTED -> {
                    // neither fails nor is open
                }
            }
        }
        Double level = difference(found.heightLeftM(), found.heightRightM());
        Double tyres = difference(found.tyreLeftBar(), found.tyreRightBar());
        boolean vaneStops = vanes.stream().anyMatch(VaneCheck::failed) && !found.vanesOverridden();
        boolean levelStops = (beyond(level, WORST_LEVEL_M)
                        || beyond(tyres, WORST_TYRE_BAR)
                        || beyond(ptoDeviationPercent(found.ptoRpm(), found.ptoWantedRpm()), WORST_PTO_PERCENT))
                && !found.levelOverridden();
        boolean itemStops = failed.stream().anyMatch(spoilPattern()::contains);
        Double discRpm = found.ptoRpm() == null || discSpeedAt540Rpm == null
                ? null
                : Double.valueOf(discSpeedAt540Rpm * found.ptoRpm() / RATED_PTO_RPM);
        return new MachineCheckResult(
                vanes,
                failed,
                overridden,
                unanswered,
                level,
                tyres,
                found.ptoRpm(),
                discRpm,
                vaneStops || levelStops || itemStops);
    }

    /** Deviation of the measured from the wanted PTO speed, %; null without either. */
    public static @Nullable Double ptoDeviationPercent(@Nullable Double ptoRpm, @Nullable Double wantedRpm) {
        return ptoRpm == null || wantedRpm == null ? null : Double.valueOf(100 * (ptoRpm / wantedRpm - 1));
    }

    private static VaneCheck vane(MeasuredVane vane) {
        Double wear = difference(vane.lengthNewM(), vane.lengthM());
        Double percent =
                wear == null || vane.lengthNewM() == null ? null : Double.valueOf(100 * wear / vane.lengthNewM());
        boolean failed = vane.answer() == CheckAnswer.FAILED || (wear != null && wear > WORST_VANE_WEAR_M + ROUNDING);
        return new VaneCheck(vane.side(), vane.label(), wear, percent, failed);
    }

    private static @Nullable Double difference(@Nullable Double first, @Nullable Double second) {
        return first == null || second == null ? null : Double.valueOf(first - second);
    }

    private static boolean beyond(@Nullable Double value, double limit) {
        return value != null && Math.abs(value) > limit + ROUNDING;
    }
}
