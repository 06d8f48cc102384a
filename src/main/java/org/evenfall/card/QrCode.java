package org.evenfall.card;

import com.google.zxing.EncodeHintType;
import com.google.zxing.WriterException;
import com.google.zxing.qrcode.decoder.ErrorCorrectionLevel;
import com.google.zxing.qrcode.encoder.ByteMatrix;
import com.google.zxing.qrcode.encoder.Encoder;
import com.google.zxing.qrcode.encoder.QRCode;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.Map;

/** The settings as text lines in a QR code, drawn as squares; level M, at most version 12. */
final class QrCode {

    /** Bytes that version 12 holds at level M (ISO/IEC 18004, table of capacities, from memory), less the text's head. */
    static final int MOST_BYTES = 280;

    private QrCode() {}

    static void draw(Pen pen, String text, double x, double top, double side) throws IOException {
        ByteMatrix squares = code(text).getMatrix();
        // four squares of quiet around it
        double square = side / (squares.getWidth() + 8);
        for (int row = 0; row < squares.getHeight(); row++) {
            for (int column = 0; column < squares.getWidth(); column++) {
                if (squares.get(column, row) == 1) {
                    pen.fill(x + (column + 4) * square, top + (row + 4) * square, square, square, Pen.INK);
                }
            }
        }
    }

    static QRCode code(String text) throws IOException {
        try {
            return Encoder.encode(fitted(text), ErrorCorrectionLevel.M, Map.of(EncodeHintType.CHARACTER_SET, "UTF-8"));
        } catch (WriterException tooLong) {
            throw new IOException("the settings do not fit a QR code", tooLong);
        }
    }

    /** Whole lines only, as many as fit; what is left out stands in print. */
    static String fitted(String text) {
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
