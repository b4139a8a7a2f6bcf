// A picture chosen for the open panel: kept beside the design's texts and laid under the drawing.

import { MOST_PICTURE_BYTES } from "../../src/design/file-caps.ts";
import { photoFile, photoWritten } from "../../src/design/photo-edit.ts";
import { resolveInclude } from "../../src/design/resolve-include.ts";
import { addBinary, panel } from "../desk.ts";
import { store } from "../files/stored-state.ts";
import { say, unit } from "../panel/board.ts";
import { firstMarks, NO_CORNERS } from "./known-marks.ts";
import { panelCorners } from "./panel-corners.ts";
import { photo } from "./photo-state.ts";
import { photoStep } from "./photo-step.ts";

/** Laid under the panel that is open now, whichever is open when it has been read. */
export async function choosePicture(file: File): Promise<void> {
  const on = panel.value;
  if (on === null) return;
  if (file.size > MOST_PICTURE_BYTES) {
    say(`${file.name} has more than ${MOST_PICTURE_BYTES / 1e6} million bytes; save it smaller.`);
    return;
  }
  const resolved = resolveInclude(on.design.file, file.name);
  if (resolved.kind === "refused") {
    say(`${file.name} can't be used: ${resolved.why}.`);
    return;
  }
  const corners = panelCorners();
  const isFirst = photo.value === null;
  if (isFirst && corners === null) {
    say(`${file.name} is not laid under: ${NO_CORNERS}.`);
    return;
  }
  const size = await sizeOf(file);
  if (size === null) {
    say(`${file.name} can't be shown: it is no picture, or a damaged one.`);
    return;
  }
  const bytes = new Uint8Array(await file.arrayBuffer());
  if (hasChanged(on.file, isFirst)) {
    say(
      `${file.name} is not laid under: another panel, or another photograph, was opened meanwhile.`,
    );
    return;
  }
  const kept = (await store.value?.keepPicture(resolved.path, bytes)) ?? { kind: "kept" };
  if (kept.kind === "refused") {
    say(`Not kept: ${kept.why}.`);
    return;
  }
  if (hasChanged(on.file, isFirst)) {
    say(
      `${resolved.path} is kept and not laid under: another panel, or another photograph, was opened meanwhile.`,
    );
    return;
  }
  addBinary(resolved.path, bytes);
  const done = photoStep(
    (from) =>
      isFirst && corners !== null
        ? photoWritten(from, { file: file.name, marks: firstMarks(size, corners) }, unit.value)
        : photoFile(from, file.name),
    `lay ${file.name} under the panel`,
  );
  if (done && isFirst) say("Now set the four marks on the corners of the panel.");
}

const hasChanged = (file: string, isFirst: boolean): boolean =>
  panel.value?.file !== file || (photo.value === null) !== isFirst;

async function sizeOf(file: File): Promise<{ width: number; height: number } | null> {
  try {
    const bitmap = await createImageBitmap(file, { imageOrientation: "from-image" });
    const { width, height } = bitmap;
    bitmap.close();
    return { width, height };
  } catch {
    return null;
  }
}
