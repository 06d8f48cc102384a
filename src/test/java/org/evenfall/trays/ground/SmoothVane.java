package org.evenfall.trays.ground;

/**
 * A straight vane without friction on a flat disc: a granule falls on it at a radius r, slides out with the turning disc
 * (x″ = ω²x along the vane) and leaves at the tip. Exact.
 *
 * @param dropM radius at which it falls on, m
 * @param tipM radius of the tip, m, above that
 * @param leadRad angle of the vane against the radius where the granule falls on, positive: the tip leads
 */
record SmoothVane(double dropM, double tipM, double leadRad) {

    private double footM() {
        return dropM * Math.sin(leadRad);
    }

    private double leadAtTipRad() {
        return Math.asin(footM() / tipM);
    }

    /** Outlet speed over the turning speed of the disc, m. */
    double speedPerTurnM() {
        double along = Math.sqrt(tipM * tipM - dropM * dropM);
        return Math.hypot(along * Math.cos(leadAtTipRad()), tipM + along * Math.sin(leadAtTipRad()));
    }

    /** Direction in which it leaves, against the radius on which it fell, rad, with the turn of the disc. */
    double directionRad() {
        double foot = footM();
        double slide = acosh(Math.sqrt((tipM * tipM - foot * foot) / (dropM * dropM - foot * foot)));
        double along = Math.sqrt(tipM * tipM - dropM * dropM);
        double lead = leadAtTipRad();
        return slide + leadRad - lead + Math.atan2(tipM + along * Math.sin(lead), along * Math.cos(lead));
    }

    private static double acosh(double x) {
        return Math.log(x + Math.sqrt(x * x - 1));
    }
}
