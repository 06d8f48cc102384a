package org.evenfall.result;

import java.util.ArrayList;
import java.util.List;
import org.evenfall.finding.Sentences;
import org.evenfall.machine.RateSetting;
import org.evenfall.rate.BucketResult;
import org.evenfall.setup.Assessment;
import org.evenfall.setup.RateResult;

/** Step 5: the plan, its cost, the speed, the bucket, the hopper. */
final class RateParts {

    private RateParts() {}

    static List<ResultPart> parts(Assessment assessment, Sentences words) {
        RateResult rate = assessment.rate();
        return List.of(
                ResultPart.of(RatePlanLines.figures(words, rate.plan())),
                ResultPart.inline(words.text("rate.seasonShort"), RatePlanLines.season(words, rate.nitrogenSplits())),
                ResultPart.of(against(rate, words)),
                ResultPart.inline(words.text("rate.money"), RatePlanLines.money(words, rate.plan())),
                ResultPart.inline(words.text("rate.speedTitle"), RateCheckLines.speed(words, rate.speed())),
                ResultPart.inline(words.text("rate.bucketTitle"), RateCheckLines.expected(words, rate)),
                ResultPart.of(tests(assessment, words)),
                ResultPart.inline(words.text("rate.hopperTitle"), RateCheckLines.hopper(words, rate.hopper())));
    }

    private static List<ResultLine> against(RateResult rate, Sentences words) {
        List<ResultLine> lines = new ArrayList<>();
        ResultLine.addSentence(lines, RatePlanLines.against(words, rate.againstOther()));
        return lines;
    }

    private static List<ResultLine> tests(Assessment assessment, Sentences words) {
        RateResult rate = assessment.rate();
        RateSetting setting = assessment.machine().rateSetting();
        List<ResultLine> lines = new ArrayList<>();
        int number = 0;
        for (BucketResult test : rate.bucketTests()) {
            number++;
            ResultLine.addSentence(lines, RateCheckLines.attempt(words, number, test, setting));
        }
        ResultLine.addSentence(lines, RateCheckLines.nextOpening(words, rate.lastBucket(), setting));
        return lines;
    }
}
