package org.evenfall.publish;

import org.evenfall.card.CardContent;
import org.evenfall.card.CardPdf;
import org.evenfall.card.CardSamples;
import org.evenfall.setup.entry.CardLanguage;
import org.evenfall.setup.entry.Paper;
import org.evenfall.sign.PdfSigner;
import org.evenfall.sign.SigningKey;

/** Cards of the demo, signed. */
final class SignedCards {

    private SignedCards() {}

    static byte[] of(CardContent content, SigningKey key) throws Exception {
        return PdfSigner.sign(CardPdf.draw(content, CardSamples.WHEN), key, "A. Marlow", CardSamples.WHEN);
    }

    static byte[] of(Paper paper, SigningKey key) throws Exception {
        return of(CardSamples.of(paper, CardLanguage.EN, key.code()), key);
    }
}
