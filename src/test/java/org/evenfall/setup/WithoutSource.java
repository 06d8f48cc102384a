package org.evenfall.setup;

import java.util.Arrays;
import java.util.List;

/** Why a finding needs no source, with the keys of these findings; one that ends with a point is for all behind it. */
enum WithoutSource {
    /** Asks for an entry, or reports that something is open. */
    ASKS(
            "missing.",
            "start.leverOpen",
            "start.flowBasis",
            "product.useByOpen",
            "product.noTare",
            "product.apertureBlank",
            "product.classOpen",
            "product.oneSample",
            "match.referenceOpen",
            "rate.unitsBasis",
            "rate.outletNotCaught",
            "rate.assumed",
            "trays.assumed",
            "trays.needsDensity",
            "trays.needsBore",
            "trays.advice.noLever"),
    /** Two entries contradict each other, or arithmetic says so. */
    CONTRADICTION(
            "start.ptoLimits",
            "start.leverLimits",
            "start.leverTwice",
            "start.openingsOrder",
            "product.useByPassed",
            "product.moreSampledThanDelivered",
            "product.lighterThanEmpty",
            "product.aperturesOrder",
            "product.classCount",
            "product.nothingSieved",
            "product.notHundred",
            "match.idTwice",
            "rate.lighterThanBucket",
            "rate.splitNotListed",
            "trays.windLimitsRise",
            "trays.nothingCaught",
            "trays.count",
            "trays.beyondMidway",
            "trays.afterCard",
            "trays.line.twice"),
    /** Outside the limits of an entry, or of the number of sieves and trays that the program takes. */
    INPUT_LIMIT(
            "entry.notANumber",
            "entry.sumOpen",
            "entry.ambiguous",
            "entry.wrongUnit",
            "entry.noUnit",
            "entry.impossible",
            "entry.unusual",
            "entry.notADate",
            "entry.ambiguousDate",
            "product.densityImpossible",
            "product.aperturesCount",
            "trays.switchBefore"),
    /** The limit is what the owner typed from the handbook of the machine. */
    HANDBOOK(
            "start.widthBeyondHandbook",
            "settings.leverBeyond",
            "settings.ptoBeyond",
            "rate.beyondTable",
            "rate.weighing",
            "trays.advice.endStop"),
    /** Repeats an answer of the person, or follows from another finding. */
    FOLLOWS(
            "yard.guards",
            "yard.failed",
            "yard.failedFlow",
            "yard.overridden",
            "trays.yardFirst",
            "trays.spilt",
            "trays.advice.pooled"),
    /** Sends the person to the rules of the country. */
    RULE("product.untreated"),
    /** What is to be done next, without a figure. */
    ACTION(
            "trays.advice.doATest",
            "trays.advice.oneLever",
            "trays.advice.twoLevers",
            "trays.advice.notYet",
            "trays.advice.thenAgain");

    private final List<String> keys;

    WithoutSource(String... keys) {
        this.keys = List.of(keys);
    }

    /** Whether a finding may go without a source. */
    static boolean allows(String key) {
        return all().stream().anyMatch(one -> one.endsWith(".") ? key.startsWith(one) : key.equals(one));
    }

    /** All keys. */
    static List<String> all() {
        return Arrays.stream(values()).flatMap(one -> one.keys.stream()).toList();
    }
}
