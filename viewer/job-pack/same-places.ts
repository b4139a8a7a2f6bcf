// Corners that lie in the same place as one: a model has its corners once for each face they belong to, and an edge between two
// of them is then none of a sheet. Takes three numbers a corner; gives for each the first that lies there.

export const samePlaces = (positions: Float32Array): Uint32Array => {
  const count = positions.length / 3;
  const first = new Uint32Array(count);
  const bits = new Int32Array(positions.buffer, positions.byteOffset, positions.length);
  // Open addressing in a table that is never more than half full. Numbers, not words: half a million of those take seconds.
  const room = 2 ** Math.ceil(Math.log2(2 * count + 2));
  const table = new Int32Array(room).fill(-1);
  for (let corner = 0; corner < count; corner += 1) {
    let slot = hashed(bits, corner) & (room - 1);
    for (;;) {
      const there = table[slot]!;
      if (there === -1) {
        table[slot] = corner;
        first[corner] = corner;
        break;
      }
      if (isSame(positions, there, corner)) {
        first[corner] = there;
        break;
      }
      slot = (slot + 1) & (room - 1);
    }
  }
  return first;
};

const isSame = (positions: Float32Array, one: number, other: number): boolean =>
  positions[3 * one] === positions[3 * other] &&
  positions[3 * one + 1] === positions[3 * other + 1] &&
  positions[3 * one + 2] === positions[3 * other + 2];

/** The sign of nothing, which makes two of one place. */
const MINUS_ZERO = 1 << 31;

/** An odd factor that spreads places of a grid: the golden ratio of 32 bits (Knuth, The Art of Computer Programming 3, 6.4). */
const hashed = (bits: Int32Array, corner: number): number => {
  let hash = 0;
  for (let axis = 0; axis < 3; axis += 1) {
    const word = bits[3 * corner + axis]!;
    hash = Math.imul(hash ^ (word === MINUS_ZERO ? 0 : word), 0x9e3779b1);
    hash ^= hash >>> 15;
  }
  return hash;
};
