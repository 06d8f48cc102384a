package org.evenfall.machine;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** The machine looked over before the field. The limits are ours, common practice, no source; the handbook's come first. */
public final class MachineCheck {

    /** A vane shorter than new by more than this has worn into the pattern, m. */
    public static final double WORST_VANE_WEAR_M = 0.005;

    /** Left and right frame height may differ by this, m. */
    public static final double WORST_LEVEL_M = 0.02;

    /** Left and right tyre pressure may differ by this, bar. */
    public static final double WORST_TYRE_BAR = 0.2;

    /** The measured shaft speed may differ from the wanted one by this, %. */
    public static final double WORST_PTO_PERCENT = 3;

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
     * Everything found in the yard.
     *
     * @param vanes vanes
     * @param answers answer by part
     * @param withReason parts whose failure is overridden with a typed reason
     * @param vanesOverridden a reason was typed for failed vanes
     * @param levelOverridden a reason was typed for level or shaft speed
     * @param heightLeftM frame height left, m
     * @param heightRightM frame height right, m
     * @param tyreLeftBar tyre pressure left
     * @param tyreRightBar tyre pressure right
     * @param ptoRpm measured shaft speed
     * @param ptoWantedRpm wanted shaft speed
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

    /** Parts whose failure reaches the pattern or the people; the agitator only the flow. */
    public static Set<CheckItem> spoilPattern() {
        return EnumSet.complementOf(EnumSet.of(CheckItem.AGITATOR));
    }

    /** A missing guard is never overridden: it can maim. */
    public static boolean mayBeOverridden(CheckItem item) {
        return item != CheckItem.GUARDS;
    }

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
                    // nothing to tell
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
        boolean partStops = failed.stream().anyMatch(spoilPattern()::contains);
        Double discRpm = found.ptoRpm() == null || discSpeedAt540Rpm == null
                ? null
                : Double.valueOf(discSpeedAt540Rpm * found.ptoRpm() / 540);
        return new MachineCheckResult(
                vanes,
                failed,
                overridden,
                unanswered,
                level,
                tyres,
                found.ptoRpm(),
                discRpm,
                vaneStops || levelStops || partStops);
    }

    /** Measured less wanted shaft speed, %; null without either. */
    public static @Nullable Double ptoDeviationPercent(@Nullable Double ptoRpm, @Nullable Double wantedRpm) {
        return ptoRpm == null || wantedRpm == null ? null : Double.valueOf(100 * (ptoRpm / wantedRpm - 1));
    }

    private static VaneCheck vane(MeasuredVane vane) {
        Double wear = difference(vane.lengthNewM(), vane.lengthM());
        Double percent =
                wear == null || vane.lengthNewM() == null ? null : Double.valueOf(100 * wear / vane.lengthNewM());
        boolean failed = vane.answer() == CheckAnswer.FAILED || (wear != null && wear > WORST_VANE_WEAR_M);
        return new VaneCheck(vane.side(), vane.label(), wear, percent, failed);
    }

    private static @Nullable Double difference(@Nullable Double first, @Nullable Double second) {
        return first == null || second == null ? null : Double.valueOf(first - second);
    }

    private static boolean beyond(@Nullable Double value, double limit) {
        return value != null && Math.abs(value) > limit + 1e-9;
    }
}
