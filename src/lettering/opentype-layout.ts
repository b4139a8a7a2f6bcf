// The two small tables that every OpenType layout lookup leans on: coverage and class definition.
// (OpenType 1.9, "OpenType Layout Common Table Formats".) Both are sorted, so both are searched by halving.

/** A glyph's place in a coverage table; -1 where the table does not cover it. */
export const coverageIndex = (view: DataView, coverage: number, glyph: number): number => {
  const count = view.getUint16(coverage + 2);
  if (view.getUint16(coverage) === 1) {
    const index = lastAtOrBelow(view, { start: coverage + 4, size: 2, count }, glyph);
    return index >= 0 && view.getUint16(coverage + 4 + 2 * index) === glyph ? index : -1;
  }
  const index = lastAtOrBelow(view, { start: coverage + 4, size: 6, count }, glyph);
  if (index < 0) return -1;
  const range = coverage + 4 + 6 * index;
  if (glyph > view.getUint16(range + 2)) return -1;
  return view.getUint16(range + 4) + glyph - view.getUint16(range);
};

/** A glyph's class; 0 for every glyph that the table does not name. */
export const glyphClass = (view: DataView, definition: number, glyph: number): number => {
  if (view.getUint16(definition) === 1) {
    const offset = glyph - view.getUint16(definition + 2);
    const isListed = offset >= 0 && offset < view.getUint16(definition + 4);
    return isListed ? view.getUint16(definition + 6 + 2 * offset) : 0;
  }
  const count = view.getUint16(definition + 2);
  const index = lastAtOrBelow(view, { start: definition + 4, size: 6, count }, glyph);
  if (index < 0) return 0;
  const range = definition + 4 + 6 * index;
  return glyph <= view.getUint16(range + 2) ? view.getUint16(range + 4) : 0;
};

interface Records {
  readonly start: number;
  readonly size: number;
  readonly count: number;
}

/** Index of the last record whose first field is not above the glyph; -1 where all are. */
const lastAtOrBelow = (view: DataView, records: Records, glyph: number): number => {
  let low = 0;
  let high = records.count - 1;
  while (low <= high) {
    const middle = (low + high) >> 1;
    if (view.getUint16(records.start + middle * records.size) <= glyph) low = middle + 1;
    else high = middle - 1;
  }
  return high;
};
