package org.evenfall.trays.ground;

import org.evenfall.flight.SpreadPattern;

/** A machine that is known by what one pass gives across the travel. */
interface PassMachine extends Machine {

    /** What one pass gives, any unit. */
    SpreadPattern pass(int first, int second, Fault fault);

    @Override
    default TrueField field(int first, int second, Fault fault) {
        SpreadPattern forth = pass(first, second, fault);
        SpreadPattern back = fault.turned() == fault ? forth : pass(first, second, fault.turned());
        return TrueField.of(job().tramlines(), forth, back);
    }

    @Override
    default double meanThrowM(int first, int second) {
        SpreadPattern pass = pass(first, second, Fault.NONE);
        double moment = 0;
        double sum = 0;
        for (int i = 0; i < pass.size(); i++) {
            moment += Math.abs(pass.positionM(i)) * pass.amount(i);
            sum += pass.amount(i);
        }
        return moment / sum;
    }
}
