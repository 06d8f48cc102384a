package org.evenfall.wizard.form;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import javafx.util.Subscription;
import org.jspecify.annotations.Nullable;

/** How long the subscriptions of a part of the page last: until it is removed, or the part it belongs to is. */
final class Lifetime {

    private final @Nullable Lifetime parent;
    private final Set<Lifetime> children = new LinkedHashSet<>();
    private final List<Subscription> subscriptions = new ArrayList<>();
    private boolean ended;

    Lifetime() {
        this(null);
    }

    private Lifetime(@Nullable Lifetime parent) {
        this.parent = parent;
    }

    /** One that ends at the latest with this one. */
    Lifetime child() {
        Lifetime child = new Lifetime(this);
        children.add(child);
        return child;
    }

    /** @throws IllegalStateException when it has ended already: nothing would end the subscription */
    void add(Subscription subscription) {
        if (ended) {
            subscription.unsubscribe();
            throw new IllegalStateException("this part of the page was removed");
        }
        subscriptions.add(subscription);
    }

    boolean ended() {
        return ended;
    }

    /** Ends every subscription of this part and of the parts within it. */
    void end() {
        ended = true;
        List.copyOf(children).forEach(Lifetime::end);
        subscriptions.forEach(Subscription::unsubscribe);
        subscriptions.clear();
        if (parent != null) {
            parent.children.remove(this);
        }
    }
}
