package org.evenfall.wizard.picture;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.image.BufferedImage;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.ResourceBundle;
import java.util.stream.Collectors;
import javafx.scene.canvas.Canvas;
import javafx.scene.paint.Color;
import javafx.scene.text.Font;
import javafx.scene.text.TextAlignment;
import javax.imageio.ImageIO;
import org.evenfall.finding.Sentences;
import org.evenfall.flight.DrivingPattern;
import org.evenfall.machine.Side;
import org.evenfall.trays.WindLimits;
import org.evenfall.wizard.picture.GuideSamples.Sample;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The pictures of step 6: no text cut, outside or over another one, at every size; what they write. */
class TrayTestPicturesTest {

    private static final Path OUT = Path.of("target", "tour", "pictures", "step6");
    private static final Sentences WORDS =
            new Sentences(ResourceBundle.getBundle("org.evenfall.words", Locale.ENGLISH), Locale.ENGLISH);

    /** Width and height, px, and the size of the text: a small window, large type, a hall, a large screen. */
    private static final double[][] SIZES = {
        {360, 420, 15},
        {360, 560, 15},
        {420, 520, 22},
        {560, 640, 15},
        {512, 560, 31},
        {600, 540, 32},
        {768, 860, 47},
        {1500, 1900, 32},
        {1500, 1900, 94}
    };

    @BeforeAll
    static void start() throws Exception {
        PictureGalleryTest.start();
        Files.createDirectories(OUT);
    }

    static List<Sample> samples() {
        return TrayTestSamples.all(WORDS);
    }

    @ParameterizedTest
    @MethodSource("samples")
    void noTextIsCutOrOverAnother(Sample sample) throws Exception {
        List<String> faults = new ArrayList<>();
        for (double[] size : SIZES) {
            for (int i = 0; i < sample.data().size(); i++) {
                String where = sample + " " + i + " at " + Arrays.toString(size) + ": ";
                RecordingBrush brush = drawn(sample.data().get(i).get(), size);
                assertThat(brush.written()).as(where).isNotEmpty();
                brush.faults(size[0], size[1]).forEach(fault -> faults.add(where + fault));
            }
        }
        assertThat(faults).isEmpty();
    }

    /** The check itself finds what is wrong. */
    @Test
    void whatIsWrongIsFound() throws Exception {
        RecordingBrush brush = brush(15);
        brush.text("one", 50, 50, brush.body(), TextAlignment.CENTER);
        brush.text("two", 52, 52, brush.body(), TextAlignment.CENTER);
        brush.text("beyond", 95, 90, brush.body(), TextAlignment.LEFT);
        brush.within("far too long for so little room", 5, 20, brush.body(), TextAlignment.LEFT, 5, 60);
        brush.text("picture.no.such", 2, 70, brush.note(), TextAlignment.LEFT);
        assertThat(brush.faults(100, 100))
                .hasSize(4)
                .anyMatch(fault -> fault.startsWith("one over the other: two / one"))
                .anyMatch(fault -> fault.startsWith("outside: beyond"))
                .anyMatch(fault -> fault.startsWith("cut: far too long"))
                .anyMatch(fault -> fault.startsWith("a raw key"));
    }

    /** At a usual size every tray has its distance, seven or thirteen. */
    @Test
    void everyTrayIsPaced() throws Exception {
        PacingPicture picture = new PacingPicture(WORDS);
        picture.show(TrayTestSamples.plan(36, 13, DrivingPattern.BACK_AND_FORTH), 36.0);
        List<String> texts = texts(picture, new double[] {360, 420, 15});
        for (double place :
                TrayTestSamples.plan(36, 13, DrivingPattern.BACK_AND_FORTH).positionsM()) {
            if (place != 0) {
                String distance =
                        WORDS.number(Math.abs(place), TrayPlaces.decimals(place), org.evenfall.quantity.Unit.M);
                assertThat(texts).filteredOn(distance::equals).hasSize(2);
            }
        }
        assertThat(texts).contains("36\u00a0m between tramlines", "pass 1", "pass 2", "pass 3");
        picture.show(null, 28.0);
        assertThat(texts(picture, new double[] {360, 420, 15})).contains("28\u00a0m between tramlines");
    }

    @Test
    void windIsInWordsOfItsLimits() throws Exception {
        PassArrowsPicture picture = new PassArrowsPicture(WORDS);
        for (Map.Entry<Double, String> wind : Map.of(
                        2.0, "calm enough", 2.1, "with or against", 3.1, "better wait", 4.1, "too strong")
                .entrySet()) {
            picture.show(null, 28.0, DrivingPattern.BACK_AND_FORTH, wind.getKey(), WindLimits.USUAL);
            assertThat(written(picture, 560, 640)).contains(wind.getValue()).contains("Strength only", "50\u00a0m off");
        }
        picture.show(null, 28.0, DrivingPattern.BACK_AND_FORTH, 4.1, new WindLimits(5, 6, 7));
        assertThat(written(picture, 560, 640)).contains("calm enough");
        picture.show(null, 28.0, DrivingPattern.ROUND_AND_ROUND, null, WindLimits.USUAL);
        assertThat(written(picture, 560, 640)).contains("not measured yet", "every pass the same way");
    }

