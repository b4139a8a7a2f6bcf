// The photograph under the drawing, straight and to scale, between the face and what is drawn on it.

import type { JSX } from "preact";
import { extentHeight, extentWidth } from "../../src/geometry/extent.ts";
import { isPhotoShown, photoStrength, straight } from "./photo-state.ts";

export function PhotoUnder(): JSX.Element | null {
  const shown = straight.value;
  if (shown === null || !isPhotoShown.value) return null;
  const { address, box } = shown;
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
    />
  );
}
