// Goldens of the exported files: the text as reviewed. `UPDATE_GOLDENS=1` writes them; under CI nothing is written and a
// missing one fails. Each golden stands beside an independent check: it proves "unchanged", not "right".

import { existsSync, readFileSync, writeFileSync } from "node:fs";
import { expect } from "vitest";

/** Every golden there is; a file in the folder that is not named here is an orphan and fails. */
export const GOLDENS = [
  "crossing.pdf.txt",
  "crossing.svg",
  "plate-face.dxf",
  "plate-face.front.svg",
  "plate-face.r12.dxf",
  "plate-face.rear.svg",
] as const;

export const GOLDEN_FOLDER = new URL("./golden/", import.meta.url);

/** Larger files are not reviewed by anybody. */
const LARGEST = 20 * 1024;

export const expectGolden = (name: (typeof GOLDENS)[number], text: string): void => {
  const file = new URL(name, GOLDEN_FOLDER);
  expect(text.length, `${name} is small enough to review`).toBeLessThanOrEqual(LARGEST);
  if (process.env["UPDATE_GOLDENS"] === "1" && process.env["CI"] === undefined)
    writeFileSync(file, text);
  expect(existsSync(file), `${name} exists`).toBe(true);
  expect(text).toBe(readFileSync(file, "utf8"));
};
