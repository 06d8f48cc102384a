package org.evenfall.card;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.image.BufferedImage;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import javax.imageio.ImageIO;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.evenfall.card.DrawnCards.Letters;
import org.evenfall.machine.FactorRule;
import org.evenfall.machine.RateSetting;
import org.evenfall.machine.Side;
import org.evenfall.page.PagePicture;
import org.evenfall.quantity.EnteredQuantity;
import org.evenfall.setup.entry.BucketEntry;
import org.evenfall.setup.entry.CardLanguage;
import org.evenfall.setup.entry.Paper;
import org.evenfall.setup.entry.Setup;
import org.evenfall.setup.entry.YesNo;
import org.evenfall.store.SetupJson;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * A card is one sheet: at most two pages, on every paper and in every language, for both demos and for the demo with all that
 * a card may hold. With -Dpictures=true the pages are
 * also written as pictures, to look at.
 */
class CardPagesTest {

    private static final Path PICTURES = Path.of("target", "tour", "cards");

    private static Setup demo(String name) throws Exception {
        return new SetupJson().read(Files.readString(Path.of("demo", name + ".json")), name);
    }

    /** Treated with a named inhibitor, a use-by date, a border device with its side, both distances, one toward the edge. */
    private static Setup full(Setup setup) {
        return setup.withProduct(setup.product()
                        .withTreated(YesNo.YES)
                        .withInhibitor("invented inhibitor K")
                        .withUseBy("2028-10-31"))
                .withTrays(setup.trays()
                        .withBorderDevice("border flap, position 2")
                        .withBorderSide(Side.RIGHT)
                        .withSwitchOn(EnteredQuantity.parse("12.5 m"))
                        .withSwitchOff(EnteredQuantity.parse("-7.5 m")));
    }

    private static Setup without(Setup setup) {
        return setup.withProduct(
                setup.product().withTreated(YesNo.NO).withInhibitor("").withUseBy(""));
    }

    /** With engine speed, gear, a tilt, a rate per acre and two remarks as well. */
    private static Setup fullest() throws Exception {
        String demo =
                Files.readString(Path.of("demo", "setup.json")).replace("\"tilt\": \"0 °\"", "\"tilt\": \"1.5 °\"");
        Setup setup = full(new SetupJson().read(demo, "demo"));
        return setup.withMachineCheck(setup.machineCheck()
                        .withEngineSpeed(EnteredQuantity.parse("1650 rpm"))
                        .withGear("4"))
                .withStart(setup.start().withField("Long Reach, upper and lower part"))
                .withCard(setup.card().withRemarks("Keep to the lower gate while the upper one is wet."));
    }

    /** A setup that is not finished: no tray test, no bucket test, nobody signs. */
    private static Setup unfinished() throws Exception {
        Setup setup = without(demo("setup"));
        return setup.withTrays(setup.trays().withTests(List.of()))
                .withRate(setup.rate().withBucketTests(List.of()))
                .withProduct(setup.product().withDelivery("").withBlend(YesNo.YES))
                .withCard(setup.card().withSignedBy("").withMeasuredBy(""));
    }

    private static Setup factor(RateSetting setting) throws Exception {
        Setup setup = full(demo("setup"));
        return setup.withMachine(setup.machine().withRateSetting(setting).withFactorRule(FactorRule.SHOWN_OVER_CAUGHT));
    }

    /** Too wide for the product: a one-page finding. */
    private static Setup finding() throws Exception {
        Setup setup = demo("setup");
        return setup.withStart(setup.start().withTramlineWidth(EnteredQuantity.parse("54 m")))
                .withMatch(setup.match().withTrayTestOnly(YesNo.NO));
    }

    /** The second revision: rate checked again, the tray test holds. */
    private static Setup revised(Setup setup) throws Exception {
        List<BucketEntry> buckets = new ArrayList<>(setup.rate().bucketTests());
        buckets.add(buckets.get(2).withDate("2027-04-24"));
        return setup.withRate(setup.rate().withBucketTests(buckets))
                .withCard(setup.card()
                        .withRevision(2)
                        .withPreviousDate("2027-03-18")
                        .withDate("2027-04-24"));
    }

    static Stream<Arguments> cards() throws Exception {
        List<Setup> setups = List.of(
                demo("setup"),
                demo("uneven"),
                full(demo("setup")),
                full(demo("uneven")),
                without(full(demo("setup"))),
                fullest(),
                unfinished(),
                factor(RateSetting.WEIGHING),
                finding(),
                revised(demo("setup")),
                revised(fullest()));
        List<String> names = List.of(
                "demo",
                "uneven",
                "demo-full",
                "uneven-full",
                "demo-untreated",
                "fullest",
                "unfinished",
                "factor",
                "finding",
                "demo-revised",
                "fullest-revised");
        return Stream.of(Paper.values())
                .flatMap(paper -> Stream.of(CardLanguage.EN, CardLanguage.DE, CardLanguage.FR)
                        .flatMap(language -> Stream.iterate(0, i -> i < setups.size(), i -> i + 1)
                                .map(i -> Arguments.of(names.get(i), paper, language, setups.get(i)))));
    }

    @ParameterizedTest(name = "{0} {1} {2}")
    @MethodSource("cards")
    void isAtMostTwoPages(String name, Paper paper, CardLanguage language, Setup setup) throws Exception {
        CardContent content =
                CardSamples.of(setup.withCard(setup.card().withPaper(paper).withLanguage(language)), CardSamples.CODE);
        byte[] pdf = CardPdf.draw(content, CardSamples.WHEN);
        if (Boolean.getBoolean("pictures")) {
            pictures(String.join("-", name, paper.name(), language.name()), PagePicture.render(pdf, 100));
        }
        try (PDDocument document = Loader.loadPDF(pdf)) {
            assertThat(document.getNumberOfPages())
                    .isLessThanOrEqualTo(content.sheet().findingOnly() ? 1 : 2);
        }
        Letters letters = Letters.of(pdf);
        assertThat(letters.outside()).isEmpty();
        assertThat(letters.overlaps()).isEmpty();
        assertThat(letters.smallest()).isGreaterThanOrEqualTo(9f);
        for (CardContent.Figure figure : content.figures()) {
            assertThat(letters.large()).contains(Letters.withoutBlanks(figure.value()));
        }
        Stream.of(
                        content.stops().lines(),
                        content.cautions().lines(),
                        content.signature(),
                        content.warnings(),
                        content.proof().lines())
                .flatMap(List::stream)
                .forEach(line -> assertThat(letters.text()).contains(Letters.withoutBlanks(line)));
        assertThat(content.day().lines()).hasSize(content.sheet().findingOnly() ? 0 : 6);
        boolean elsewhere =
                letters.text().contains(Letters.withoutBlanks(content.day().elsewhere()));
        assertThat(elsewhere)
                .as("only the cards in A5 with many warnings or all that may be on them have no room for the day")
                .isIn(
                        false,
                        (name.startsWith("uneven") || name.startsWith("fullest"))
                                && paper.name().startsWith("A5"));
        if (!elsewhere) {
            content.day().lines().forEach(line -> assertThat(letters.text()).contains(Letters.withoutBlanks(line)));
        }
    }

    private static void pictures(String name, List<BufferedImage> pages) throws Exception {
        Files.createDirectories(PICTURES);
        for (int i = 0; i < pages.size(); i++) {
            String file = (name + "-" + (i + 1)).toLowerCase(Locale.ROOT) + ".png";
            ImageIO.write(pages.get(i), "png", PICTURES.resolve(file).toFile());
        }
    }
}
