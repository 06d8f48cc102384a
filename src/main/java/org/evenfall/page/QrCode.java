package org.evenfall.page;

import com.google.zxing.EncodeHintType;
import com.google.zxing.WriterException;
import com.google.zxing.qrcode.decoder.ErrorCorrectionLevel;
import com.google.zxing.qrcode.encoder.ByteMatrix;
import com.google.zxing.qrcode.encoder.Encoder;
import com.google.zxing.qrcode.encoder.QRCode;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.Map;

/** A text as a QR code of level M and at most version 16, drawn as squares. */
public final class QrCode {

    /**
     * Most bytes of text. Source (from memory): ISO/IEC 18004, table of capacities: version 16 at level M holds 450 bytes,
     * less those of the encoding's head.
     */
    static final int MOST_BYTES = 445;

    /** Quiet zone on each side, modules. Source (from memory): ISO/IEC 18004, quiet zone. */
    private static final int QUIET = 4;

    private QrCode() {}

    /**
     * Draws the code with its quiet zone into a square.
     *
     * @throws IllegalArgumentException for a text that does not fit
     */
    public static void draw(Pen pen, String text, double x, double top, double side) throws IOException {
        ByteMatrix squares = code(text).getMatrix();
        double square = side / (squares.getWidth() + 2 * QUIET);
        for (int row = 0; row < squares.getHeight(); row++) {
            for (int column = 0; column < squares.getWidth(); column++) {
                if (squares.get(column, row) == 1) {
                    pen.fill(x + (column + QUIET) * square, top + (row + QUIET) * square, square, square, Colours.INK);
                }
            }
        }
    }

    static QRCode code(String text) throws IOException {
        if (!fits(text)) {
            throw new IllegalArgumentException("the text is longer than " + MOST_BYTES + " bytes: " + text);
        }
        try {
            return Encoder.encode(text, ErrorCorrectionLevel.M, Map.of(EncodeHintType.CHARACTER_SET, "UTF-8"));
        } catch (WriterException tooLong) {
            throw new IOException("the text does not fit a QR code", tooLong);
        }
    }

    /** Whether a code holds this text. */
    public static boolean fits(String text) {
        return text.getBytes(StandardCharsets.UTF_8).length <= MOST_BYTES;
    }
}
