// Keeps the picture and its straight view in step with the design: bytes become an address in the page, marks become the
// view under the drawing, which the worker draws. Started once, when the first photograph is looked at.

import { effect } from "@preact/signals";
import { type Extent, grownExtent } from "../../src/geometry/extent.ts";
import type { Homography } from "../../src/geometry/homography.ts";
import { panel } from "../desk.ts";
import type { StraightReply, StraightRequest } from "./photo-messages.ts";
import {
  isPhotoShown,
  markInHand,
  marks,
  type PaperPlace,
  type Picture,
  paperInHand,
  photo,
  photoBytes,
  photoPath,
  picture,
  pictureTrouble,
  plane,
  straight,
  straightTrouble,
} from "./photo-state.ts";

export function keepPicture(): void {
  effect(() => void open(photoBytes.value, photoPath.value));
  effect(() => {
    const [shown, now, layout] = [picture.value, plane.value, panel.value?.layout ?? null];
    if (photo.value === null || shown === null || layout === null || now?.kind !== "plane")
      show(null);
    else if (isPhotoShown.value && markInHand.value === null && paperInHand.value === null)
      ask(shown, now.map, grownExtent(layout.nominal, MARGIN));
  });
}

/** Of the picture that is seen round the panel, mm. */
const MARGIN = 15;

let opened: Uint8Array | null = null;
let count = 0;

async function open(bytes: Uint8Array | null, path: string | null): Promise<void> {
  if (bytes === opened) return;
  opened = bytes;
  const before = picture.peek();
  picture.value = null;
  pictureTrouble.value = null;
  straightTrouble.value = null;
  if (before !== null) forget(before.address);
  if (bytes === null) return;
  count += 1;
  const blob = new Blob([new Uint8Array(bytes)], { type: typeOf(path ?? "") });
  const address = URL.createObjectURL(blob);
  const image = new Image();
  image.src = address;
  try {
    await image.decode();
    if (opened !== bytes) {
      URL.revokeObjectURL(address);
      return;
    }
    const { naturalWidth: width, naturalHeight: height } = image;
    picture.value = { key: `picture ${count}`, blob, address, width, height };
  } catch {
    if (opened === bytes) pictureTrouble.value = "the browser can't show it";
    URL.revokeObjectURL(address);
  }
}

/** Once nothing that shows it can still be loading it. */
const forget = (address: string): void => {
  setTimeout(() => URL.revokeObjectURL(address), KEPT_MS);
};

const KEPT_MS = 10_000;

const typeOf = (path: string): string =>
  /\.png$/i.test(path) ? "image/png" : /\.webp$/i.test(path) ? "image/webp" : "image/jpeg";

let worker: Worker | null = null;
/** What the worker draws now, and what it is to draw next: of marks that move on only the newest. */
let drawing: StraightRequest | null = null;
let waiting: StraightRequest | null = null;
let latest = 0;
let asked = "";
/** Where the sheet of paper lies by the newest of them. */
let paper: PaperPlace | null = null;

function ask({ key, blob }: Picture, map: Homography, box: Extent): void {
  const wanted = JSON.stringify([key, map, box]);
  if (wanted === asked) return;
  asked = wanted;
  latest += 1;
  const now = marks.peek();
  paper = now?.kind === "sheet" ? now.sheet : null;
  waiting = { number: latest, key, blob, map, box };
  if (drawing === null) askNext();
}

function askNext(): void {
  drawing = waiting;
  waiting = null;
  if (drawing === null) return;
  worker ??= started();
  worker.postMessage(drawing);
}

function started(): Worker {
  const made = new Worker(new URL("./rectify.worker.ts", import.meta.url), { type: "module" });
  made.addEventListener("message", ({ data }: MessageEvent<StraightReply>) => {
    askNext();
    // Only the newest answer counts.
    if (data.number !== latest || asked === "") return;
    if (data.kind === "failed") {
      fail(data.why);
      return;
    }
    show(data);
  });
  // What was being drawn gets no answer any more: the next is asked of a new worker.
  made.addEventListener("error", () => {
    made.terminate();
    if (worker !== made) return;
    worker = null;
    fail("drawing it straight stopped; move a mark to try again");
    askNext();
  });
  return made;
}

/** The old view would be that of other marks; the next change is asked anew. */
function fail(why: string): void {
  show(null);
  straightTrouble.value = why;
}

function show(data: Extract<StraightReply, { readonly kind: "straight" }> | null): void {
  const before = straight.peek();
  straightTrouble.value = null;
  if (data === null) asked = "";
  straight.value =
    data === null
      ? null
      : { address: URL.createObjectURL(data.blob), box: data.box, perMm: data.perMm, paper };
  if (before !== null) forget(before.address);
}
