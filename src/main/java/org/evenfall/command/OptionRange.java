package org.evenfall.command;

import java.math.BigDecimal;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;

/** Range check of the options of all commands. */
final class OptionRange {

    private OptionRange() {}

    /**
     * The value of an option that must be given and be within limits, both allowed.
     *
     * @param spec the command, for the message
     * @param option name of the option, as typed
     * @throws ParameterException with option, value and limits; also for NaN
     */
    static double within(CommandSpec spec, String option, @Nullable Double value, double low, double high) {
        if (value == null || !(value >= low && value <= high)) {
            throw new ParameterException(
                    spec.commandLine(),
                    String.format(
                            Locale.ROOT,
                            "%s: %s; allowed is %s to %s",
                            option,
                            value == null ? "is missing" : value.toString(),
                            plain(low),
                            plain(high)));
        }
        return value;
    }

    private static String plain(double value) {
        return BigDecimal.valueOf(value).stripTrailingZeros().toPlainString();
    }
}
