package org.evenfall.wizard.picture;

import java.util.List;
import java.util.Random;
import javafx.scene.text.TextAlignment;
import org.evenfall.finding.Arg;
import org.evenfall.finding.Sentences;
import org.evenfall.machine.HeightResult;
import org.evenfall.quantity.Unit;
import org.jspecify.annotations.Nullable;

/**
 * Machine, crop, tape and chain to one scale, seen from behind: where to hold the tape, what it should read, and how
 * far the chain hangs.
 */
public final class HeightPicture extends Picture {

    /** Width of the drawn machine and height of what is drawn over the reference point, m. Ours. */
    private static final double MACHINE_WIDE_M = 1.3;

    private static final double MACHINE_HIGH_M = 0.5;

    private @Nullable HeightResult height;
    private String referencePoint = "";

    /** Begins with nothing to show. */
    public HeightPicture(Sentences words) {
        super(words, 0.95);
        show(null, "");
    }

    /** @param point where on the machine the height is measured from, as typed */
    public void show(@Nullable HeightResult result, String point) {
        height = result;
        referencePoint = point;
        redraw(
                result == null
                        ? words.text("picture.height.empty")
                        : words.text(
                                "picture.height.spoken",
                                cm(result.overGroundM()),
                                cm(result.wantedOverCropM()),
                                cm(result.chainM())));
    }

    private static Arg cm(double metres) {
        return Arg.number(100 * metres, 0, Unit.CM);
    }

    @Override
    void draw(Brush brush, double width, double tall) {
        HeightResult result = height;
        if (result == null) {
            nothingYet(brush, width, tall, words.text("picture.height.empty"));
            return;
        }
        double em = brush.em();
        double floor = tall - 1.8 * em;
        double now = result.now().overCropM() == null
                ? 0
                : result.now().overCropM() + result.crop().meanM();
        double top = Math.max(result.overGroundM(), now) + MACHINE_HIGH_M + 0.08;
        Scale up = new Scale(0, top, floor, 1.4 * em);
        ground(brush, up, result, width);
        double half = Math.min(up.length(MACHINE_WIDE_M) / 2, width / 2 - 5.4 * em);
        double middle = width / 2 + 0.6 * em;
        machine(brush, up, result.overGroundM(), middle, Math.max(2.5 * em, half));
        tape(brush, up, result, Math.min(5.6 * em, middle - half - 0.6 * em), width);
        chain(brush, up, result, Math.max(width - 5.2 * em, middle + half * 0.4), width);
        reference(brush, up, result, middle, width);
        now(brush, up, result, middle, half, width);
        difference(brush, result, width);
    }

    private void ground(Brush brush, Scale up, HeightResult result, double width) {
        Palette palette = brush.palette();
        double em = brush.em();
        double crop = up.at(result.crop().laterM());
        if (result.crop().laterM() > 0.005) {
            // the same stalks at every redraw
            Random shape = new Random(7);
            for (double x = 0.3 * em; x < width; x += 0.55 * em) {
                double tip = up.start() - (up.start() - crop) * (0.9 + 0.1 * shape.nextDouble());
                double lean = (shape.nextDouble() - 0.5) * 0.5 * em;
                brush.line(x, up.start(), x + lean, tip, Palette.faint(palette.good(), 0.55), 1.5);
            }
            brush.dashed(0, crop, width, crop, palette.good(), 1.2);
        }
        brush.line(0, up.start(), width, up.start(), palette.ink(), 2);
        brush.within(
                words.text(
                        result.crop().laterM() > result.crop().meanM() + 0.004
                                ? "picture.height.cropLater"
                                : "picture.height.crop",
                        cm(result.crop().laterM()),
                        cm(result.crop().meanM())),
                width / 2,
                up.start() + 0.9 * em,
                brush.note().in(palette.good()),
                TextAlignment.CENTER,
                0.3 * em,
                width - 0.3 * em);
    }

