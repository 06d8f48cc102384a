package org.evenfall.wizard.picture;

import javafx.scene.text.TextAlignment;
import org.evenfall.finding.Sentences;
import org.evenfall.setup.entry.YesNo;

/** A granule with or without a coat, and a sheet of a calendar with the day until which the inhibitor works. */
public final class TreatedPicture extends Picture {

    /** Height of the sheet of the calendar, em. */
    private static final double SHEET_EM = 4.6;

    private YesNo treated = YesNo.UNANSWERED;
    private String inhibitor = "";
    private String useBy = "";

    /** Begins with nothing to show. */
    public TreatedPicture(Sentences words) {
        super(words, 0.95);
        show(YesNo.UNANSWERED, "", "");
    }

    /**
     * Draws this.
     *
     * @param answer whether it is treated
     * @param name name of the inhibitor as typed
     * @param day use-by date as typed
     */
    public void show(YesNo answer, String name, String day) {
        treated = answer;
        inhibitor = name.strip();
        useBy = day.strip();
        redraw(sentence()
                + (treated == YesNo.YES
                        ? " " + coat() + ". " + words.text("picture.treated.useBy") + " " + day()
                        : ""));
    }

    private String sentence() {
        return words.text(
                switch (treated) {
                    case UNANSWERED -> "picture.treated.empty";
                    case YES -> "picture.treated.yes";
                    case NO -> "picture.treated.no";
                });
    }

    private String coat() {
        return switch (treated) {
            case YES -> inhibitor.isEmpty() ? words.text("picture.treated.coat") : inhibitor;
            case NO -> words.text("picture.treated.bare");
            case UNANSWERED -> words.text("picture.treated.question");
        };
    }

    private String day() {
        return useBy.isEmpty() ? words.text("picture.treated.onTheBag") : useBy;
    }

    @Override
    void draw(Brush brush, double width, double full) {
        double em = brush.em();
        Palette palette = brush.palette();
        double height = new Caption(sentence()).draw(brush, width, full);
        boolean calendar = treated != YesNo.NO;
        double x = width / 2;
        Lettering bold = brush.body().heavy().in(treated == YesNo.YES ? palette.accent() : palette.ink());
        double text = brush.wrapped(coat(), width - 2 * em, bold, 2).size() * bold.lineEm() * em + 0.5 * em;
        double sheet = calendar ? SHEET_EM * em + 1.6 * em : 0;
        double radius = Math.max(em, Math.min(Math.min(4.5 * em, 0.2 * width), (height - text - sheet - em) / 2));
        double top = Math.max(0, (height - 2 * radius - text - sheet) / 2);
        double y = top + radius;
        brush.oval(x, y, 0.84 * radius, 0.84 * radius, Palette.faint(palette.straw(), 0.28));
        brush.ring(x, y, 0.84 * radius, 0.84 * radius, palette.straw(), 1.5);
        if (treated == YesNo.YES) {
            brush.ring(x, y, 0.95 * radius, 0.95 * radius, palette.accent(), 5);
        } else if (treated == YesNo.UNANSWERED) {
            ringOfDashes(brush, x, y, 0.95 * radius);
        }
        lines(brush, coat(), x, y + radius + 1.1 * em, width - 2 * em, bold);
        if (calendar) {
            calendar(brush, x, y + radius + text + 1.4 * em, Math.min(13 * em, width - 2 * em), SHEET_EM * em);
        }
    }

    private static void ringOfDashes(Brush brush, double x, double y, double radius) {
        int dashes = 24;
        for (int i = 0; i < dashes; i++) {
            double from = 2 * Math.PI * i / dashes;
            double to = from + Math.PI / dashes;
            brush.line(
                    x + radius * Math.cos(from),
                    y + radius * Math.sin(from),
                    x + radius * Math.cos(to),
                    y + radius * Math.sin(to),
                    brush.palette().accent(),
                    2);
        }
    }

    /** The sheet of a calendar. */
    private void calendar(Brush brush, double x, double top, double wide, double high) {
        double em = brush.em();
        Palette palette = brush.palette();
        double left = x - wide / 2;
        double head = Math.min(1.9 * em, 0.45 * high);
        brush.box(left, top, wide, head, Palette.faint(palette.accent(), 0.14));
        brush.frame(left, top, wide, high, palette.ink(), 1.5);
        for (double ring : new double[] {0.25, 0.75}) {
            brush.line(left + ring * wide, top - 0.4 * em, left + ring * wide, top + 0.25 * em, palette.ink(), 3);
        }
        brush.text(words.text("picture.treated.useBy"), x, top + head / 2, brush.body(), TextAlignment.CENTER);
        double room = wide - 0.8 * em;
        double middle = top + head + (high - head) / 2;
        if (brush.width(day(), brush.lead()) < room) {
            brush.text(day(), x, middle, useBy.isEmpty() ? brush.body() : brush.lead(), TextAlignment.CENTER);
        } else {
            lines(brush, day(), x, middle - 0.6 * em, room, brush.body());
        }
    }

    /** At most two lines, the first with its middle at y. */
    private static void lines(Brush brush, String text, double x, double y, double wide, Lettering lettering) {
        double line = y;
        for (String part : brush.wrapped(text, wide, lettering, 2)) {
            brush.text(part, x, line, lettering, TextAlignment.CENTER);
            line += lettering.lineEm() * brush.em();
        }
    }
}
