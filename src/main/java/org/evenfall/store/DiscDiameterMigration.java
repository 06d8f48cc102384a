package org.evenfall.store;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.DecimalNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.fasterxml.jackson.databind.node.TextNode;
import java.math.BigDecimal;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.evenfall.quantity.EnteredQuantity;
import org.evenfall.quantity.NumberReading;
import org.evenfall.quantity.NumberText;
import org.jspecify.annotations.Nullable;

/** The radius of the disc was asked before its diameter was. */
final class DiscDiameterMigration {

    private static final BigDecimal TWO = BigDecimal.valueOf(2);
    private static final Pattern DECIMAL = Pattern.compile("[+-]?\\d*([.,])(\\d+)");

    private DiscDiameterMigration() {}

    /** The tree of a setup file with the diameter in place of the radius; what is no number stays as it is. */
    static ObjectNode apply(ObjectNode setup) {
        if (!(setup.get("machine") instanceof ObjectNode old) || old.has("discDiameter")) {
            return setup;
        }
        JsonNode radius = old.get("discRadius");
        JsonNode diameter = radius == null ? null : diameter(radius);
        if (diameter == null) {
            return setup;
        }
        ObjectNode machine = old.deepCopy();
        machine.remove("discRadius");
        machine.set("discDiameter", diameter);
        ObjectNode renewed = setup.objectNode();
        renewed.setAll(setup);
        renewed.set("machine", machine);
        return renewed;
    }

    private static @Nullable JsonNode diameter(JsonNode radius) {
        return radius.isNumber()
                ? DecimalNode.valueOf(radius.decimalValue().multiply(TWO))
                : twice(EnteredQuantity.parse(radius.asText()));
    }

    /** Twice the number, with the decimals, the decimal sign and the unit that were typed. */
    private static @Nullable JsonNode twice(EnteredQuantity chosen) {
        EnteredQuantity typed = chosen.withUnitFromText();
        NumberReading reading = NumberText.read(typed.text());
        double value;
        if (reading instanceof NumberReading.Value one) {
            value = one.value();
        } else if (reading instanceof NumberReading.Ambiguous twice) {
            // a thousand and more was never possible in any unit
            value = twice.asDecimal();
        } else {
            return null;
        }
        Matcher decimal = DECIMAL.matcher(typed.text().strip());
        boolean withSign = decimal.matches();
        BigDecimal exact = BigDecimal.valueOf(value).multiply(TWO).stripTrailingZeros();
        int decimals = Math.max(exact.scale(), withSign ? decimal.group(2).length() : 0);
        String text = exact.setScale(decimals).toPlainString();
        String oneWay = NumberText.read(text) instanceof NumberReading.Ambiguous ? text + "0" : text;
        String digits = withSign ? oneWay.replace(".", decimal.group(1)) : oneWay;
        return TextNode.valueOf(typed.withText(digits).toString());
    }
}
