package org.evenfall.setup;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.evenfall.finding.Arg;
import org.evenfall.finding.Finding;
import org.evenfall.finding.Step;
import org.evenfall.machine.Lever;
import org.evenfall.quantity.EnteredQuantity;
import org.evenfall.quantity.Unit;
import org.evenfall.reference.MatchResult;
import org.evenfall.reference.TestedProduct;
import org.evenfall.setup.entry.SettingsEntries;
import org.evenfall.setup.entry.Setup;
import org.evenfall.setup.path.MatchPaths;
import org.evenfall.setup.path.TodayPaths;

/**
 * Where to set the levers where no tested product can be taken over: today's settings, else the middle of each scale; the
 * first lever whose direction is known is moved by as many steps as the landing model turns the fans. A first guess, as a
 * step of a lever is not known before it is tested.
 */
public final class FirstGuess {

    /** Source that every finding of the first guess names. */
    public static final String SOURCE = "source.firstGuess";

    private FirstGuess() {}

    /**
     * One lever.
     *
     * @param label the owner's label
     * @param setting where to set it
     * @param steps how many steps towards wider (positive) or narrower it was moved
     */
    public record LeverStart(String label, double setting, int steps) {}

    /**
     * Whether there is a use for it: no tested product of the library is chosen, and no lever is typed.
     *
     * @param chosenKnown whether what is chosen is there
     */
    static boolean isWanted(ReadSetup read, boolean chosenKnown) {
        boolean takesOver = chosenKnown && !read.get(MatchPaths.CHOSEN).equals(TestedProduct.TODAY_ID);
        return !takesOver
                && MatchPaths.SETTINGS.only().get(read.setup()).levers().values().stream()
                        .allMatch(EnteredQuantity::isBlank);
    }

    /**
     * The setup with the first guess as the settings to start from; PTO speed, height and tilt as today. What is typed
     * already stays.
     *
     * @param assessment assessment of the setup
     * @param numbers writes the numbers
     */
    public static Setup filledIn(Setup setup, Assessment assessment, NumberWriter numbers) {
        if (assessment.match() == null) {
            return setup;
        }
        ReadSettings read = SettingsAssessor.assess(assessment.read(), TodayPaths.SETTINGS.only(), assessment.machine())
                .present();
        SettingsEntries typed = setup.match().settings();
        SettingsEntries today = setup.match().today().settings();
        Map<String, EnteredQuantity> settings = new LinkedHashMap<>(typed.levers());
        for (LeverStart start : of(assessment.machine().levers(), read, assessment.match())) {
            settings.merge(start.label(), ExactNumber.of(start.setting(), numbers), FirstGuess::either);
        }
        return setup.withMatch(setup.match()
                .withSettings(typed.withLevers(settings)
                        .withPtoSpeed(either(typed.ptoSpeed(), today.ptoSpeed()))
                        .withHeightOverCrop(either(typed.heightOverCrop(), today.heightOverCrop()))
                        .withTilt(either(typed.tilt(), today.tilt()))));
    }

    private static EnteredQuantity either(EnteredQuantity typed, EnteredQuantity other) {
        return typed.isBlank() ? other : typed;
    }

    /**
     * Every lever.
     *
     * @param levers those of the machine
     * @param today today's settings, as far as they are typed
     */
    static List<LeverStart> of(List<Lever> levers, ReadSettings today, MatchResult match) {
        List<LeverStart> starts = new ArrayList<>();
        int steps = match.turnDeg() == null ? 0 : (int) Math.round(match.turnDeg() / Lever.USUAL_STEP_DEG);
        for (Lever lever : levers) {
            Double typed = today.levers().get(lever.label());
            double from = typed == null ? lever.moved(lever.lowest(), lever.stepsUp(lever.lowest()) / 2) : typed;
            double to = lever.moved(from, steps * lever.widerSign());
            starts.add(new LeverStart(
                    lever.label(), to, (int) Math.round((to - from) / lever.step()) * lever.widerSign()));
            steps = lever.widerSign() == 0 ? steps : 0;
        }
        return starts;
    }

    /** One note a lever. */
    static List<Finding> findings(List<LeverStart> starts) {
        return starts.stream()
                .map(start -> {
                    Arg label = Arg.text(start.label());
                    Arg setting = Arg.number(start.setting(), ExactNumber.decimals(start.setting()), Unit.NONE);
                    Finding finding = start.steps() == 0
                            ? Finding.note(Step.MATCH, "match.start.keep", label, setting)
                            : Finding.note(
                                    Step.MATCH,
                                    start.steps() > 0 ? "match.start.wider" : "match.start.narrower",
                                    label,
                                    setting,
                                    Arg.count(Math.abs(start.steps())));
                    return finding.at(MatchPaths.SETTINGS.only().pointer()).from(SOURCE);
                })
                .toList();
    }
}
