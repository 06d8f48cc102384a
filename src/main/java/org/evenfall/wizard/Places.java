package org.evenfall.wizard;

import org.evenfall.setup.entry.CardEntries;
import org.evenfall.setup.entry.HeightEntries;
import org.evenfall.setup.entry.MachineEntries;
import org.evenfall.setup.entry.MatchEntries;
import org.evenfall.setup.entry.PlanEntries;
import org.evenfall.setup.entry.ProductEntries;
import org.evenfall.setup.entry.RateEntries;
import org.evenfall.setup.entry.Setup;
import org.evenfall.setup.entry.StartEntries;
import org.evenfall.setup.entry.TrayEntries;
import org.evenfall.setup.entry.YardEntries;

/** The parts of a setup as places. */
final class Places {

    static final Lens<StartEntries> START = Lens.of(Setup::start, Setup::withStart);
    static final Lens<MachineEntries> MACHINE = Lens.of(Setup::machine, Setup::withMachine);
    static final Lens<ProductEntries> PRODUCT = Lens.of(Setup::product, Setup::withProduct);
    static final Lens<MatchEntries> MATCH = Lens.of(Setup::match, Setup::withMatch);
    static final Lens<YardEntries> YARD = Lens.of(Setup::yard, Setup::withYard);
    static final Lens<HeightEntries> HEIGHT = Lens.of(Setup::height, Setup::withHeight);
    static final Lens<RateEntries> RATE = Lens.of(Setup::rate, Setup::withRate);
    static final Lens<PlanEntries> PLAN = RATE.then(RateEntries::plan, RateEntries::withPlan);
    static final Lens<TrayEntries> TRAYS = Lens.of(Setup::trays, Setup::withTrays);
    static final Lens<CardEntries> CARD = Lens.of(Setup::card, Setup::withCard);

    private Places() {}
}
