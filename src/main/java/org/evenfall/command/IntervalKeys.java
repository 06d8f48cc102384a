package org.evenfall.command;

import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.databind.BeanDescription;
import com.fasterxml.jackson.databind.PropertyName;
import com.fasterxml.jackson.databind.SerializationConfig;
import com.fasterxml.jackson.databind.SerializerProvider;
import com.fasterxml.jackson.databind.ser.BeanPropertyWriter;
import com.fasterxml.jackson.databind.ser.BeanSerializerModifier;
import com.fasterxml.jackson.databind.util.NameTransformer;
import java.util.ArrayList;
import java.util.List;
import org.evenfall.quantity.Interval;

/**
 * Writes an interval as two numbers of the object that holds it: a key such as {@code bucket*Kg} gives {@code bucketLowKg}
 * and {@code bucketHighKg}, the key {@code *} gives {@code low} and {@code high}; both are null where the interval is. A
 * key without an asterisk is left as it is.
 */
final class IntervalKeys extends BeanSerializerModifier {

    private static final long serialVersionUID = 1;

    private static final String ASTERISK = "*";

    @Override
    public List<BeanPropertyWriter> changeProperties(
            SerializationConfig config, BeanDescription description, List<BeanPropertyWriter> properties) {
        List<BeanPropertyWriter> changed = new ArrayList<>();
        for (BeanPropertyWriter property : properties) {
            if (property.getType().hasRawClass(Interval.class)
                    && property.getName().contains(ASTERISK)) {
                changed.add(new End(property, false));
                changed.add(new End(property, true));
            } else {
                changed.add(property);
            }
        }
        return changed;
    }

    /** One end of an interval. */
    private static final class End extends BeanPropertyWriter {

        private static final long serialVersionUID = 1;

        private final boolean high;

        End(BeanPropertyWriter interval, boolean high) {
            super(interval, PropertyName.construct(key(interval.getName(), high)));
            this.high = high;
        }

        private static String key(String pattern, boolean high) {
            String key = pattern.replace(ASTERISK, high ? "High" : "Low");
            return Character.toLowerCase(key.charAt(0)) + key.substring(1);
        }

        @Override
        public void serializeAsField(Object bean, JsonGenerator json, SerializerProvider provider) throws Exception {
            json.writeFieldName(getName());
            if (get(bean) instanceof Interval interval) {
                json.writeNumber(high ? interval.high() : interval.low());
            } else {
                json.writeNull();
            }
        }

        /** Where the holder is written into its own holder, the keys stay as they are. */
        @Override
        public BeanPropertyWriter rename(NameTransformer transformer) {
            return this;
        }
    }
}
