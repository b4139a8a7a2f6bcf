// What is wrong with a PNG picture behind its head: chunks that end before their length, that don't answer their check, or an
// end that is missing (W3C PNG, 5.3 and 5.6). A browser shows such a picture in part or not at all. Nothing is decoded.

/** null where nothing is wrong, and for pictures of other formats. A clause: "it is cut off ...". */
export const pngDamage = (bytes: Uint8Array): string | null =>
  isPng(bytes) ? damageOf(bytes) : null;

const SIGNATURE = [0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a];
/** Length and name before the contents of a chunk, its check behind them. */
const [HEAD, CHECK] = [8, 4];

const isPng = (bytes: Uint8Array): boolean =>
  SIGNATURE.every((value, index) => bytes[index] === value);

const damageOf = (bytes: Uint8Array): string | null => {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  for (let at = SIGNATURE.length; ; ) {
    if (at + HEAD > bytes.length) return cutOff(bytes.length, at + HEAD + CHECK);
    const end = at + HEAD + view.getUint32(at);
    if (end + CHECK > bytes.length) return cutOff(bytes.length, end + CHECK);
    const name = nameAt(bytes, at + 4);
    if (checkOf(bytes, at + 4, end) !== view.getUint32(end))
      return `its data do not agree with their check from byte ${at} on (chunk ${name})`;
    if (name === "IEND") return null;
    at = end + CHECK;
  }
};

const cutOff = (has: number, wanted: number): string =>
  `it is cut off: it has ${has} bytes, and what is begun in it goes on to byte ${wanted} at least`;

/** Letters alone make a name (W3C PNG, 5.3); whatever else stands there is not repeated. */
const nameAt = (bytes: Uint8Array, at: number): string => {
  const name = String.fromCharCode(...bytes.subarray(at, at + 4));
  return /^[A-Za-z]{4}$/.test(name) ? name : "without a name";
};

/** Over name and contents; the polynomial and its reflected form are W3C PNG's, annex D. */
const checkOf = (bytes: Uint8Array, from: number, to: number): number => {
  let rest = 0xffffffff;
  for (let at = from; at < to; at += 1)
    rest = (rest >>> 8) ^ (TABLE[(rest ^ (bytes[at] ?? 0)) & 0xff] ?? 0);
  return (rest ^ 0xffffffff) >>> 0;
};

const TABLE = Uint32Array.from({ length: 256 }, (_, index) => {
  let rest = index;
  for (let bit = 0; bit < 8; bit += 1) rest = rest & 1 ? (rest >>> 1) ^ 0xedb88320 : rest >>> 1;
  return rest;
});
