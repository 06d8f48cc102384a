package org.evenfall.store;

import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.databind.BeanDescription;
import com.fasterxml.jackson.databind.DeserializationConfig;
import com.fasterxml.jackson.databind.DeserializationContext;
import com.fasterxml.jackson.databind.JavaType;
import com.fasterxml.jackson.databind.JsonDeserializer;
import com.fasterxml.jackson.databind.JsonSerializer;
import com.fasterxml.jackson.databind.SerializationConfig;
import com.fasterxml.jackson.databind.deser.Deserializers;
import com.fasterxml.jackson.databind.deser.std.StringDeserializer;
import com.fasterxml.jackson.databind.module.SimpleModule;
import com.fasterxml.jackson.databind.ser.Serializers;
import java.io.IOException;
import java.lang.reflect.RecordComponent;
import org.evenfall.quantity.EnteredQuantity;
import org.evenfall.setup.entry.Setup;
import org.jspecify.annotations.Nullable;

/** Teaches Jackson every record of {@code org.evenfall.setup.entry} by one rule, and the quantity as typed. */
final class EntriesModule extends SimpleModule {

    private static final long serialVersionUID = 1;

    EntriesModule() {
        addSerializer(EnteredQuantity.class, new EnteredQuantityJson.Writer());
        addDeserializer(EnteredQuantity.class, new EnteredQuantityJson.Reader());
        addDeserializer(String.class, new TextReader());
    }

    @Override
    public void setupModule(SetupContext context) {
        super.setupModule(context);
        context.addDeserializers(new Deserializers.Base() {
            @Override
            public @Nullable JsonDeserializer<?> findBeanDeserializer(
                    JavaType type, DeserializationConfig config, BeanDescription description) {
                Class<?> raw = type.getRawClass();
                return isEntries(raw) ? new EntriesDeserializer(raw.asSubclass(Record.class)) : null;
            }
        });
        context.addSerializers(new Serializers.Base() {
            @Override
            public @Nullable JsonSerializer<?> findSerializer(
                    SerializationConfig config, JavaType type, BeanDescription description) {
                return isEntries(type.getRawClass()) ? new EntriesSerializer() : null;
            }
        });
    }

    /** A text; {@code null} is not yet typed. */
    private static final class TextReader extends StringDeserializer {

        private static final long serialVersionUID = 1;

        @Override
        public String deserialize(JsonParser parser, DeserializationContext context) throws IOException {
            return JsonLimits.atMost(InputText.MOST_LETTERS, super.deserialize(parser, context), context);
        }

        @Override
        public String getNullValue(DeserializationContext context) {
            return "";
        }
    }

    private static boolean isEntries(Class<?> type) {
        return type.isRecord() && type.getPackage().equals(Setup.class.getPackage());
    }

    /** The key of a component in the file: its name, but for names that have changed since the format was published. */
    static String key(RecordComponent component) {
        return component.getName().equals("machineCheck") ? "yard" : component.getName();
    }
}
