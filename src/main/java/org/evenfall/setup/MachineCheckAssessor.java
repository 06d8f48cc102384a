package org.evenfall.setup;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.evenfall.finding.Arg;
import org.evenfall.finding.Finding;
import org.evenfall.finding.Step;
import org.evenfall.machine.CheckAnswer;
import org.evenfall.machine.CheckItem;
import org.evenfall.machine.MachineCheck;
import org.evenfall.machine.MachineCheckResult;
import org.evenfall.machine.MachineProfile;
import org.evenfall.machine.VaneCheck;
import org.evenfall.quantity.Unit;
import org.evenfall.setup.entry.CheckEntry;
import org.evenfall.setup.entry.MachineCheckEntries;
import org.evenfall.setup.entry.Setup;
import org.evenfall.setup.entry.VaneEntry;
import org.jspecify.annotations.Nullable;

/** Step 3: the machine looked over. */
final class MachineCheckAssessor {

    private MachineCheckAssessor() {}

    static MachineCheckResult assess(
            Setup setup, MachineProfile machine, @Nullable Double ptoWantedRpm, EntryReader reader) {
        MachineCheckEntries entries = setup.machineCheck();
        Map<CheckItem, CheckAnswer> answers = new EnumMap<>(CheckItem.class);
        Set<CheckItem> withReason = EnumSet.noneOf(CheckItem.class);
        for (CheckEntry check : entries.checks()) {
            answers.put(check.item(), check.answer());
            if (!check.overrideReason().isBlank()) {
                withReason.add(check.item());
            }
        }
        Double pto = reader.read(entries.ptoMeasured(), Fields.PTO_SPEED, "/yard/ptoMeasured");
        MachineCheckResult result = MachineCheck.assess(
                new MachineCheck.Found(
                        vanes(entries, reader),
                        answers,
                        withReason,
                        !entries.vaneOverrideReason().isBlank(),
                        !entries.levelOverrideReason().isBlank(),
                        metres(reader.read(entries.heightLeft(), Fields.FRAME_HEIGHT, "/yard/heightLeft")),
                        metres(reader.read(entries.heightRight(), Fields.FRAME_HEIGHT, "/yard/heightRight")),
                        reader.read(entries.tyreLeft(), Fields.TYRE_PRESSURE, "/yard/tyreLeft"),
                        reader.read(entries.tyreRight(), Fields.TYRE_PRESSURE, "/yard/tyreRight"),
                        pto,
                        ptoWantedRpm),
                machine.discSpeedAt540Rpm());
        reader.read(entries.tilt(), Fields.TILT, "/yard/tilt");
        tell(result, entries, machine, ptoWantedRpm, reader);
        return result;
    }

    private static List<MachineCheck.MeasuredVane> vanes(MachineCheckEntries entries, EntryReader reader) {
        List<MachineCheck.MeasuredVane> vanes = new ArrayList<>();
        for (int i = 0; i < entries.vanes().size(); i++) {
            VaneEntry vane = entries.vanes().get(i);
            String at = "/yard/vanes/" + i;
            Double lengthMm = reader.read(vane.length(), Fields.VANE_LENGTH, at + "/length");
            Double newMm = reader.read(vane.lengthNew(), Fields.VANE_LENGTH, at + "/lengthNew");
            vanes.add(new MachineCheck.MeasuredVane(
                    vane.disc(),
                    vane.label(),
                    lengthMm == null ? null : Double.valueOf(lengthMm / 1000),
                    newMm == null ? null : Double.valueOf(newMm / 1000),
                    vane.straightSmoothUnholed()));
        }
        return vanes;
    }

