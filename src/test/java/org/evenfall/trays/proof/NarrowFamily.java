package org.evenfall.trays.proof;

import static org.evenfall.trays.proof.PatternFamily.between;

import org.apache.commons.rng.UniformRandomProvider;
import org.evenfall.flight.SpreadPattern;

/**
 * Family (d), a limit of the method and no usual machine: a triangle that overlaps exactly, with one to three gaps or heaps
 * of 2 to 4 m and nothing else. What is narrower than the distance of the trays can hide between them.
 */
final class NarrowFamily implements PatternFamily {

    @Override
    public SpreadPattern draw(UniformRandomProvider random, double widthM) {
        int count = 1 + random.nextInt(3);
        double[] middleM = new double[count];
        double[] halfM = new double[count];
        double[] height = new double[count];
        for (int i = 0; i < count; i++) {
            middleM[i] = between(random, -0.6, 0.6) * widthM;
            halfM[i] = between(random, 1, 2);
            height[i] = between(random, -0.4, 0.4);
        }
        return PatternFamily.sampled(widthM, x -> {
            double amount = Math.max(0, 1 - Math.abs(x) / widthM);
            for (int i = 0; i < count; i++) {
                double off = (x - middleM[i]) / halfM[i];
                amount += Math.abs(off) < 1 ? height[i] * (1 + Math.cos(Math.PI * off)) / 2 : 0;
            }
            return amount;
        });
    }
}
