package org.evenfall.setup;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.evenfall.finding.Arg;
import org.evenfall.finding.Finding;
import org.evenfall.finding.Step;
import org.evenfall.granule.ProductForm;
import org.evenfall.granule.Sieves;
import org.evenfall.granule.SizeDistribution;
import org.evenfall.reference.TestedProduct;
import org.evenfall.setup.entry.TestedProductEntry;
import org.evenfall.setup.entry.TodayEvenness;
import org.evenfall.setup.path.EntryPath;
import org.evenfall.setup.path.MatchPaths;
import org.evenfall.setup.path.StartPaths;
import org.evenfall.setup.path.TodayPaths;
import org.jspecify.annotations.Nullable;

/** Step 2: the tested products of the library that can be used. */
final class LibraryAssessor {

    private final ReadSetup read;
    private final List<Finding> findings = new ArrayList<>();

    private LibraryAssessor(ReadSetup read) {
        this.read = read;
    }

    static Assessed<List<TestedProduct>> assess(ReadSetup read) {
        LibraryAssessor assessor = new LibraryAssessor(read);
        return new Assessed<>(assessor.products(), assessor.findings);
    }

    private List<TestedProduct> products() {
        List<TestedProduct> products = new ArrayList<>();
        Set<String> ids = new HashSet<>(Set.of(TestedProduct.TODAY_ID));
        for (int i = 0; i < read.get(MatchPaths.LIBRARY).size(); i++) {
            EntryPath<TestedProductEntry> at = MatchPaths.LIBRARY.item(i);
            TestedProductEntry entry = at.get(read.setup());
            if (entry.id().isBlank() || !ids.add(entry.id())) {
                findings.add(Finding.stop(Step.MATCH, "match.idTwice", Arg.text(entry.id()))
                        .at(MatchPaths.TESTED_ID.at(at).pointer()));
                continue;
            }
            TestedProduct product = product(entry, at);
            if (product != null) {
                products.add(product);
            }
        }
        TestedProduct today = today();
        if (today != null) {
            products.add(today);
        }
        return products;
    }

    /**
     * Today's settings with the product spread so far, at the tramline width; what was not measured of that product is
     * assumed by its kind. Null while the kind or the width is not known.
     */
    private @Nullable TestedProduct today() {
        ProductForm form = read.get(TodayPaths.FORM);
        Double widthM = read.number(StartPaths.TRAMLINE_WIDTH);
        if (form == ProductForm.UNANSWERED || widthM == null) {
            return null;
        }
        findings.add(Finding.note(Step.MATCH, "match.todayAssumed")
                .at(TodayPaths.FORM.pointer())
                .from("source.today"));
        boolean tested = read.get(TodayPaths.EVENNESS) == TodayEvenness.TESTED;
        return new TestedProduct(
                TestedProduct.TODAY_ID,
                "",
                form,
                widthM,
                read.number(TodayPaths.BULK_DENSITY),
                null,
                tested ? read.number(TodayPaths.TESTED_CV) : null);
    }

    /** Null with a finding when width, or density and sizes both, are not known. */
    private @Nullable TestedProduct product(TestedProductEntry entry, EntryPath<TestedProductEntry> at) {
        Double widthM = read.number(MatchPaths.TESTED_WIDTH, at);
        Double density = read.number(MatchPaths.TESTED_BULK_DENSITY, at);
        SizeDistribution sizes = sizes(at);
        if (widthM == null || (density == null && sizes == null)) {
            findings.add(Finding.warn(Step.MATCH, "match.referenceOpen", Arg.text(entry.name()))
                    .at(at.pointer()));
            return null;
        }
        return new TestedProduct(
                entry.id(),
                entry.name(),
                entry.form(),
                widthM,
                density,
                sizes,
                read.number(MatchPaths.TESTED_TESTED_CV, at));
    }

    private @Nullable SizeDistribution sizes(EntryPath<TestedProductEntry> at) {
        SieveClasses classes = new SieveClasses(read, findings);
        List<Double> apertures = classes.apertures(MatchPaths.TESTED_APERTURES.at(at));
        if (apertures != null) {
            List<Double> shares = classes.sample(
                    MatchPaths.TESTED_SHARES.at(at),
                    apertures.size() + 1,
                    MatchPaths.TESTED_SHARES.range(read.setup()));
            if (shares != null) {
                return Sieves.analyse(apertures, List.of(shares)).distribution();
            }
        }
        Double d50 = read.number(MatchPaths.TESTED_D50, at);
        return d50 == null ? null : SizeDistribution.medianOnly(d50);
    }
}
