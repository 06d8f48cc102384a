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

/** Lines of text as a QR code of level M and at most version 12, drawn as squares. */
public final class QrCode {

    /**
     * Most bytes of text. Source (from memory): ISO/IEC 18004, table of capacities: version 12 at level M holds 287 bytes,
     * less those of the encoding's head.
     */
    static final int MOST_BYTES = 280;

    /** Quiet zone on each side, modules. Source (from memory): ISO/IEC 18004, quiet zone. */
    private static final int QUIET = 4;

    private QrCode() {}

    /** Draws the code with its quiet zone into a square. */
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
        try {
            return Encoder.encode(fitted(text), ErrorCorrectionLevel.M, Map.of(EncodeHintType.CHARACTER_SET, "UTF-8"));
        } catch (WriterException tooLong) {
            throw new IOException("the text does not fit a QR code", tooLong);
        }
    }

    /** The text that the code holds: whole lines only, as many as fit. */
    public static String fitted(String text) {
        StringBuilder lines = new StringBuilder();
        for (String line : text.split("\n", -1)) {
            if ((lines + line).getBytes(StandardCharsets.UTF_8).length > MOST_BYTES) {
                break;
            }
            lines.append(lines.isEmpty() ? "" : "\n").append(line);
        }
        return lines.toString();
    }
}