    private void machine(Brush brush, Scale up, double referenceM, double middle, double half) {
        Palette palette = brush.palette();
        double base = up.at(referenceM);
        double disc = up.length(0.07);
        double hopperFoot = up.at(referenceM + 0.2);
        // never taller than it is wide, however narrow the room
        double hopperTop = Math.max(up.at(referenceM + MACHINE_HIGH_M), hopperFoot - 0.75 * half);
        for (double side : new double[] {-1, 1}) {
            double x = middle + side * 0.48 * half;
            brush.shape(
                    new double[] {
                        x - side * 0.05 * half, x + side * 0.1 * half, x + side * 0.5 * half, x - side * 0.42 * half
                    },
                    new double[] {hopperFoot, hopperFoot, hopperTop, hopperTop},
                    Palette.faint(palette.soft(), 0.22));
            brush.outline(
                    new double[] {
                        x - side * 0.05 * half, x + side * 0.1 * half, x + side * 0.5 * half, x - side * 0.42 * half
                    },
                    new double[] {hopperFoot, hopperFoot, hopperTop, hopperTop},
                    palette.soft(),
                    1.5);
            brush.box(x - 0.4 * half, base - disc / 2, 0.8 * half, disc / 2, palette.ink());
            brush.line(x, base - disc / 2, x, hopperFoot, palette.soft(), 3);
            brush.line(x - 0.34 * half, base - disc, x - 0.1 * half, base - disc, palette.ink(), 2);
            brush.line(x + 0.1 * half, base - disc, x + 0.34 * half, base - disc, palette.ink(), 2);
        }
    }

    /** The tape at the left: what is crop, what is over it, and the whole. */
    private void tape(Brush brush, Scale up, HeightResult result, double x, double width) {
        Palette palette = brush.palette();
        double em = brush.em();
        Marks marks = new Marks(brush);
        double over = up.at(result.overGroundM());
        double crop = up.at(result.crop().laterM());
        brush.dashed(x - 0.6 * em, over, width * 0.5, over, palette.accent(), 1);
        marks.upright(x, crop, over, palette.accent());
        double left = 0.3 * em;
        double y = brush.paragraph(
                words.text("picture.height.over", cm(result.wantedOverCropM())),
                x - 0.6 * em,
                (crop + over) / 2 - 1.9 * em,
                x - 0.6 * em - left,
                brush.body().heavy().in(palette.accent()),
                TextAlignment.RIGHT);
        if (y < up.start()) {
            marks.upright(x + 0.9 * em, up.start(), over, palette.ink());
            Arg whole = cm(result.overGroundM());
            String text = words.text("picture.height.ground", whole);
            boolean fits = brush.width(text, brush.body().heavy()) < width - x - 2 * em;
            brush.onPaper(
                    fits ? text : words.text("picture.height.groundShort", whole),
                    x + 1.4 * em,
                    Math.min((up.start() + crop) / 2, up.start() - 0.9 * em),
                    brush.body().heavy(),
                    TextAlignment.LEFT,
                    x + 1.4 * em,
                    width - 0.3 * em);
        }
    }

    /** The chain at the right, its last link at the top of the crop. */
    private void chain(Brush brush, Scale up, HeightResult result, double x, double width) {
        if (result.chainM() < 0.02) {
            return;
        }
        double em = brush.em();
        double tip = up.at(result.crop().laterM());
        double hook = up.at(result.crop().laterM() + result.chainM());
        double link = 0.34 * em;
        int links = (int) Math.max(1, Math.round((tip - hook) / (1.5 * link)));
        double step = (tip - hook) / links;
        for (int i = 0; i < links; i++) {
            double y = hook + (i + 0.5) * step;
            if (i % 2 == 0) {
                brush.ring(x, y, 0.5 * link, 0.62 * step, brush.palette().straw(), 1.5);
            } else {
                brush.line(x, y - 0.6 * step, x, y + 0.6 * step, brush.palette().straw(), 2.5);
            }
        }
        new Marks(brush).disc(x, hook, 0.28 * em, brush.palette().straw());
        Lettering bold = brush.body().heavy().in(brush.palette().straw());
        Lettering note = brush.note().in(brush.palette().straw());
        double room = width - x - 0.9 * em;
        String what = words.text("picture.height.chain", cm(result.chainM()));
        String how = words.text("picture.height.brushes");
        double high = em
                * (bold.lineEm() * brush.wrapped(what, room, bold).size()
                        + note.lineEm() * brush.wrapped(how, room, note).size());
        double top = Math.max(1.5 * em, Math.min((hook + tip - high) / 2, tip - high - 0.4 * em));
        double y = brush.paragraph(what, x + 0.7 * em, top, room, bold, TextAlignment.LEFT);
        brush.paragraph(how, x + 0.7 * em, y, room, note, TextAlignment.LEFT);
    }