    @Test
    void theMeanIsThereFromThreeCatchesOn() throws Exception {
        CatchBarsPicture picture = new CatchBarsPicture(WORDS);
        List<Double> places = List.of(-9.0, -4.5, 0.0, 4.5, 9.0);
        picture.show(places, Arrays.asList(12.0, 14.0, null, null, null), "g", 2);
        assertThat(written(picture, 560, 640))
                .contains("2 of 5 typed", "tray 3")
                .doesNotContain("mean");
        picture.show(places, Arrays.asList(12.0, 14.0, 19.0, null, null), "g", 3);
        assertThat(written(picture, 560, 640))
                .contains("3 of 5 typed, mean 15.0\u00a0g", "tray 4", "+10\u00a0%", "+15\u00a0%", "12", "14", "19");
    }

    @Test
    void theVerdictShowsLastEarlierAndExpected() throws Exception {
        VerdictPicture picture = new VerdictPicture(WORDS);
        picture.show(
                List.of(
                        Samples.test(0, 28, 11.2, 14.9, 19.4, 25.6, 20.3, 14.2, 11.9),
                        Samples.test(1, 28, 14.5, 16.2, 18.8, 20.9, 19.1, 16.4, 14.8)),
                new org.evenfall.trays.ExpectedCv(9, new org.evenfall.quantity.Interval(4, 16)));
        assertThat(written(picture, 560, 640))
                .contains("after the move: about 9\u00a0% (4 to 16\u00a0%)", "test 2:", "test 1:", "do not spread");
        assertThat(picture.getAccessibleText()).contains("Field CV about");
    }

    @Test
    void switchingShowsWhereTheDiscsAre() throws Exception {
        SwitchingPicture picture = new SwitchingPicture(WORDS);
        picture.show(18.0, -2.5, 28.0, Side.LEFT);
        assertThat(written(picture, 560, 640))
                .contains("open 18\u00a0m into the field", "close 2.5\u00a0m toward the edge", "border device: left");
        picture.show(null, 7.0, 28.0, Side.UNANSWERED);
        assertThat(written(picture, 560, 640)).contains("open: ?\u00a0m", "close 7\u00a0m into", "which side?");
    }

    /** To be looked at. */
    @ParameterizedTest
    @MethodSource("samples")
    void pictures(Sample sample) throws Exception {
        for (Map.Entry<String, String> theme : Map.of(
                        "light", PictureGalleryTest.LIGHT, "dark", PictureGalleryTest.DARK)
                .entrySet()) {
            for (double[] size : new double[][] {{360, 420, 15}, {512, 560, 22}, {1500, 1900, 47}}) {
                List<PictureGalleryTest.Variant> all = sample.data().stream()
                        .map(data -> new PictureGalleryTest.Variant(
                                data.get(), size[0] / size[2], size[1] / size[2], size[2]))
                        .toList();
                List<PictureGalleryTest.Variant> shown = size[0] < 1000 ? all : all.subList(2, 4);
                BufferedImage image = PictureGalleryTest.onFx(() -> PictureGalleryTest.sheet(theme.getValue(), shown));
                assertThat(image.getWidth()).isGreaterThanOrEqualTo((int) size[0]);
                Path file = OUT.resolve(sample + "-" + (int) size[0] + "-" + theme.getKey() + ".png");
                assertThat(ImageIO.write(image, "png", file.toFile())).isTrue();
            }
        }
    }

    private static String written(Picture picture, double width, double height) throws Exception {
        return String.join(" ", texts(picture, new double[] {width, height, 15}));
    }

    private static List<String> texts(Picture picture, double[] size) throws Exception {
        return drawn(picture, size).written().stream()
                .map(RecordingBrush.Written::text)
                .collect(Collectors.toList());
    }

    private static RecordingBrush drawn(Picture picture, double[] size) throws Exception {
        RecordingBrush brush = brush(size[2]);
        picture.draw(brush, size[0], size[1]);
        return brush;
    }

    private static RecordingBrush brush(double fontPx) throws Exception {
        return PictureGalleryTest.onFx(() -> new RecordingBrush(
                new Canvas(100, 100).getGraphicsContext2D(),
                new Palette(
                        Color.WHITE,
                        Color.BLACK,
                        Color.GRAY,
                        Color.SILVER,
                        Color.BLUE,
                        Color.BROWN,
                        Color.GREEN,
                        Color.ORANGE,
                        Color.RED),
                Font.font("Atkinson Hyperlegible Next", fontPx)));
    }
}
