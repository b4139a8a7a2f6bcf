// Labels along a line, kept a pitch apart and as near to their own places as that allows.
// Takes places in rising order; gives as many, in the same order, that never lie closer than the pitch.

interface Block {
  /** Sum of the members' places, each less its number times the pitch. */
  readonly sum: number;
  readonly count: number;
}

/** Least squares under an order: neighbours that would come too close move as one block about their mean. */
export const spread = (places: readonly number[], pitch: number): readonly number[] => {
  const blocks: Block[] = [];
  for (const [index, place] of places.entries()) {
    let block: Block = { sum: place - index * pitch, count: 1 };
    for (
      let last = blocks.at(-1);
      last !== undefined && isPast(last, block);
      last = blocks.at(-1)
    ) {
      block = { sum: last.sum + block.sum, count: last.count + block.count };
      blocks.pop();
    }
    blocks.push(block);
  }
  return blocks
    .flatMap(({ sum, count }) => Array.from({ length: count }, () => sum / count))
    .map((base, index) => base + index * pitch);
};

const isPast = (before: Block, after: Block): boolean =>
  before.sum / before.count > after.sum / after.count;
