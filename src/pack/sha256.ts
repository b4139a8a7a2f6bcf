// SHA-256 of bytes, as 64 hexadecimal digits. Written out here because a pack is made in a page as well
// as on the command line, and the page's own digest is asynchronous; checked against FIPS 180-4's examples.

const BLOCK = 64;

// FIPS 180-4, 4.2.2 and 5.3.3: fractional parts of the cube and square roots of the first primes.
// Worked out exactly in integers, so that no table of 72 numbers can hold a typing error.
const ROUND_WORDS = 64;
const STATE_WORDS = 8;

export const sha256 = (bytes: Uint8Array): string => {
  const state = Int32Array.from(startState);
  const schedule = new Int32Array(ROUND_WORDS);
  const padded = paddedMessage(bytes);
  for (let offset = 0; offset < padded.length; offset += BLOCK) {
    fillSchedule(schedule, padded, offset);
    compress(state, schedule);
  }
  return Array.from(state, (word) => (word >>> 0).toString(16).padStart(8, "0")).join("");
};

/** The message, a one bit, zeros, and its length in bits as 64 bits (FIPS 180-4, 5.1.1). */
const paddedMessage = (bytes: Uint8Array): Uint8Array => {
  const length = Math.ceil((bytes.length + 9) / BLOCK) * BLOCK;
  const padded = new Uint8Array(length);
  padded.set(bytes);
  padded[bytes.length] = 0x80;
  const view = new DataView(padded.buffer);
  view.setUint32(length - 8, Math.floor(bytes.length / 0x20000000));
  view.setUint32(length - 4, (bytes.length << 3) >>> 0);
  return padded;
};

const turned = (word: number, places: number): number =>
  (word >>> places) | (word << (32 - places));

/** FIPS 180-4, 6.2.2 step 1. Words are kept as signed integers: sums stay in whole numbers that a processor adds at once. */
const fillSchedule = (schedule: Int32Array, message: Uint8Array, offset: number): void => {
  for (let index = 0, at = offset; index < 16; index += 1, at += 4)
    schedule[index] =
      (message[at]! << 24) | (message[at + 1]! << 16) | (message[at + 2]! << 8) | message[at + 3]!;
  for (let index = 16; index < ROUND_WORDS; index += 1) {
    const early = schedule[index - 15]!;
    const late = schedule[index - 2]!;
    const small0 = turned(early, 7) ^ turned(early, 18) ^ (early >>> 3);
    const small1 = turned(late, 17) ^ turned(late, 19) ^ (late >>> 10);
    const sum = (small1 + schedule[index - 7]!) | 0;
    schedule[index] = (((sum + small0) | 0) + schedule[index - 16]!) | 0;
  }
};

/** FIPS 180-4, 6.2.2 steps 2 to 4. */
const compress = (state: Int32Array, schedule: Int32Array): void => {
  let a = state[0]!;
  let b = state[1]!;
  let c = state[2]!;
  let d = state[3]!;
  let e = state[4]!;
  let f = state[5]!;
  let g = state[6]!;
  let h = state[7]!;
  for (let round = 0; round < ROUND_WORDS; round += 1) {
    const big1 = turned(e, 6) ^ turned(e, 11) ^ turned(e, 25);
    const choice = (e & f) ^ (~e & g);
    const word = (roundWords[round]! + schedule[round]!) | 0;
    const first = (((((h + big1) | 0) + choice) | 0) + word) | 0;
    const big0 = turned(a, 2) ^ turned(a, 13) ^ turned(a, 22);
    const majority = (a & b) ^ (a & c) ^ (b & c);
    h = g;
    g = f;
    f = e;
    e = (d + first) | 0;
    d = c;
    c = b;
    b = a;
    a = (first + ((big0 + majority) | 0)) | 0;
  }
  // The array keeps the low 32 bits of each sum.
  state[0]! += a;
  state[1]! += b;
  state[2]! += c;
  state[3]! += d;
  state[4]! += e;
  state[5]! += f;
  state[6]! += g;
  state[7]! += h;
};

/** The first 32 bits behind the point of the `root`-th root of `prime`. */
const rootBits = (prime: number, root: 2 | 3): number => {
  const shifted = BigInt(prime) << BigInt(32 * root);
  let low = 0n;
  let high = 1n << 40n;
  while (high - low > 1n) {
    const middle = (low + high) / 2n;
    if (middle ** BigInt(root) <= shifted) low = middle;
    else high = middle;
  }
  return Number(low & 0xffffffffn);
};

const firstPrimes = (count: number): readonly number[] => {
  const primes: number[] = [];
  for (let candidate = 2; primes.length < count; candidate++)
    if (primes.every((prime) => candidate % prime !== 0)) primes.push(candidate);
  return primes;
};

const primes = firstPrimes(ROUND_WORDS);
const roundWords = Int32Array.from(primes, (prime) => rootBits(prime, 3));
const startState = Int32Array.from(primes.slice(0, STATE_WORDS), (prime) => rootBits(prime, 2));
