package org.evenfall.setup.entry;

import java.lang.reflect.Constructor;
import java.lang.reflect.RecordComponent;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import org.evenfall.quantity.EnteredQuantity;
import org.jspecify.annotations.Nullable;

/** What an entry is while nothing is typed: one rule for every component of every record of this room. */
public final class Blank {

    private static final String UNANSWERED = "UNANSWERED";

    private static final ClassValue<Shape> SHAPES = new ClassValue<>() {
        @Override
        protected Shape computeValue(Class<?> type) {
            return Shape.of(type);
        }
    };

    private Blank() {}

    /**
     * A record in which nothing is typed.
     *
     * @throws IllegalStateException when a component has no such value and must be given
     */
    static <T extends Record> T of(Class<T> type) {
        return build(
                type,
                components(type).stream()
                        .map(component -> value(component.getType()))
                        .toArray());
    }

    /**
     * The value of a component while nothing is typed: an empty text, list, map or record, an unanswered choice, the
     * usual paper. {@code null} for a choice that must be given.
     *
     * @throws IllegalArgumentException for a type that no entry has
     */
    public static @Nullable Object value(Class<?> type) {
        if (type == EnteredQuantity.class) {
            return EnteredQuantity.EMPTY;
        }
        if (type == UnknownKeys.class) {
            return UnknownKeys.NONE;
        }
        if (type == String.class) {
            return "";
        }
        if (type == int.class) {
            return 0;
        }
        if (type == List.class) {
            return List.of();
        }
        if (type == Map.class) {
            return Map.of();
        }
        if (type == Paper.class) {
            return Paper.A5_LANDSCAPE;
        }
        if (type.isEnum()) {
            return Arrays.stream(type.getEnumConstants())
                    .filter(constant -> constant.toString().equals(UNANSWERED))
                    .findFirst()
                    .orElse(null);
        }
        if (type.isRecord()) {
            return of(type.asSubclass(Record.class));
        }
        throw new IllegalArgumentException("no entry is a " + type.getName());
    }

    /**
     * Whether nothing is typed in a value. A unit alone is nothing typed; a list with items is typed, even where the
     * items are blank, because they have their places; a sheet of paper is always chosen.
     */
    public static boolean isBlank(Object value) {
        if (value instanceof EnteredQuantity quantity) {
            return quantity.isBlank();
        }
        if (value instanceof UnknownKeys unknown) {
            return unknown.isEmpty();
        }
        if (value instanceof Map<?, ?> map) {
            return map.values().stream().allMatch(Blank::isBlank);
        }
        if (value instanceof Record entries) {
            return components(entries.getClass()).stream().allMatch(component -> isBlank(get(entries, component)));
        }
        if (value instanceof Enum<?> choice) {
            return choice.name().equals(UNANSWERED);
        }
        return value.equals("") || value.equals(0) || value.equals(List.of());
    }

    /**
     * A record by its canonical constructor.
     *
     * @param values the components in their order
     * @throws IllegalStateException when the record refuses them
     */
    public static <T extends Record> T build(Class<T> type, @Nullable Object... values) {
        try {
            return type.cast(SHAPES.get(type).constructor().newInstance(values));
        } catch (ReflectiveOperationException impossible) {
            throw new IllegalStateException(type.getSimpleName() + " cannot be built", impossible);
        }
    }

    /** The components of a record in their order. */
    public static List<RecordComponent> components(Class<?> type) {
        return SHAPES.get(type).components();
    }

    /** The value of a component of a record. */
    public static Object get(Record entries, RecordComponent component) {
        try {
            return component.getAccessor().invoke(entries);
        } catch (ReflectiveOperationException impossible) {
            throw new IllegalStateException(component + " cannot be read", impossible);
        }
    }

    /** What reflection says about a record type; asked once, as the asking is slow. */
    private record Shape(List<RecordComponent> components, Constructor<?> constructor) {

        static Shape of(Class<?> type) {
            List<RecordComponent> components = List.of(type.getRecordComponents());
            try {
                return new Shape(
                        components,
                        type.getDeclaredConstructor(components.stream()
                                .map(RecordComponent::getType)
                                .toArray(Class<?>[]::new)));
            } catch (NoSuchMethodException impossible) {
                throw new IllegalStateException(impossible);
            }
        }
    }
}
