package org.evenfall.result;

import java.util.ArrayList;
import java.util.List;
import org.evenfall.finding.Arg;
import org.evenfall.finding.Sentences;
import org.evenfall.granule.BulkDensity;
import org.evenfall.granule.ProductForm;
import org.evenfall.granule.SieveReading;
import org.evenfall.granule.SieveResult;
import org.evenfall.quantity.Unit;
import org.evenfall.setup.entry.Setup;
import org.evenfall.setup.path.ProductPaths;
import org.jspecify.annotations.Nullable;

/** Step 1 in words: what is in the bag, its density, its sizes. */
public final class ProductLines {

    private ProductLines() {}

    /** Kind, delivery and nitrogen share as typed, as far as they are known. */
    public static List<ResultLine> identity(Sentences words, Setup setup) {
        List<ResultLine> lines = new ArrayList<>();
        ProductForm form = ProductPaths.FORM.get(setup);
        if (form != ProductForm.UNANSWERED) {
            lines.add(new ResultLine(words.text(ProductPaths.FORM.labelKey()), words.choice(form)));
        }
        ResultLine.addTyped(lines, words, ProductPaths.DELIVERY.labelKey(), ProductPaths.DELIVERY.get(setup));
        ResultLine.addTyped(lines, words, ProductPaths.NITROGEN.labelKey(), ProductPaths.NITROGEN.get(setup));
        return lines;
    }

    /** Bulk density in one sentence; empty without. */
    public static String density(Sentences words, @Nullable BulkDensity density) {
        return density == null
                ? ""
                : words.text(
                        "product.densityResult",
                        Arg.number(density.meanKgPerL(), 2, Unit.KG_PER_L),
                        Arg.number(density.spreadPercent(), 1, Unit.PERCENT));
    }

    /** Median and fines in one sentence, for where the sieves are typed; empty without. */
    public static String median(Sentences words, @Nullable SieveResult sieve) {
        return sieve == null
                ? ""
                : words.text(
                        "product.medianResult",
                        Arg.number(sieve.d50Mm(), 1, Unit.MM),
                        Arg.number(sieve.d50IntervalMm().low(), 1, Unit.NONE),
                        Arg.number(sieve.d50IntervalMm().high(), 1, Unit.MM),
                        Arg.number(sieve.shareUnder2MmPercent(), 0, Unit.PERCENT));
    }

    /** Median, indices and fines in one sentence, each with where it was read; empty without. */
    public static String sieve(Sentences words, @Nullable SieveResult sieve) {
        return sieve == null
                ? ""
                : words.text(
                        "product.sieveResult",
                        Arg.number(sieve.d50Mm(), 1, Unit.MM),
                        Arg.number(sieve.d50IntervalMm().low(), 1, Unit.NONE),
                        Arg.number(sieve.d50IntervalMm().high(), 1, Unit.MM),
                        Arg.number(sieve.indices().spreadIndexPercent(), 0, Unit.PERCENT),
                        Arg.number(sieve.shareUnder2MmPercent(), 0, Unit.PERCENT),
                        Arg.number(sieve.indices().sgn(), 0, Unit.NONE),
                        Arg.number(sieve.indices().uniformityIndex(), 0, Unit.NONE),
                        from(sieve.readFrom().d50Mm()),
                        from(sieve.readFrom().spreadIndexPercent()),
                        from(sieve.readFrom().uniformityIndex()),
                        from(sieve.readFrom().shareUnder2MmPercent()));
    }

    /** The words for where a figure was read. */
    public static Arg from(SieveReading reading) {
        return Arg.word(
                switch (reading) {
                    case CURVE -> "product.fromSieves";
                    case FIT -> "product.fromFit";
                });
    }
}
