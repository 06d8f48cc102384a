package org.evenfall.store;

import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.databind.DeserializationContext;
import com.fasterxml.jackson.databind.SerializerProvider;
import com.fasterxml.jackson.databind.deser.std.StdDeserializer;
import com.fasterxml.jackson.databind.ser.std.StdSerializer;
import java.io.IOException;
import java.math.BigDecimal;
import org.evenfall.quantity.EnteredQuantity;
import org.evenfall.quantity.NumberReading;
import org.evenfall.quantity.NumberText;
import org.evenfall.quantity.Unit;

/** A quantity as typed is one JSON text, for example {@code "0,76 kg/L"}; a plain JSON number is read too. */
final class EnteredQuantityJson {

    /** Assumption: no number that a person types has more zeros; longer ones are kept in powers of ten. */
    private static final int MOST_ZEROS = 30;

    private EnteredQuantityJson() {}

    /** Writes the text with its unit; a unit alone is nothing typed. */
    static final class Writer extends StdSerializer<EnteredQuantity> {

        private static final long serialVersionUID = 1;

        Writer() {
            super(EnteredQuantity.class);
        }

        @Override
        public void serialize(EnteredQuantity value, JsonGenerator json, SerializerProvider provider)
                throws IOException {
            json.writeString(value.isBlank() ? "" : value.toString());
        }
    }

    /** Reads a text or a number; {@code null} is not yet typed. */
    static final class Reader extends StdDeserializer<EnteredQuantity> {

        private static final long serialVersionUID = 1;

        Reader() {
            super(EnteredQuantity.class);
        }

        @Override
        public EnteredQuantity getNullValue(DeserializationContext context) {
            return EnteredQuantity.EMPTY;
        }

        @Override
        public EnteredQuantity deserialize(JsonParser parser, DeserializationContext context) throws IOException {
            JsonToken token = parser.currentToken();
            if (token == JsonToken.VALUE_STRING) {
                return EnteredQuantity.parse(
                        JsonLimits.atMost(EnteredQuantity.MOST_LETTERS, parser.getText(), context));
            }
            if (token == JsonToken.VALUE_NUMBER_INT || token == JsonToken.VALUE_NUMBER_FLOAT) {
                // it is written as a text, which has to be short enough to be read again
                return new EnteredQuantity(
                        JsonLimits.atMost(EnteredQuantity.MOST_LETTERS, text(parser.getDecimalValue()), context),
                        Unit.NONE);
            }
            return (EnteredQuantity) context.handleUnexpectedToken(EnteredQuantity.class, parser);
        }

        /** A JSON number has one meaning: its text gets a further decimal where it could be read as thousands. */
        private static String text(BigDecimal number) {
            if (Math.abs((long) number.scale()) > MOST_ZEROS) {
                return number.toString();
            }
            String digits = number.toPlainString();
            return NumberText.read(digits) instanceof NumberReading.Ambiguous ? digits + "0" : digits;
        }
    }
}
