package org.evenfall.setup.path;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.evenfall.quantity.EnteredQuantity;
import org.evenfall.setup.entry.Setup;
import org.evenfall.setup.entry.UnknownKeys;

/** {@link FilledSetup} with something typed in every entry, of each another value, and an unknown key at every step. */
public final class FullSetup {

    private int number = 1;

    private FullSetup() {}

    /** The setup; its values have no meaning. */
    public static Setup make() {
        FullSetup full = new FullSetup();
        Setup setup = FilledSetup.make();
        for (Entry<?, ?> entry : Entries.ALL) {
            if (!(entry instanceof Rows<?, ?>)) {
                setup = full.typed(setup, entry);
            }
        }
        return withUnknownKeys(setup);
    }

    private <R, T> Setup typed(Setup setup, Entry<R, T> entry) {
        Setup next = setup;
        for (EntryPath<T> path : entry.places(setup).toList()) {
            next = path.set(next, value(entry, path.get(next)));
        }
        return next;
    }

    @SuppressWarnings("unchecked") // the value is of the entry's own type
    private <T> T value(Entry<?, T> entry, T blank) {
        if (entry instanceof Text<?>) {
            return (T) ("text " + number++);
        }
        if (entry instanceof Choice<?, ?> choice) {
            return (T) choice.answers().get(choice.answers().size() - 1);
        }
        if (blank instanceof List<?> list) {
            List<EnteredQuantity> values = new ArrayList<>();
            list.forEach(item -> values.add(number()));
            return (T) values;
        }
        if (blank instanceof Map<?, ?>) {
            return (T) Map.of("outer/~vane", number());
        }
        return (T) number();
    }

    private EnteredQuantity number() {
        return EnteredQuantity.parse(Integer.toString(number++));
    }

    private static Setup withUnknownKeys(Setup setup) {
        return setup.withUnknownKeys(key("setup"))
                .withStart(setup.start().withUnknownKeys(key("start")))
                .withMachine(setup.machine().withUnknownKeys(key("machine")))
                .withProduct(setup.product().withUnknownKeys(key("product")))
                .withMatch(setup.match()
                        .withUnknownKeys(key("match"))
                        .withToday(setup.match().today().withUnknownKeys(key("today"))))
                .withMachineCheck(setup.machineCheck().withUnknownKeys(key("yard")))
                .withHeight(setup.height().withUnknownKeys(key("height")))
                .withRate(setup.rate()
                        .withUnknownKeys(key("rate"))
                        .withPlan(setup.rate().plan().withUnknownKeys(key("plan"))))
                .withTrays(setup.trays().withUnknownKeys(key("trays")))
                .withCard(setup.card().withUnknownKeys(key("card")))
                .withGuide(setup.guide().withUnknownKeys(key("guide")));
    }

    private static UnknownKeys key(String place) {
        return new UnknownKeys(Map.of("later", "\"at " + place + "\""));
    }
}
