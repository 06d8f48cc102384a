package org.evenfall.store;

import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.lang.reflect.Type;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import org.evenfall.quantity.EnteredQuantity;
import org.evenfall.setup.entry.Blank;
import org.evenfall.setup.entry.Setup;
import org.evenfall.setup.entry.UnknownKeys;

/** Every record of entries, found from {@link Setup}, and records with random entries. */
final class EntryTypes {

    private static final String[] TYPED = {
        "28 m", "0,76 kg/L", "about 1 kg", "1.250", "-5", "12 per t", "abc", "0 °", "7", "\"\\ é", "1 2 3"
    };
    private static final String[] TEXTS = {
        "a", "Far Bank", "line\nbreak", "\"quoted\" \\ back", "Größe 3 µm", " ", "null"
    };
    private static final String[] UNKNOWN = {
        "1",
        "1E+400",
        "0.1",
        "null",
        "\"\"",
        "\"red\"",
        "[]",
        "{}",
        "false",
        "[{\"a\":[1,null]},\"b\"]",
        "{\"x\":{\"y\":0}}"
    };

    private EntryTypes() {}

    static Set<Class<? extends Record>> all() {
        Set<Class<? extends Record>> types = new LinkedHashSet<>();
        collect(Setup.class, types);
        return types;
    }

    private static void collect(Class<?> type, Set<Class<? extends Record>> types) {
        if (isEntries(type) && types.add(type.asSubclass(Record.class))) {
            for (RecordComponent component : type.getRecordComponents()) {
                collect(inner(component.getGenericType()), types);
            }
        }
    }

    static boolean isEntries(Class<?> type) {
        return type.isRecord() && type.getPackage().equals(Setup.class.getPackage()) && type != UnknownKeys.class;
    }

    static List<RecordComponent> known(Class<?> type) {
        return Arrays.stream(type.getRecordComponents())
                .filter(component -> component.getType() != UnknownKeys.class)
                .toList();
    }

    /** The type of the items of a list or of the values of a map; else the type itself. */
    static Class<?> inner(Type type) {
        if (type instanceof ParameterizedType list) {
            return (Class<?>) list.getActualTypeArguments()[list.getActualTypeArguments().length - 1];
        }
        return (Class<?>) type;
    }

    static <T extends Record> T random(Class<T> type, Random random) {
        return Blank.build(
                type,
                Arrays.stream(type.getRecordComponents())
                        .map(component -> value(component.getGenericType(), component.getType(), random))
                        .toArray());
    }

    private static Object value(Type generic, Class<?> type, Random random) {
        if (type == List.class) {
            List<Object> items = new ArrayList<>();
            for (int n = random.nextInt(4); n > 0; n--) {
                items.add(value(inner(generic), inner(generic), random));
            }
            return items;
        }
        if (type == Map.class) {
            Map<String, Object> values = new LinkedHashMap<>();
            for (int n = random.nextInt(3); n > 0; n--) {
                values.put("lever " + n, EnteredQuantity.parse(TYPED[random.nextInt(TYPED.length)]));
            }
            return values;
        }
        if (type == UnknownKeys.class) {
            Map<String, String> unknown = new LinkedHashMap<>();
            for (int n = random.nextInt(3); n > 0; n--) {
                unknown.put("new key/" + n + "~", UNKNOWN[random.nextInt(UNKNOWN.length)]);
            }
            return new UnknownKeys(unknown);
        }
        if (isEntries(type)) {
            return random(type.asSubclass(Record.class), random);
        }
        Object blank = Blank.value(type);
        if (blank != null && random.nextInt(4) == 0) {
            return blank;
        }
        if (type == EnteredQuantity.class) {
            return EnteredQuantity.parse(TYPED[random.nextInt(TYPED.length)]);
        }
        if (type == String.class) {
            return TEXTS[random.nextInt(TEXTS.length)];
        }
        if (type == int.class) {
            return random.nextInt(100);
        }
        return type.getEnumConstants()[random.nextInt(type.getEnumConstants().length)];
    }
}
