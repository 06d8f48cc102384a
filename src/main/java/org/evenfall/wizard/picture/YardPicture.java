package org.evenfall.wizard.picture;

import java.util.List;
import org.evenfall.finding.Arg;
import org.evenfall.finding.Sentences;
import org.evenfall.machine.VaneCheck;
import org.evenfall.machine.YardResult;
import org.evenfall.quantity.Unit;
import org.jspecify.annotations.Nullable;

/** The machine from behind: level, two discs with their vanes, the shaft. */
public final class YardPicture extends Picture {

    private final Sentences words;
    private @Nullable YardResult result;

    public YardPicture(Sentences words) {
        this.words = words;
    }

    public void show(YardResult shown) {
        result = shown;
        changed();
    }

    @Override
    protected void draw(double width, double height) {
        if (result == null) {
            return;
        }
        double middle = width / 2;
        double half = Math.min(width / 2 - 2 * em(), 13 * em());
        double level = result.levelDifferenceM() == null ? 0 : result.levelDifferenceM();
        // out of level is drawn ten times as large as it is
        double lean = Math.max(-2 * em(), Math.min(2 * em(), level * 10 * 6 * em()));
        double base = Math.min(height * 0.5, 15 * em());
        polygon(
                "p-paper p-outline",
                middle - 0.8 * half,
                2.5 * em() - lean / 2,
                middle + 0.8 * half,
                2.5 * em() + lean / 2,
                middle + 0.35 * half,
                base - 1.2 * em() + lean / 4,
                middle - 0.35 * half,
                base - 1.2 * em() - lean / 4);
        line(middle - half, base - lean / 2, middle + half, base + lean / 2, "p-ink-line");
        text(
                middle,
                1.2 * em(),
                At.MIDDLE,
                "p-bold",
                result.levelDifferenceM() == null
                        ? words.text("picture.levelOpen")
                        : words.text("picture.level", Arg.number(100 * Math.abs(level), 1, Unit.CM)));
        disc(middle - half / 2, base + 4.6 * em(), true);
        disc(middle + half / 2, base + 4.6 * em(), false);
        text(middle - half / 2, base + 9.2 * em(), At.MIDDLE, "", words.text("picture.leftDisc"));
        text(middle + half / 2, base + 9.2 * em(), At.MIDDLE, "", words.text("picture.rightDisc"));
        double y = base + 11.2 * em();
        if (result.ptoRpm() != null) {
            text(
                    middle,
                    y,
                    At.MIDDLE,
                    "p-bold",
                    words.text(
                            "picture.pto",
                            Arg.number(result.ptoRpm(), 0, Unit.RPM),
                            Arg.number(result.discRpm() == null ? 0 : result.discRpm(), 0, Unit.RPM)));
        }
        text(
                middle,
                y + 1.8 * em(),
                At.MIDDLE,
                "p-soft",
                words.text(
                        "picture.parts",
                        Arg.count(result.failed().size()),
                        Arg.count(result.unanswered().size())));
    }

    /** A disc from above with its vanes; a failed vane is dashed. */
    private void disc(double x, double y, boolean left) {
        double radius = 3.6 * em();
        dot(x, y, radius, "p-paper p-outline");
        dot(x, y, 0.4 * em(), "p-ink");
        double angle = -0.7;
        for (VaneCheck vane : result == null ? List.<VaneCheck>of() : result.vanes()) {
            if (vane.side().name().equals(left ? "LEFT" : "RIGHT")) {
                line(
                        x + 0.7 * em() * Math.cos(angle),
                        y + 0.7 * em() * Math.sin(angle),
                        x + radius * Math.cos(angle),
                        y + radius * Math.sin(angle),
                        vane.failed() ? "p-stop-line" : "p-accent-line");
                angle += Math.PI;
            }
        }
    }
}
