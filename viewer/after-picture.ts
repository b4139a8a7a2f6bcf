// What is not needed for the first picture and soon after it: fetched when the picture has stood for a moment.

import { effect } from "@preact/signals";
import { panels } from "./desk.ts";

/** What is fetched at once would come between the first picture and the line, ms. */
export const PICTURE_FIRST = 250;

export function afterPicture(act: () => void): void {
  let isBegun = false;
  effect(() => {
    if (isBegun || panels.value.length === 0) return;
    isBegun = true;
    // The frame after that which draws it.
    requestAnimationFrame(() => requestAnimationFrame(() => setTimeout(act, PICTURE_FIRST)));
  });
}
