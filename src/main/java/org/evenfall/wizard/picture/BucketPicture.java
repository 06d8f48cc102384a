package org.evenfall.wizard.picture;

import java.util.List;
import org.evenfall.finding.Arg;
import org.evenfall.finding.Sentences;
import org.evenfall.quantity.Unit;
import org.evenfall.rate.BucketResult;
import org.evenfall.rate.RatePlan;
import org.evenfall.setup.RateResult;
import org.jspecify.annotations.Nullable;

/** The bucket with the level to expect, and every test against the allowed band. */
public final class BucketPicture extends Picture {

    private final Sentences words;
    private @Nullable RateResult result;

    public BucketPicture(Sentences words) {
        this.words = words;
    }

    public void show(RateResult shown) {
        result = shown;
        changed();
    }

    @Override
    protected void draw(double width, double height) {
        RatePlan plan = result == null ? null : result.plan();
        if (plan == null || plan.flowPerOutletKgPerMin() == null) {
            paragraph(em(), em(), width - 2 * em(), "p-soft", words.text("picture.noPlan"));
            return;
        }
        double split = height * 0.48;
        bucket(plan, width, split);
        if (result != null && !result.bucketTests().isEmpty()) {
            tests(result.bucketTests(), width, split + 1.5 * em(), height - em());
        }
    }

    private void bucket(RatePlan plan, double width, double bottom) {
        double seconds = plan.bucketSeconds() == null ? 30 : plan.bucketSeconds();
        double kg = plan.bucketKg() == null ? plan.bucket30Kg() == null ? 0 : plan.bucket30Kg() : plan.bucketKg();
        double x = 3 * em();
        double wide = Math.min(9 * em(), width * 0.32);
        double top = 2.5 * em();
        double base = bottom - 1.2 * em();
        double litres = plan.bucketL() == null ? plan.bucket30L() == null ? 0 : plan.bucket30L() : plan.bucketL();
        double fill = Math.min(1, litres / Math.max(25, litres));
        double level = base - fill * (base - top) * 0.92;
        double inset = 0.9 * em();
        double at = inset * (base - level) / (base - top);
        polygon(
                "p-straw-soft",
                x + inset - at,
                level,
                x + wide - inset + at,
                level,
                x + wide - inset,
                base,
                x + inset,
                base);
        curve("p-outline", x, top, x + inset, base, x + wide - inset, base, x + wide, top);
        double text = x + wide + 2 * em();
        text(text, top + 0.5 * em(), At.LEFT, "", words.text("picture.inSeconds", Arg.number(seconds, 0, Unit.S)));
        text(text, top + 2.6 * em(), At.LEFT, "p-figure", words.number(kg, 1, Unit.KG));
        if (plan.bucketLowKg() != null && plan.bucketHighKg() != null) {
            text(
                    text,
                    top + 4.9 * em(),
                    At.LEFT,
                    "p-soft",
                    words.text(
                            "picture.band",
                            Arg.number(plan.bucketLowKg(), 1, Unit.KG),
                            Arg.number(plan.bucketHighKg(), 1, Unit.KG)));
        }
        text(text, top + 6.5 * em(), At.LEFT, "p-soft", words.number(litres, 0, Unit.L));
    }

    /** Each attempt as a point at its deviation, left to right in time; the band is the tolerance. */
    private void tests(List<BucketResult> tests, double width, double top, double bottom) {
        double left = 3 * em();
        double right = width - 2 * em();
        double middle = (top + bottom) / 2;
        double reach = 6;
        for (BucketResult test : tests) {
            reach = Math.max(reach, Math.abs(deviation(test)) * 1.15);
        }
        double scale = (bottom - top - 2.4 * em()) / 2 / reach;
        double tolerance = 5 * scale;
        box(left, middle - tolerance, right - left, 2 * tolerance, "p-line-fill");
        line(left, middle, right, middle, "p-ink-line");
        text(left, top, At.LEFT, "p-soft", words.text("picture.deviation"));
        double step = (right - left) / tests.size();
        for (int i = 0; i < tests.size(); i++) {
            double x = left + (i + 0.5) * step;
            double y = middle - deviation(tests.get(i)) * scale;
            line(x, middle, x, y, "p-straw-line");
            dot(x, y, 0.35 * em(), tests.get(i).withinTolerance() ? "p-good" : "p-warn");
            String sign = deviation(tests.get(i)) > 0 ? "+" : "";
            text(
                    x,
                    y + (deviation(tests.get(i)) >= 0 ? -1 : 1) * 1.1 * em(),
                    At.MIDDLE,
                    "p-bold",
                    sign + words.number(deviation(tests.get(i)), 0, Unit.PERCENT));
        }
    }

    private static double deviation(BucketResult test) {
        return test.deviationPercent() == null ? 0 : test.deviationPercent();
    }
}
