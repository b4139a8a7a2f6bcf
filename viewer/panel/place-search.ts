// The search for the place of copies as the page asks for it: at once where it takes a blink, else in a worker that can be given up.

import { signal } from "@preact/signals";
import type { PanelLayout } from "../../src/layout/panel-layout.ts";
import { type FreePlace, freePlace, piecePairs } from "./free-place.ts";

export interface PlaceSearch {
  /** Instances. */
  readonly ids: ReadonlySet<string>;
  readonly layout: PanelLayout;
  readonly step: number;
}

export type Searched =
  | { readonly kind: "found"; readonly place: FreePlace | null }
  | { readonly kind: "given-up" };

/** Pairs of pieces that a page looks through in a blink: a million and a half, sixty lamps among 200, took 0.6 to 0.8 s. */
const AT_ONCE = 150_000;

export const isQuick = ({ ids, layout }: PlaceSearch): boolean =>
  piecePairs(ids, layout) <= AT_ONCE;

export const isSearching = signal(false);

let giveUp = (): void => {};

/** Ends a search that is under way. */
export const giveUpSearch = (): void => giveUp();

export function searchedAside(search: PlaceSearch): Promise<Searched> {
  const worker = new Worker(new URL("./free-place.worker.ts", import.meta.url), { type: "module" });
  isSearching.value = true;
  return new Promise((resolve) => {
    const end = (searched: Searched): void => {
      worker.terminate();
      giveUp = () => {};
      isSearching.value = false;
      resolve(searched);
    };
    giveUp = () => end({ kind: "given-up" });
    worker.addEventListener("message", ({ data }: MessageEvent<FreePlace | null>) =>
      end({ kind: "found", place: data }),
    );
    // Without its worker the page has to wait for itself.
    worker.addEventListener("error", () =>
      end({ kind: "found", place: freePlace(search.ids, search.layout, search.step) }),
    );
    worker.postMessage(search);
  });
}
