// The scales that a drawing of a console may have: the standard ones, the largest first, from the one at which what is drawn
// could fit its room. Takes sizes in millimetres; gives 10 for 1:10.

/** ISO 5455:1979, reduction scales. */
const SCALES = [2, 5, 10, 20, 50, 100, 200, 500] as const;

export interface PaperRoom {
  readonly width: number;
  readonly height: number;
}

/** Upright or turned. The last is always there: what is larger still is drawn on several pages. */
export const possibleScales = (size: PaperRoom, room: PaperRoom): readonly number[] => {
  const fitting = SCALES.filter((scale) =>
    isFitting({ width: size.width / scale, height: size.height / scale }, room),
  );
  return fitting.length === 0 ? [500] : fitting;
};

export const isFitting = (size: PaperRoom, room: PaperRoom): boolean =>
  (size.width <= room.width && size.height <= room.height) ||
  (size.width <= room.height && size.height <= room.width);
