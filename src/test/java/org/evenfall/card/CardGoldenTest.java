package org.evenfall.card;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSObjectKey;
import org.apache.pdfbox.cos.COSStream;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.evenfall.setup.entry.CardLanguage;
import org.evenfall.setup.entry.Paper;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/**
 * The unsigned pages against a stored file: the same content and time give the same bytes, today and in a year. Compared is
 * what the bytes hold, object by object: streams by their SHA-256, and the words of a page with their places, so that a
 * difference is visible; how a Java version compresses a stream, and its colour profile, may differ. A wanted change is
 * written with -Dgolden=write.
 */
class CardGoldenTest {

    private static final Path KEPT = Path.of("src", "test", "resources", "org", "evenfall", "card");

    @ParameterizedTest
    @EnumSource(Paper.class)
    void thePagesAreAsTheyWere(Paper paper) throws Exception {
        byte[] pages = CardPdf.draw(CardSamples.of(paper, CardLanguage.EN, CardSamples.CODE), CardSamples.WHEN);
        String now = description(pages);
        Path kept = KEPT.resolve("golden-" + paper.name().toLowerCase(java.util.Locale.ROOT) + ".txt");
        if ("write".equals(System.getProperty("golden"))) {
            Files.createDirectories(KEPT);
            Files.writeString(kept, now);
        }
        assertThat(now).isEqualTo(Files.readString(kept));
        assertThat(CardPdf.draw(CardSamples.of(paper, CardLanguage.EN, CardSamples.CODE), CardSamples.WHEN))
                .isEqualTo(pages);
    }

    private static String description(byte[] pdf) throws Exception {
        TreeMap<Long, String> objects = new TreeMap<>();
        try (PDDocument document = Loader.loadPDF(pdf)) {
            for (COSObjectKey key : document.getDocument().getXrefTable().keySet()) {
                if (document.getDocument().getObjectFromPool(key).getObject() instanceof COSStream stream) {
                    objects.put(key.getNumber(), description(stream));
                } else if (document.getDocument().getObjectFromPool(key).getObject() instanceof COSDictionary plain) {
                    objects.put(key.getNumber(), names(plain));
                }
            }
        }
        List<String> lines = new ArrayList<>();
        objects.forEach((number, object) -> lines.add(number + " " + object));
        return String.join("\n", lines) + "\n";
    }

    private static String names(COSDictionary dictionary) {
        return dictionary.keySet().stream().map(COSName::getName).sorted().toList()
                + " " + dictionary.getNameAsString(COSName.TYPE)
                + " " + dictionary.getNameAsString(COSName.S);
    }

    private static String description(COSStream stream) throws Exception {
        if (stream.containsKey(COSName.N)) {
            return "colour profile";
        }
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (InputStream in = stream.createInputStream()) {
            in.transferTo(bytes);
        }
        String type = stream.getNameAsString(COSName.TYPE);
        String text = bytes.toString(StandardCharsets.ISO_8859_1);
        String digest =
                HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(bytes.toByteArray()));
        boolean page =
                type == null && (text.startsWith("/H1 ") || text.startsWith("/P ") || text.startsWith("/Artifact"));
        return page
                ? "page " + digest + "\n"
                        + text.lines()
                                .filter(line -> line.matches(".*(BDC|Td|Tf|Tj)"))
                                .collect(Collectors.joining("\n"))
                : "stream " + type + " " + digest;
    }
}
