package org.evenfall.publish;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Locale;
import java.util.ResourceBundle;
import java.util.stream.IntStream;
import org.evenfall.finding.Sentences;
import org.evenfall.quantity.EnteredQuantity;
import org.evenfall.quantity.Unit;
import org.evenfall.report.ReportContent;
import org.evenfall.setup.Assessor;
import org.evenfall.setup.entry.Setup;
import org.evenfall.setup.entry.TrayTestEntry;
import org.evenfall.store.SetupJson;

/** Reports of setups, for the tests of this room. */
final class Reports {

    static final Sentences WORDS =
            new Sentences(ResourceBundle.getBundle("org.evenfall.words", Locale.ENGLISH), Locale.UK);
    static final Instant WHEN = Instant.parse("2027-03-18T09:00:00Z");
    private static final String LONG = "A remark that goes on and on and never ends ".repeat(120);

    private Reports() {}

    /** A demo by its name, or one of the odd setups: empty, one test, wrong numbers, many trays with long texts. */
    static Setup setup(String name) throws Exception {
        return switch (name) {
            case "empty" -> Setup.EMPTY;
            case "one" -> {
                Setup demo = setup("setup");
                yield demo.withTrays(demo.trays().withTests(demo.trays().tests().subList(0, 1)));
            }
            case "wrong" -> wrong(setup("setup"));
            case "many" -> many(setup("setup"));
            default -> new SetupJson().read(Files.readString(Path.of("demo", name + ".json")), name);
        };
    }

    /** No test can be read, a bucket weighs nothing, the width is no number. */
    private static Setup wrong(Setup demo) {
        TrayTestEntry test = demo.trays().tests().get(0);
        return demo.withStart(demo.start().withTramlineWidth(new EnteredQuantity("wide", Unit.NONE)))
                .withRate(demo.rate()
                        .withBucketTests(
                                List.of(demo.rate().bucketTests().get(0).withTime(new EnteredQuantity("-1", Unit.S)))))
                .withTrays(demo.trays()
                        .withTests(List.of(test.withCatches(List.of(new EnteredQuantity("x", Unit.G))), test)));
    }

    private static Setup many(Setup demo) {
        TrayTestEntry test = demo.trays().tests().get(0);
        List<EnteredQuantity> catches =
                IntStream.range(0, 33).mapToObj(i -> test.catches().get(i % 7)).toList();
        return demo.withProduct(demo.product().withName(LONG.substring(0, 300)))
                .withTrays(demo.trays()
                        .withTrayCount(new EnteredQuantity("33", Unit.NONE))
                        .withTests(List.of(
                                test.withRemark(LONG).withCatches(catches).withPositions(List.of()))));
    }

    static ReportContent content(Setup setup) {
        return ReportContents.of(setup, Assessor.assess(setup), WORDS, LocalDateTime.ofInstant(WHEN, ZoneOffset.UTC));
    }

    static byte[] pages(Setup setup, SheetService.SheetPaper paper) throws Exception {
        return new ReportService(WORDS, Clock.fixed(WHEN, ZoneOffset.UTC)).pages(setup, Assessor.assess(setup), paper);
    }
}
