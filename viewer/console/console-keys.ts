// The picture by keys: arrows turn, with shift they shift, plus and minus near it; moving panels they carry the chosen one
// along its rail; measuring, Enter takes what lies under the cross in the middle.

import { type CameraGoal, nearedGoal, shiftedGoal, turnedGoal } from "./camera-goal.ts";
import type { ConsolePicture, ScreenPoint } from "./console-picture.ts";
import { hand, look } from "./console-state.ts";
import { cancelDrag, nudge, settleDrag } from "./panel-drag.ts";

export interface KeyHands {
  readonly picture: ConsolePicture;
  readonly take: (at: ScreenPoint) => void;
  readonly signal: AbortSignal;
}

export const hearKeys = (canvas: HTMLCanvasElement, { picture, take, signal }: KeyHands): void => {
  // The stage round the canvas has the focus and the name.
  canvas.parentElement?.addEventListener(
    "keydown",
    (event) => {
      if (event.ctrlKey || event.metaKey || event.altKey) return;
      const isTaking = event.key === "Enter" && hand.value === "measure";
      if (isTaking) take({ x: canvas.clientWidth / 2, y: canvas.clientHeight / 2 });
      if (isTaking || movedByKey(event.key) || turnedByKey(event, picture)) event.preventDefault();
    },
    { signal },
  );
};

const STEPS: Readonly<Record<string, { readonly right: number; readonly up: number }>> = {
  ArrowLeft: { right: -1, up: 0 },
  ArrowRight: { right: 1, up: 0 },
  ArrowUp: { right: 0, up: 1 },
  ArrowDown: { right: 0, up: -1 },
};

/** The chosen panel: a module for an arrow, Enter settles, Escape puts it back. */
export const movedByKey = (key: string): boolean => {
  const panel = look.value.chosen;
  if (hand.value !== "move" || panel === null) return false;
  const step = STEPS[key];
  if (step !== undefined) nudge(panel, step.right + step.up);
  else if (key === "Enter") void settleDrag();
  else if (key === "Escape") cancelDrag();
  else return false;
  return true;
};

/** Degrees, and shares of the distance. */
const TURN = 10;
const SHIFT = 0.06;
const NEAR = 0.85;

const turnedByKey = (event: KeyboardEvent, picture: ConsolePicture): boolean => {
  const next = goalByKey(event, picture.goal());
  if (next === null) return false;
  picture.goTo(next);
  return true;
};

const goalByKey = ({ key, shiftKey }: KeyboardEvent, goal: CameraGoal): CameraGoal | null => {
  const step = STEPS[key];
  if (step !== undefined)
    return shiftKey
      ? shiftedGoal(goal, { right: step.right * SHIFT, up: step.up * SHIFT })
      : turnedGoal(goal, { side: step.right * TURN, rise: step.up * TURN });
  if (key === "+" || key === "=") return nearedGoal(goal, NEAR);
  if (key === "-") return nearedGoal(goal, 1 / NEAR);
  return null;
};
