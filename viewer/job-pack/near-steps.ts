// How near a drawing is seen, in steps, and where its frame is scrolled to so that one place of it stays where it was.

/** Three steps double it. */
const STEP = 2 ** (1 / 3);
/** A tenth of a millimetre of paint on a panel as wide as the frame is then two or three pixels and more. */
const STEPS = 15;

/** `direction`: 1 nearer, -1 farther, 0 all of it. */
export const stepped = (times: number, direction: -1 | 0 | 1): number =>
  direction === 0 ? 1 : STEP ** Math.max(0, Math.min(STEPS, stepOf(times) + direction));

export const isNearest = (times: number): boolean => stepOf(times) === STEPS;

const stepOf = (times: number): number => Math.round(Math.log(times) / Math.log(STEP));

export interface Held {
  /** In the frame, from its upper left corner. */
  readonly x: number;
  readonly y: number;
  /** How far the frame was scrolled. */
  readonly left: number;
  readonly top: number;
  /** By how much the drawing has grown. */
  readonly by: number;
}

export const scrolledTo = ({ x, y, left, top, by }: Held): { left: number; top: number } => ({
  left: Math.max(0, (left + x) * by - x),
  top: Math.max(0, (top + y) * by - y),
});
