package org.evenfall.publish;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.util.List;
import java.util.Locale;
import org.evenfall.card.CardContents;
import org.evenfall.card.CardPdf;
import org.evenfall.finding.Sentences;
import org.evenfall.page.PagePicture;
import org.evenfall.quantity.DateText;
import org.evenfall.setup.Assessment;
import org.evenfall.setup.entry.Setup;
import org.evenfall.sign.KeyException;
import org.evenfall.sign.KeyRing;
import org.evenfall.sign.PdfSigner;
import org.evenfall.sign.PdfVerifier;
import org.evenfall.sign.SigningKey;
import org.evenfall.sign.VerifyResult;
import org.evenfall.store.FreeNames;
import org.evenfall.store.UserFolder;
import org.evenfall.store.WholeFileWriter;

/** Draws, signs, writes and verifies cards, for the wizard and the command line alike. */
public final class CardService {

    private static final String ENDING = ".pdf";

    /** What the name of a finding sheet has in front of its ending. */
    private static final String FINDING = "-finding";

    private final UserFolder user;
    private final Sentences words;
    private final Clock clock;
    private final KeyRing keys;

    /**
     * A service with the keys of a person.
     *
     * @param user the person's own folder, with keys and cards
     * @param words the program's sentences
     * @param clock gives the time of signing
     */
    public CardService(UserFolder user, Sentences words, Clock clock) {
        this.user = user;
        this.words = words;
        this.clock = clock;
        this.keys = keys(user);
    }

    /** The keys of a person. */
    public static KeyRing keys(UserFolder user) {
        return new KeyRing(user.root(), WholeFileWriter::writePrivate);
    }

    /** The signing key and the keys known here. */
    public KeyRing keys() {
        return keys;
    }

    /**
     * The pages as they will be printed, not signed.
     *
     * @param dpi dots per inch
     */
    public List<BufferedImage> preview(Setup setup, Assessment assessment, float dpi) throws IOException {
        String code = keys.status().code();
        byte[] pages = CardPdf.draw(CardContents.of(setup, assessment, words, code), clock.instant());
        return PagePicture.render(pages, dpi);
    }

    /**
     * The signed card. The first one makes a signing key.
     *
     * @throws KeyException when the key cannot sign
     */
    public byte[] signed(Setup setup, Assessment assessment) throws IOException {
        return signed(setup, assessment, key(setup));
    }

    /**
     * Writes the signed card to a file, whole or not at all; gives the short code of the key.
     *
     * @throws KeyException when the key cannot sign
     * @throws CardFileException when the file cannot be written; an older one is then unchanged
     */
    public String write(Setup setup, Assessment assessment, Path file) throws IOException {
        SigningKey key = key(setup);
        byte[] card = signed(setup, assessment, key);
        try {
            WholeFileWriter.write(file, card);
        } catch (IOException notWritten) {
            throw new CardFileException(file, "cannot be written; nothing was changed", notWritten);
        }
        return key.code();
    }

    private SigningKey key(Setup setup) throws KeyException {
        return keys.signing(setup.card().signedBy(), setup.card().role(), clock.instant());
    }

    private byte[] signed(Setup setup, Assessment assessment, SigningKey key) throws IOException {
        Instant now = clock.instant();
        byte[] pages = CardPdf.draw(CardContents.of(setup, assessment, words, key.code()), now);
        return PdfSigner.sign(pages, key, setup.card().signedBy(), now);
    }

    /**
     * Whether a card is unchanged, and whose key signed it.
     *
     * @throws CardFileException when there is no such file, or it cannot be read, is too large for a card, or is no PDF file
     */
    public VerifyResult verify(Path card) throws CardFileException {
        byte[] bytes = CardBytes.read(card);
        try {
            return PdfVerifier.verify(bytes, keys.codes());
        } catch (IOException damaged) {
            throw new CardFileException(card, "is no PDF file, or is damaged", damaged);
        }
    }

    /** The file of a finding sheet that takes the place of a card: its name ends in {@code -finding.pdf}. */
    public static Path findingName(Path card) {
        String name = String.valueOf(card.getFileName());
        String stem = name.toLowerCase(Locale.ROOT).endsWith(ENDING)
                ? name.substring(0, name.length() - ENDING.length())
                : name;
        return card.resolveSibling(stem + FINDING + ENDING);
    }

    /** Whether the folder of cards has a card of this setup, by its name: farm, delivery and date. */
    public boolean hasCard(Setup setup) {
        return Files.exists(user.cards().resolve(stem(setup) + ENDING));
    }

    /**
     * A file in the folder of cards that does not exist yet, named after farm, delivery and date.
     *
     * @param finding whether it is a finding sheet, not a card
     */
    public Path freeFile(Setup setup, boolean finding) {
        String name = stem(setup);
        return FreeNames.in(user.cards(), finding ? name + FINDING : name, ENDING);
    }

    private static String stem(Setup setup) {
        return (setup.start().farm() + " " + setup.product().delivery() + " "
                        + DateText.iso(setup.card().date()))
                .strip()
                .toLowerCase(Locale.ROOT)
                .replaceAll("[^\\p{L}\\p{N}]+", "-");
    }
}
