package org.evenfall.setup.path;

import java.lang.reflect.Modifier;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;

/** Every entry of a setup, for those that treat all alike: the reading pass, the tests, the list of answers. */
public final class Entries {

    /** All entries, in the order of the steps. */
    public static final List<Entry<?, ?>> ALL = Stream.of(
                    StartPaths.class,
                    MachinePaths.class,
                    ProductPaths.class,
                    TodayPaths.class,
                    MatchPaths.class,
                    MachineCheckPaths.class,
                    HeightPaths.class,
                    RatePaths.class,
                    TrayPaths.class,
                    TestConditionPaths.class,
                    SettingsPaths.class,
                    CardPaths.class,
                    LogPaths.class)
            .<Entry<?, ?>>flatMap(Entries::declaredIn)
            .toList();

    private Entries() {}

    /** The constants of a class, so that an entry needs no second line in a list. */
    private static Stream<Entry<?, ?>> declaredIn(Class<?> holder) {
        return Arrays.stream(holder.getDeclaredFields())
                .filter(field ->
                        Modifier.isStatic(field.getModifiers()) && Entry.class.isAssignableFrom(field.getType()))
                .map(field -> {
                    try {
                        return (Entry<?, ?>) field.get(null);
                    } catch (IllegalAccessException hidden) {
                        throw new IllegalStateException(field.getName() + " cannot be read", hidden);
                    }
                });
    }
}
