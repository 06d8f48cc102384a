package org.evenfall.machine;

import org.jspecify.annotations.Nullable;

/**
 * Heights that set the machine over the crop.
 *
 * @param cropM height of the crop now, mean of the places, m
 * @param cropSpreadM highest less lowest, m
 * @param cropLaterM height of the crop when spread, growth included, m
 * @param wantedOverCropM wanted height of the reference point over the crop, m
 * @param overGroundM height of the reference point over the ground that gives it, m
 * @param leftRightM left less right now, m
 * @param foreAftM front less rear now, m
 * @param nowOverCropM height over the crop now, m
 * @param correctionM how much to raise (positive) or lower, m
 * @param chainM length of a chain that just brushes the crop, m
 * @param throwPer10CmM change of throw for 10 cm of height, by the flight model, m
 */
public record HeightResult(
        double cropM,
        double cropSpreadM,
        double cropLaterM,
        double wantedOverCropM,
        double overGroundM,
        @Nullable Double leftRightM,
        @Nullable Double foreAftM,
        @Nullable Double nowOverCropM,
        @Nullable Double correctionM,
        double chainM,
        @Nullable Double throwPer10CmM) {}