    private void reference(Brush brush, Scale up, HeightResult result, double middle, double width) {
        double em = brush.em();
        double y = up.at(result.overGroundM());
        new Marks(brush).ring(middle, y, 0.4 * em, brush.palette().accent());
        String text = referencePoint.isBlank()
                ? words.text("picture.height.reference")
                : words.text("picture.height.referencePoint", Arg.text(referencePoint));
        double left = Math.min(7.4 * em, 0.3 * width);
        Lettering lettering = brush.note().in(brush.palette().accent());
        double wide = Math.max(6 * em, width - 6 * em - left);
        double row = 0;
        List<String> lines = brush.wrapped(text, wide, lettering);
        for (String line : lines.subList(0, Math.min(2, lines.size()))) {
            boolean cut = row > 0 && lines.size() > 2;
            String shown = cut ? brush.fitted(line + " " + lines.get(2), wide, lettering) : line;
            brush.onPaper(shown, middle, y + (1.1 + row) * em, lettering, TextAlignment.CENTER, left, width - 5.4 * em);
            row += 1.1;
        }
    }

    /** The machine at its present height, where that is not the wanted one. */
    private void now(Brush brush, Scale up, HeightResult result, double middle, double half, double width) {
        Double over = result.now().overCropM();
        Double correction = result.now().correctionM();
        if (over == null || correction == null || Math.abs(correction) < 0.005) {
            return;
        }
        double em = brush.em();
        double y = up.at(over + result.crop().meanM());
        double wanted = up.at(result.overGroundM());
        double x = middle + Math.max(half, 2.5 * em) * 0.92;
        brush.dashed(middle - half, y, middle + half, y, brush.palette().warn(), 2);
        if (Math.abs(wanted - y) > 0.7 * em) {
            new Marks(brush).arrow(x, y, x, wanted, brush.palette().warn(), 2);
        }
        String text =
                words.text(correction > 0 ? "picture.height.raise" : "picture.height.lower", cm(Math.abs(correction)));
        brush.onPaper(
                text,
                middle,
                correction > 0
                        ? Math.min(up.start() - 0.8 * em, Math.max(y + 0.9 * em, wanted + 3.6 * em))
                        : y - 0.9 * em,
                brush.body().heavy().in(brush.palette().warn()),
                TextAlignment.CENTER,
                0.3 * em,
                width - 0.3 * em);
    }

    private void difference(Brush brush, HeightResult result, double width) {
        StringBuilder text = new StringBuilder();
        Double side = result.now().leftRightM();
        if (side != null) {
            text.append(level(side, "picture.height.leftHigher", "picture.height.rightHigher", "picture.height.even"));
        }
        Double along = result.now().foreAftM();
        if (along != null) {
            text.append(text.isEmpty() ? "" : " · ")
                    .append(level(
                            along,
                            "picture.height.frontHigher",
                            "picture.height.rearHigher",
                            "picture.height.evenAlong"));
        }
        brush.within(
                text.toString(),
                width / 2,
                0.7 * brush.em(),
                brush.note().in(brush.palette().ink()),
                TextAlignment.CENTER,
                0,
                width);
    }

    private String level(double metres, String first, String second, String even) {
        if (Math.abs(metres) < 0.0005) {
            return words.text(even);
        }
        return words.text(metres > 0 ? first : second, Arg.number(100 * Math.abs(metres), 1, Unit.CM));
    }
}
