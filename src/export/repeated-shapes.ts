// Shapes that a drawing shows more than once, letters above all, are written once and placed wherever they stand:
// a page of words is a tenth as long. Takes what each shape is drawn with, gives a name for each that is worth one.

/** By the shape's own data, in the order in which each was met for the second time. */
export type ShapeNames = ReadonlyMap<string, string>;

/** Below this many characters a shape is shorter than the words that would place it. */
const SHORTEST = 100;

export const repeatedShapes = (shapes: readonly string[], prefix: string): ShapeNames => {
  const seen = new Set<string>();
  const names = new Map<string, string>();
  for (const shape of shapes) {
    if (shape.length < SHORTEST) continue;
    if (seen.has(shape) && !names.has(shape)) names.set(shape, `${prefix}${names.size + 1}`);
    seen.add(shape);
  }
  return names;
};
