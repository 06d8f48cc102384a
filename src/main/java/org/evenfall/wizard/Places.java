package org.evenfall.wizard;

import org.evenfall.setup.entry.CardEntries;
import org.evenfall.setup.entry.HeightEntries;
import org.evenfall.setup.entry.MachineCheckEntries;
import org.evenfall.setup.entry.MachineEntries;
import org.evenfall.setup.entry.MatchEntries;
import org.evenfall.setup.entry.PlanEntries;
import org.evenfall.setup.entry.ProductEntries;
import org.evenfall.setup.entry.RateEntries;
import org.evenfall.setup.entry.Setup;
import org.evenfall.setup.entry.StartEntries;
import org.evenfall.setup.entry.TrayEntries;
import org.evenfall.wizard.form.EntryPath;

/** The parts of a setup as places. */
final class Places {

    static final EntryPath<StartEntries> START = EntryPath.of(Setup::start, Setup::withStart);
    static final EntryPath<MachineEntries> MACHINE = EntryPath.of(Setup::machine, Setup::withMachine);
    static final EntryPath<ProductEntries> PRODUCT = EntryPath.of(Setup::product, Setup::withProduct);
    static final EntryPath<MatchEntries> MATCH = EntryPath.of(Setup::match, Setup::withMatch);
    static final EntryPath<MachineCheckEntries> YARD = EntryPath.of(Setup::machineCheck, Setup::withMachineCheck);
    static final EntryPath<HeightEntries> HEIGHT = EntryPath.of(Setup::height, Setup::withHeight);
    static final EntryPath<RateEntries> RATE = EntryPath.of(Setup::rate, Setup::withRate);
    static final EntryPath<PlanEntries> PLAN = RATE.then(RateEntries::plan, RateEntries::withPlan);
    static final EntryPath<TrayEntries> TRAYS = EntryPath.of(Setup::trays, Setup::withTrays);
    static final EntryPath<CardEntries> CARD = EntryPath.of(Setup::card, Setup::withCard);

    private Places() {}
}
