// The worker that looks for the free place of many copies: of a hundred among two hundred it takes seconds, and the page stays at
// hand meanwhile.

import { freePlace } from "./free-place.ts";
import type { PlaceSearch } from "./place-search.ts";

self.addEventListener("message", ({ data: { ids, layout, step } }: MessageEvent<PlaceSearch>) =>
  self.postMessage(freePlace(ids, layout, step)),
);
