package org.evenfall.setup;

import java.util.ArrayList;
import java.util.List;
import org.evenfall.finding.Finding;
import org.evenfall.finding.Step;
import org.evenfall.machine.MachineProfile;
import org.evenfall.reference.Candidate;
import org.evenfall.reference.MatchResult;
import org.evenfall.reference.ProductRanking;
import org.evenfall.reference.RankContext;
import org.evenfall.reference.TestedProduct;
import org.evenfall.setup.entry.YesNo;
import org.evenfall.setup.path.MatchPaths;
import org.evenfall.setup.path.ProductPaths;
import org.evenfall.setup.path.StartPaths;
import org.evenfall.setup.path.TodayPaths;

/** Step 2: the closest tested product. */
final class MatchAssessor {

    /** PTO speed for which the disc speed of the machine is given, rpm. */
    private static final double STANDARD_PTO_RPM = 540;

    private MatchAssessor() {}

    static Assessed<MatchResult> assess(
            ReadSetup read, MachineProfile machine, ProductResult product, AssessOptions options) {
        Assessed<List<TestedProduct>> library = LibraryAssessor.assess(read);
        List<Finding> findings = new ArrayList<>(library.findings());
        List<TestedProduct> references = library.present();
        String chosen = read.get(MatchPaths.CHOSEN);
        boolean chosenKnown =
                references.stream().anyMatch(reference -> reference.id().equals(chosen));
        if (!chosenKnown && read.get(MatchPaths.START_WITHOUT_REFERENCE) != YesNo.YES) {
            findings.add(Finding.note(Step.MATCH, references.isEmpty() ? "missing.noReference" : "missing.chosen")
                    .at(MatchPaths.CHOSEN.pointer()));
        }
        Assessed<ReadSettings> today = SettingsAssessor.assess(read, TodayPaths.SETTINGS.only(), machine);
        findings.addAll(today.findings());
        Double tramlineWidthM = read.number(StartPaths.TRAMLINE_WIDTH);
        if (product.density() == null || tramlineWidthM == null) {
            findings.add(Finding.missing(Step.MATCH, "missing.productFirst"));
            return new Assessed<>(null, findings);
        }
        MatchResult result = ProductRanking.rank(
                new Candidate(
                        read.get(ProductPaths.FORM),
                        product.density().meanKgPerL(),
                        product.density().standardErrorKgPerL(),
                        product.sizes()),
                references,
                context(machine, tramlineWidthM, chosen),
                options.seed(),
                options.redraws(),
                options.watch());
        findings.addAll(new MatchFindings(read, result, chosenKnown).all());
        if (FirstGuess.isWanted(read, chosenKnown)) {
            findings.addAll(FirstGuess.findings(FirstGuess.of(machine.levers(), today.present(), result)));
        }
        return new Assessed<>(result, findings);
    }

    private static RankContext context(MachineProfile machine, double tramlineWidthM, String chosen) {
        Double highest = machine.discSpeedAt540Rpm() == null || machine.ptoHighestRpm() == null
                ? null
                : Double.valueOf(machine.discSpeedAt540Rpm() * machine.ptoHighestRpm() / STANDARD_PTO_RPM);
        return RankContext.of(
                        tramlineWidthM,
                        machine.discRadiusM(),
                        machine.discSpeedAt540Rpm(),
                        highest,
                        machine.wantedHeightM(),
                        chosen)
                .reaching(
                        machine.workingWidthsM().stream().max(Double::compare).orElse(null),
                        machine.levers().stream().anyMatch(lever -> lever.widerSign() != 0));
    }
}
