package org.evenfall.wizard.picture;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.ResourceBundle;
import java.util.Set;
import java.util.TreeSet;
import java.util.concurrent.CompletableFuture;
import java.util.function.Supplier;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import javafx.application.Platform;
import javafx.embed.swing.SwingFXUtils;
import javafx.scene.Scene;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.Region;
import javafx.scene.layout.StackPane;
import javafx.scene.text.Font;
import javax.imageio.ImageIO;
import org.evenfall.card.CardContents;
import org.evenfall.card.CardPdf;
import org.evenfall.finding.Sentences;
import org.evenfall.page.PagePicture;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.testfx.api.FxToolkit;

/** Every picture with realistic and extreme inputs, light and dark, to be looked at in target/tour/pictures. */
class PictureGalleryTest {

    private static final Path OUT = Path.of("target", "tour", "pictures");
    static final String LIGHT = "-ev-paper:#FAF8F3;-ev-sheet:#FFFFFF;-ev-ink:#1C2326;-ev-soft:#55606A;-ev-line:#D8D4C8;"
            + "-ev-accent:#1F4E79;-ev-straw:#8A5A00;-ev-good:#0B6B53;-ev-warn:#9A4A00;-ev-stop:#9B1C31;";
    static final String DARK = "-ev-paper:#14191C;-ev-sheet:#1C2327;-ev-ink:#F2EFE6;-ev-soft:#A9B4BC;-ev-line:#3A444A;"
            + "-ev-accent:#8EC1F0;-ev-straw:#F0C06A;-ev-good:#6FD3B0;-ev-warn:#F5A65B;-ev-stop:#FF8FA0;";
    private static final ResourceBundle BUNDLE = ResourceBundle.getBundle("org.evenfall.words", Locale.ENGLISH);
    private static final Sentences WORDS = new Sentences(BUNDLE, Locale.ENGLISH);

    @BeforeAll
    static void start() throws Exception {
        FxToolkit.registerPrimaryStage();
        for (String face : List.of("400Regular", "600SemiBold", "700Bold")) {
            try (InputStream font = PictureGalleryTest.class.getResourceAsStream(
                    "/org/evenfall/fonts/AtkinsonHyperlegibleNext_" + face + ".ttf")) {
                assertThat(Font.loadFont(font, 15)).isNotNull();
            }
        }
        Files.createDirectories(OUT);
    }

    @Test
    void sieve() throws Exception {
        look("sieve", Samples.sieves(WORDS));
    }

    @Test
    void density() throws Exception {
        look("density", Samples.densities(WORDS));
    }

    @Test
    void match() throws Exception {
        look("match", Samples.matches(WORDS));
    }

    @Test
    void machineCheck() throws Exception {
        look("yard", Samples.yards(WORDS));
    }

    @Test
    void height() throws Exception {
        look("height", Samples.heights(WORDS));
    }

    @Test
    void bucket() throws Exception {
        look("bucket", Samples.buckets(WORDS));
    }

    @Test
    void trayBars() throws Exception {
        look("tray-bars", Samples.trayBars(WORDS));
    }

    @Test
    void comparisons() throws Exception {
        look("beside", Samples.comparisons(WORDS));
    }

    @Test
    void landingPattern() throws Exception {
        look("pattern", Samples.patterns(WORDS));
    }

    /** Each picture of steps 0 to 4 and 6: empty, typical and at its worst, narrow, wide and for a hall. */
    @ParameterizedTest
    @MethodSource("guide")
    void guide(GuideSamples.Sample sample) throws Exception {
        look(sample.name(), sample.variants());
    }

    static List<GuideSamples.Sample> guide() throws Exception {
        return GuideSamples.all(WORDS);
    }

    /** The same data give the same drawing, other data another one. */
    @ParameterizedTest
    @MethodSource("guide")
    void otherDataAreDrawnOtherwise(GuideSamples.Sample sample) throws Exception {
        Set<List<Integer>> drawings = new HashSet<>();
        for (Supplier<Picture> data : sample.data()) {
            List<Integer> first = drawn(data.get());
            assertThat(drawn(data.get())).isEqualTo(first);
            drawings.add(first);
        }
        assertThat(drawings).hasSameSizeAs(sample.data()).hasSizeGreaterThan(2);
    }

    private static List<Integer> drawn(Picture picture) throws Exception {
        BufferedImage image = onFx(() -> sheet(LIGHT, List.of(new Variant(picture, 20, 28, 15))));
        int[] pixels = image.getRGB(0, 0, image.getWidth(), image.getHeight(), null, 0, image.getWidth());
        return IntStream.of(pixels).boxed().toList();
    }

