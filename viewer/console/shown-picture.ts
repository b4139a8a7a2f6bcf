// The picture that is on the page, for those beside it who ask where its camera stands.

import { signal } from "@preact/signals";
import type { CameraGoal, Opening } from "./camera-goal.ts";
import type { ConsolePicture } from "./console-picture.ts";

export const shownPicture = signal<ConsolePicture | null>(null);

export interface CameraNow {
  readonly goal: CameraGoal;
  readonly distanceFor: (radius: number) => number;
  readonly opening: Opening;
}

/** null while there is no picture. */
export const cameraNow = (): CameraNow | null => {
  const picture = shownPicture.value;
  return picture === null
    ? null
    : {
        goal: picture.goal(),
        distanceFor: (radius) => picture.distanceFor(radius),
        opening: picture.opening(),
      };
};
