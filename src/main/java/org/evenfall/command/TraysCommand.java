package org.evenfall.command;

import org.evenfall.flight.DrivingPattern;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;
import picocli.CommandLine.TypeConversionException;

/** Tray tests without the wizard: the plan of a test, the line of one pass, two tests compared. */
@Command(
        name = "trays",
        mixinStandardHelpOptions = true,
        description = "Plan a tray test; lay one pass over itself; compare two; the first move on paper.")
final class TraysCommand implements Runnable {

    @Spec
    private CommandSpec spec = CommandSpec.create();

    static CommandLine line(CommandContext context) {
        CommandLine line = new CommandLine(new TraysCommand());
        line.addSubcommand(new TraysPlanCommand(context));
        line.addSubcommand(new TraysOverlapCommand(context));
        line.addSubcommand(new TraysCompareCommand(context));
        line.addSubcommand(new TraysFirstMoveCommand(context));
        return line;
    }

    @Override
    public void run() {
        throw new ParameterException(spec.commandLine(), "say plan, overlap, compare or first-move");
    }

    /** How the passes follow each other, as it is written on the command line. */
    static final class Driving implements ITypeConverter<DrivingPattern> {

        static final String BACK_AND_FORTH = "back-and-forth";
        static final String ROUND_AND_ROUND = "round-and-round";

        @Override
        public DrivingPattern convert(String word) {
            return switch (word) {
                case BACK_AND_FORTH -> DrivingPattern.BACK_AND_FORTH;
                case ROUND_AND_ROUND -> DrivingPattern.ROUND_AND_ROUND;
                default ->
                    throw new TypeConversionException(
                            "\"" + word + "\"; allowed is " + BACK_AND_FORTH + " or " + ROUND_AND_ROUND);
            };
        }

        static String word(DrivingPattern driving) {
            return driving == DrivingPattern.ROUND_AND_ROUND ? ROUND_AND_ROUND : BACK_AND_FORTH;
        }
    }
}
