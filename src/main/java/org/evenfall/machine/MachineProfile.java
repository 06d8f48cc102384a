package org.evenfall.machine;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * The machine as the core needs it.
 *
 * @param name the owner's name for it
 * @param workingWidthsM working widths of its handbook, m
 * @param discRadiusM centre to vane tip, m; half the diameter over the vane tips that is asked
 * @param discSpeedAt540Rpm disc speed at 540 rpm of the PTO, rpm
 * @param ptoLowestRpm lowest PTO speed allowed, rpm
 * @param ptoHighestRpm highest PTO speed allowed, rpm
 * @param outlets number of outlets
 * @param wantedHeightM handbook height above the crop canopy, m
 * @param levers levers
 * @param openings opening table, lowest opening first, all outlets together
 * @param tableDensityKgPerL bulk density the table is for, kg/L
 * @param rateSetting how the rate is set
 * @param factorRule how the terminal computes the next factor; without a meaning for an opening by hand
 */
public record MachineProfile(
        String name,
        List<Double> workingWidthsM,
        @Nullable Double discRadiusM,
        @Nullable Double discSpeedAt540Rpm,
        @Nullable Double ptoLowestRpm,
        @Nullable Double ptoHighestRpm,
        int outlets,
        @Nullable Double wantedHeightM,
        List<Lever> levers,
        List<FlowPoint> openings,
        @Nullable Double tableDensityKgPerL,
        RateSetting rateSetting,
        FactorRule factorRule) {

    /** A machine whose opening is set by hand. */
    public MachineProfile(
            String name,
            List<Double> workingWidthsM,
            @Nullable Double discRadiusM,
            @Nullable Double discSpeedAt540Rpm,
            @Nullable Double ptoLowestRpm,
            @Nullable Double ptoHighestRpm,
            int outlets,
            @Nullable Double wantedHeightM,
            List<Lever> levers,
            List<FlowPoint> openings,
            @Nullable Double tableDensityKgPerL) {
        this(
                name,
                workingWidthsM,
                discRadiusM,
                discSpeedAt540Rpm,
                ptoLowestRpm,
                ptoHighestRpm,
                outlets,
                wantedHeightM,
                levers,
                openings,
                tableDensityKgPerL,
                RateSetting.UNANSWERED,
                FactorRule.UNANSWERED);
    }

    /** Copies the lists. */
    public MachineProfile {
        workingWidthsM = List.copyOf(workingWidthsM);
        levers = List.copyOf(levers);
        openings = List.copyOf(openings);
    }

    /** The same machine with another way to set its rate. */
    public MachineProfile withRateSetting(RateSetting setting, FactorRule rule) {
        return new MachineProfile(
                name,
                workingWidthsM,
                discRadiusM,
                discSpeedAt540Rpm,
                ptoLowestRpm,
                ptoHighestRpm,
                outlets,
                wantedHeightM,
                levers,
                openings,
                tableDensityKgPerL,
                setting,
                rule);
    }
}
