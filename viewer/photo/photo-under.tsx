// The photograph under the drawing, straight and to scale, between the face and what is drawn on it.

import type { JSX } from "preact";
import { extentHeight, extentWidth } from "../../src/geometry/extent.ts";
import { isPhotoShown, marks, type PaperPlace, photoStrength, straight } from "./photo-state.ts";

export function PhotoUnder(): JSX.Element | null {
  const shown = straight.value;
  if (shown === null || !isPhotoShown.value) return null;
  const { address, box, paper } = shown;
  const now = marks.value;
  const motion = paper !== null && now?.kind === "sheet" ? motionOf(paper, now.sheet) : null;
  return (
    <image
      class="photo-under"
      href={address}
      x={box.minX}
      y={-box.maxY}
      width={extentWidth(box)}
      height={extentHeight(box)}
      opacity={photoStrength.value}
      preserveAspectRatio="none"
      {...(motion === null ? {} : { transform: motion })}
    />
  );
}

/** Until it is drawn anew it goes along with the sheet of paper: turned about its corner, then shifted. */
function motionOf(before: PaperPlace, now: PaperPlace): string | null {
  const turn = now.turn - before.turn;
  const [x, y] = [now.at.x - before.at.x, now.at.y - before.at.y];
  if (turn === 0 && x === 0 && y === 0) return null;
  return `translate(${x} ${-y}) rotate(${-turn} ${before.at.x} ${-before.at.y})`;
}