    @Test
    void cardPreviewIsAsWideAsItsRoom() throws Exception {
        var demo = Samples.demo();
        byte[] pdf = CardPdf.draw(
                CardContents.of(demo, Samples.assessed(demo), WORDS, ""),
                java.time.Instant.parse("2027-03-18T10:00:00Z"));
        List<BufferedImage> pages = PagePicture.render(pdf, 110);
        BufferedImage image = onFx(() -> {
            CardPreview preview = new CardPreview(WORDS, () -> {});
            preview.show(pages);
            assertThat(preview.getAccessibleText()).contains(Integer.toString(pages.size()));
            StackPane root = new StackPane(preview);
            root.setStyle("-fx-background-color:#888888");
            new Scene(root, 500, preview.prefHeight(500));
            root.layout();
            return SwingFXUtils.fromFXImage(root.getScene().snapshot(null), null);
        });
        ImageIO.write(image, "png", OUT.resolve("card.png").toFile());
        // the sheet is white right up to both edges of its room
        assertThat(image.getRGB(2, 100) & 0xFFFFFF).isEqualTo(0xFFFFFF);
        assertThat(image.getRGB(497, 100) & 0xFFFFFF).isEqualTo(0xFFFFFF);
    }

    @Test
    void everyWordIsInTheBundle() throws IOException {
        Pattern key = Pattern.compile("\"(picture\\.[A-Za-z0-9.]*[A-Za-z0-9])\"");
        TreeSet<String> missing = new TreeSet<>();
        try (Stream<Path> files = Files.walk(Path.of("src/main/java/org/evenfall/wizard/picture"))) {
            for (Path file : files.filter(Files::isRegularFile).toList()) {
                Matcher matcher = key.matcher(Files.readString(file));
                while (matcher.find()) {
                    if (!WORDS.has(matcher.group(1))) {
                        missing.add(matcher.group(1));
                    }
                }
            }
        }
        assertThat(missing).isEmpty();
    }

    /** One variant: its size in em, its text size in px. */
    record Variant(Picture picture, double wideEm, double highEm, double fontPx) {}

    private static void look(String name, Map<String, Variant> variants) throws Exception {
        Map<String, BufferedImage> sheets = new LinkedHashMap<>();
        for (Map.Entry<String, String> theme :
                Map.of("light", LIGHT, "dark", DARK).entrySet()) {
            BufferedImage sheet = onFx(() -> sheet(theme.getValue(), new ArrayList<>(variants.values())));
            ImageIO.write(
                    sheet,
                    "png",
                    OUT.resolve(name + "-" + theme.getKey() + ".png").toFile());
            sheets.put(theme.getKey(), sheet);
        }
        for (Map.Entry<String, Variant> variant : variants.entrySet()) {
            Picture picture = variant.getValue().picture();
            assertThat(picture.getAccessibleText())
                    .as(variant.getKey())
                    .isNotBlank()
                    .doesNotContain("picture.");
            BufferedImage image = onFx(() -> SwingFXUtils.fromFXImage(picture.snapshot(null, null), null));
            assertThat(colours(image))
                    .as("colours in %s %s", name, variant.getKey())
                    .isGreaterThan(2);
        }
        assertThat(sheets.get("light").getRGB(1, 1))
                .isNotEqualTo(sheets.get("dark").getRGB(1, 1));
    }

    private static int colours(BufferedImage image) {
        TreeSet<Integer> colours = new TreeSet<>();
        for (int y = 0; y < image.getHeight(); y += 2) {
            for (int x = 0; x < image.getWidth(); x += 2) {
                colours.add(image.getRGB(x, y));
            }
        }
        return colours.size();
    }

    static BufferedImage sheet(String colours, List<Variant> variants) {
        FlowPane pane = new FlowPane(16, 16);
        pane.setPrefWrapLength(1500);
        for (Variant variant : variants) {
            Picture picture = variant.picture();
            picture.setStyle("-fx-font-size:" + variant.fontPx() + "px");
            picture.setMinSize(Region.USE_PREF_SIZE, Region.USE_PREF_SIZE);
            picture.setPrefSize(variant.wideEm() * variant.fontPx(), variant.highEm() * variant.fontPx());
            pane.getChildren().add(picture);
        }
        pane.setStyle(
                colours + "-fx-font-family:'Atkinson Hyperlegible Next';-fx-background-color:-ev-line;-fx-padding:8");
        Scene scene = new Scene(pane);
        return SwingFXUtils.fromFXImage(scene.snapshot(null), null);
    }

    interface Work<T> {
        T get() throws Exception;
    }

    static <T> T onFx(Work<T> work) throws Exception {
        CompletableFuture<T> done = new CompletableFuture<>();
        Platform.runLater(() -> {
            try {
                done.complete(work.get());
            } catch (Throwable failed) {
                done.completeExceptionally(failed);
            }
        });
        return done.get();
    }
}
