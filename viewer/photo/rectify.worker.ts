// Decodes a picture and draws it straight, beside the page: tens of millions of pixels take seconds. The last picture is
// kept, so that moving a mark does not decode it again.

import { reasonWords } from "../../src/diagnostics/reason-words.ts";
import { inverted } from "../../src/geometry/homography.ts";
import type { StraightReply, StraightRequest } from "./photo-messages.ts";
import { type Pixels, pixelsAMillimetre, rectified } from "./rectify.ts";

let kept: { readonly of: string; readonly pixels: Pixels } | null = null;

self.addEventListener("message", async ({ data }: MessageEvent<StraightRequest>) => {
  self.postMessage(await straight(data));
});

async function straight({ number, key, blob, map, box }: StraightRequest): Promise<StraightReply> {
  try {
    if (kept?.of !== key) kept = { of: key, pixels: await decoded(blob) };
    const toPicture = inverted(map);
    const perMm = pixelsAMillimetre(toPicture, box);
    const { data, width, height } = rectified(kept.pixels, { toPicture, box, perMm });
    const canvas = new OffscreenCanvas(width, height);
    canvas.getContext("2d")?.putImageData(new ImageData(data, width, height), 0, 0);
    return { kind: "straight", number, blob: await canvas.convertToBlob(), box, perMm };
  } catch (reason) {
    return { kind: "failed", number, why: reasonWords(reason) };
  }
}

/** As the browser shows it, upright. */
async function decoded(blob: Blob): Promise<Pixels> {
  const bitmap = await createImageBitmap(blob, { imageOrientation: "from-image" });
  const { width, height } = bitmap;
  if (width * height > MOST_PICTURE_PIXELS)
    throw new Error(`it has ${width} by ${height} pixels; save it at half the size`);
  const canvas = new OffscreenCanvas(width, height);
  const context = canvas.getContext("2d", { willReadFrequently: true });
  if (context === null) throw new Error("the browser draws no pictures in a worker");
  context.drawImage(bitmap, 0, 0);
  bitmap.close();
  return { data: context.getImageData(0, 0, width, height).data, width, height };
}

/** Four bytes each: 240 MB. */
const MOST_PICTURE_PIXELS = 60e6;
