// How many screws hold a stack at least: about one alone the sheets turn. Common practice.

export const LEAST_SCREWS = 2;
