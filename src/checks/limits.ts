// Comparisons with a limit. A value that meets its limit meets it: the last bit of a sum is no finding.

import { samePlace } from "../geometry/tolerance.ts";

export const isUnder = (value: number, limit: number): boolean => value < limit - samePlace;

export const isOver = (value: number, limit: number): boolean => value > limit + samePlace;
