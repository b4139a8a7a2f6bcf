// What is wrong with a JPEG picture behind its head: segments and scans that end before the marker of the end (ITU-T T.81, B.1.1 and
// B.2.1). Only that is looked for: coded data have no check of their own.

/** null where nothing is wrong, and for pictures of other formats. */
export const jpegDamage = (bytes: Uint8Array): string | null =>
  bytes[0] === MARK && bytes[1] === START ? damageOf(bytes) : null;

/** T.81, table B.1: what every marker begins with; start and end of the picture, start of a scan. */
const [MARK, START, END, SCAN] = [0xff, 0xd8, 0xd9, 0xda];

/** T.81, B.1.1.5: FF of coded data is followed by a zero. B.1.1.2: FF may fill before any marker. */
const [STUFFED, FILL] = [0, 0xff];

/** T.81, table B.1: intervals of a scan end with these, and its data go on behind them. */
const isRestart = (marker: number): boolean => marker >= 0xd0 && marker <= 0xd7;

const damageOf = (bytes: Uint8Array): string | null => {
  let at = 2;
  while (at < bytes.length) {
    if (bytes[at] !== MARK)
      return `its data are altered from byte ${at} on: no marker stands there`;
    const marker = bytes[at + 1];
    if (marker === FILL) at += 1;
    else if (marker === END) return null;
    else {
      const behind = at + 2 + lengthAt(bytes, at + 2);
      at = marker === SCAN ? scanEnd(bytes, behind) : behind;
    }
  }
  return `it is cut off: it has ${bytes.length} bytes, and the mark of its end (FF D9) is not among them`;
};

/** Of a segment, its own two bytes counted; so long at least that the search goes on where it says less. */
const lengthAt = (bytes: Uint8Array, at: number): number =>
  Math.max(2, (bytes[at] ?? 0) * 256 + (bytes[at + 1] ?? 0));

/** The next marker that is none of the scan's own. */
const scanEnd = (bytes: Uint8Array, from: number): number => {
  let at = bytes.indexOf(MARK, from);
  while (at >= 0) {
    const next = bytes[at + 1] ?? FILL;
    if (next !== STUFFED && next !== FILL && !isRestart(next)) return at;
    at = bytes.indexOf(MARK, at + 1);
  }
  return bytes.length;
};