    private static void tell(
            MachineCheckResult result,
            MachineCheckEntries entries,
            MachineProfile machine,
            @Nullable Double ptoWantedRpm,
            EntryReader reader) {
        reader.need(result.unanswered().isEmpty(), Step.MACHINE, "missing.checks", "/yard/checks");
        reader.need(result.ptoRpm() != null, Step.MACHINE, "missing.pto", "/yard/ptoMeasured");
        reader.need(!entries.vanes().isEmpty(), Step.MACHINE, "missing.vanes", "/yard/vanes");
        reader.need(result.levelDifferenceM() != null, Step.MACHINE, "missing.level", "/yard/heightLeft");
        for (CheckItem item : result.failed()) {
            String key = item == CheckItem.GUARDS ? "yard.guards" : "yard.failed";
            Arg word = Arg.word("choice.CheckItem." + item);
            boolean stops = MachineCheck.spoilPattern().contains(item);
            reader.add((stops
                            ? Finding.stop(Step.MACHINE, key, word)
                            : Finding.warn(Step.MACHINE, "yard.failedFlow", word))
                    .at("/yard/checks"));
        }
        for (CheckEntry check : entries.checks()) {
            if (result.overridden().contains(check.item())) {
                reader.add(Finding.warn(
                                Step.MACHINE,
                                "yard.overridden",
                                Arg.word("choice.CheckItem." + check.item()),
                                Arg.text(check.overrideReason()))
                        .at("/yard/checks"));
            }
        }
        for (VaneCheck vane : result.vanes()) {
            if (vane.failed()) {
                vane(vane, entries.vaneOverrideReason(), reader);
            }
        }
        limit(
                result.levelDifferenceM(),
                MachineCheck.WORST_LEVEL_M,
                "yard.level",
                100,
                Unit.CM,
                entries,
                "/yard/heightLeft",
                reader);
        limit(
                result.tyreDifferenceBar(),
                MachineCheck.WORST_TYRE_BAR,
                "yard.tyres",
                1,
                Unit.BAR,
                entries,
                "/yard/tyreLeft",
                reader);
        Double deviation = MachineCheck.ptoDeviationPercent(result.ptoRpm(), ptoWantedRpm);
        limit(
                deviation,
                MachineCheck.WORST_PTO_PERCENT,
                "yard.pto",
                1,
                Unit.PERCENT,
                entries,
                "/yard/ptoMeasured",
                reader);
        if (result.ptoRpm() != null
                && ((machine.ptoLowestRpm() != null && result.ptoRpm() < machine.ptoLowestRpm())
                        || (machine.ptoHighestRpm() != null && result.ptoRpm() > machine.ptoHighestRpm()))) {
            reader.add(Finding.stop(Step.MACHINE, "settings.ptoBeyond", Arg.number(result.ptoRpm(), 0, Unit.RPM))
                    .at("/yard/ptoMeasured"));
        }
    }

    private static void vane(VaneCheck vane, String reason, EntryReader reader) {
        Arg wear = Arg.number(vane.wearM() == null ? 0 : 1000 * vane.wearM(), 0, Unit.MM);
        Arg side = Arg.word("choice.Side." + vane.side());
        reader.add((reason.isBlank()
                        ? Finding.stop(Step.MACHINE, "yard.vane", Arg.text(vane.label()), side, wear)
                        : Finding.warn(
                                Step.MACHINE, "yard.vaneOverridden", Arg.text(vane.label()), side, Arg.text(reason)))
                .at("/yard/vanes"));
    }

    private static void limit(
            @Nullable Double value,
            double worst,
            String key,
            double factor,
            Unit unit,
            MachineCheckEntries entries,
            String pointer,
            EntryReader reader) {
        if (value == null || Math.abs(value) <= worst + 1e-9) {
            return;
        }
        Arg found = Arg.number(Math.abs(value) * factor, 1, unit);
        Arg allowed = Arg.number(worst * factor, 1, unit);
        reader.add((entries.levelOverrideReason().isBlank()
                        ? Finding.stop(Step.MACHINE, key, found, allowed)
                        : Finding.warn(
                                Step.MACHINE,
                                key + "Overridden",
                                found,
                                allowed,
                                Arg.text(entries.levelOverrideReason())))
                .at(pointer));
    }

    private static @Nullable Double metres(@Nullable Double cm) {
        return cm == null ? null : Double.valueOf(cm / 100);
    }
}
