package org.evenfall.setup;

import java.util.List;
import org.evenfall.finding.Arg;
import org.evenfall.quantity.Unit;
import org.evenfall.trays.WindLimits;

/** Is today a day to spread? The same lines for the window and the card. */
public final class DayLines {

    /** Bundle key of the question. */
    public static final String TITLE = "day.title";

    /** What raises and what lowers the loss of nitrogen, and what spoils the pattern. */
    public static final List<Line> WEATHER = List.of(
            new Line("day.rain", List.of(), List.of("source.lossRain", "source.loss")),
            new Line("day.warmth", List.of(), List.of("source.loss", "source.lossTreated")),
            new Line(
                    "day.wind",
                    List.of(Arg.number(WindLimits.USUAL.stopMPerS(), 0, Unit.M_PER_S)),
                    List.of("source.wind")),
            new Line("day.soil", List.of(), List.of("source.loss")),
            new Line("day.lime", List.of(), List.of("source.lossLime")),
            new Line("day.humidity", List.of(), List.of("source.humidityUrea")));

    /** What protects water and livestock. */
    public static final List<Line> CARE =
            List.of(new Line("day.local", List.of(), List.of()), new Line("day.spills", List.of(), List.of()));

    /**
     * One line.
     *
     * @param key bundle key of its text
     * @param args arguments of the text
     * @param sources bundle keys of its sources
     */
    public record Line(String key, List<Arg> args, List<String> sources) {
        /** Copies the lists. */
        public Line {
            args = List.copyOf(args);
            sources = List.copyOf(sources);
        }
    }

    private DayLines() {}
}
