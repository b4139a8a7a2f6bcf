// Things by number that hang together, a pair at a time: each is led by one of its group, the one with the lowest number.

/** At first each leads itself. */
export const ownLeaders = (count: number): number[] =>
  Array.from({ length: count }, (_, index) => index);

export const joinGroups = (leaders: number[], a: number, b: number): void => {
  const [leaderA, leaderB] = [leaderOf(leaders, a), leaderOf(leaders, b)];
  leaders[Math.max(leaderA, leaderB)] = Math.min(leaderA, leaderB);
};

/** Halves the way at each step, so that long chains are short the next time. */
export const leaderOf = (leaders: number[], of: number): number => {
  let index = of;
  while (leaders[index] !== index) {
    leaders[index] = leaders[leaders[index]!]!;
    index = leaders[index]!;
  }
  return index;
};
