package org.evenfall.setup;

import org.evenfall.finding.Arg;
import org.evenfall.finding.Finding;
import org.evenfall.finding.Step;
import org.evenfall.machine.MachineCheck;
import org.evenfall.quantity.Unit;
import org.evenfall.rate.BucketAssessment;
import org.evenfall.setup.path.Entry;
import org.evenfall.setup.path.MachineCheckPaths;
import org.evenfall.setup.path.ProductPaths;
import org.evenfall.setup.path.RatePaths;
import org.evenfall.trays.AdviceReason;

/** What is known of machine and product and comes before a lever: each with its figure, at the entry where it is mended. */
final class KnownFaultFindings {

    private KnownFaultFindings() {}

    static Finding of(AdviceReason reason) {
        return switch (reason.kind()) {
            case PART_FAILED ->
                warn("trays.fault.part", MachineCheckPaths.CHECKS, Arg.word("choice.CheckItem." + reason.subject()))
                        .from("source.orderOfCure");
            case VANE_WORN ->
                warn(
                                "trays.fault.vaneWorn",
                                MachineCheckPaths.VANES,
                                Arg.text(reason.subject()),
                                side(number(reason, 0)),
                                Arg.number(number(reason, 1), 0, Unit.MM),
                                Arg.number(Unit.M.to(Unit.MM, MachineCheck.WORST_VANE_WEAR_M), 0, Unit.MM))
                        .from("source.vaneWear");
            case VANE_FAILED ->
                warn("trays.fault.vane", MachineCheckPaths.VANES, Arg.text(reason.subject()), side(number(reason, 0)))
                        .from("source.vaneWear");
            case LEVEL_OFF ->
                warn(
                                "trays.fault.level",
                                MachineCheckPaths.HEIGHT_LEFT,
                                Arg.number(number(reason, 0), 1, Unit.CM),
                                Arg.number(Unit.M.to(Unit.CM, MachineCheck.WORST_LEVEL_M), 1, Unit.CM))
                        .from("source.level");
            case TYRES_OFF ->
                warn(
                                "trays.fault.tyres",
                                MachineCheckPaths.TYRE_LEFT,
                                Arg.number(number(reason, 0), 2, Unit.BAR),
                                Arg.number(MachineCheck.WORST_TYRE_BAR, 1, Unit.BAR))
                        .from("source.tyres");
            case PTO_OFF ->
                warn(
                                "trays.fault.pto",
                                MachineCheckPaths.PTO_MEASURED,
                                Arg.number(number(reason, 0), 0, Unit.RPM),
                                Arg.number(number(reason, 1), 0, Unit.RPM),
                                Arg.number(MachineCheck.WORST_PTO_PERCENT, 0, Unit.PERCENT))
                        .from("source.pto");
            case PTO_BEYOND ->
                warn(
                                "trays.fault.ptoBeyond",
                                MachineCheckPaths.PTO_MEASURED,
                                Arg.number(number(reason, 0), 0, Unit.RPM))
                        .from("source.orderOfCure");
            case OUTLETS_UNEQUAL ->
                Finding.warn(
                                Step.RATE,
                                "trays.fault.outlets",
                                Arg.word(number(reason, 0) < 0 ? "word.left" : "word.right"),
                                Arg.number(Math.abs(number(reason, 0)), 0, Unit.PERCENT),
                                Arg.number(BucketAssessment.WORST_LEFT_RIGHT_PERCENT, 0, Unit.PERCENT))
                        .from("source.leftRight")
                        .at(RatePaths.BUCKET_TESTS.pointer());
            case PRODUCT_DAMP ->
                Finding.warn(Step.PRODUCT, "trays.fault.damp")
                        .from("source.practice")
                        .at(ProductPaths.CONDITION.pointer());
            case PRODUCT_CAKED ->
                Finding.warn(Step.PRODUCT, "trays.fault.caked")
                        .from("source.practice")
                        .at(ProductPaths.CONDITION.pointer());
            default -> unseen(reason.kind());
        };
    }

    private static Finding unseen(AdviceReason.Kind kind) {
        return switch (kind) {
            case GUARDS_UNSEEN ->
                Finding.note(Step.MACHINE, "trays.unseen.guards")
                        .from("source.orderOfCure")
                        .at(MachineCheckPaths.CHECKS.pointer());
            case VANES_UNSEEN ->
                Finding.note(Step.MACHINE, "trays.unseen.vanes")
                        .from("source.orderOfCure")
                        .at(MachineCheckPaths.VANES.pointer());
            case PTO_UNSEEN ->
                Finding.note(Step.MACHINE, "trays.unseen.pto")
                        .from("source.orderOfCure")
                        .at(MachineCheckPaths.PTO_MEASURED.pointer());
            case OUTLETS_UNSEEN ->
                Finding.note(Step.RATE, "trays.unseen.outlets")
                        .from("source.orderOfCure")
                        .at(RatePaths.BUCKET_TESTS.pointer());
            default -> throw new IllegalArgumentException("no fault: " + kind);
        };
    }

    private static Arg side(double sign) {
        return Arg.word("choice.Side." + (sign < 0 ? "LEFT" : sign > 0 ? "RIGHT" : "UNANSWERED"));
    }

    private static double number(AdviceReason reason, int index) {
        return reason.numbers().get(index);
    }

    private static Finding warn(String key, Entry<?, ?> at, Arg... args) {
        return Finding.warn(Step.MACHINE, key, args).at(at.pointer());
    }
}
