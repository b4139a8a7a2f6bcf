// A panel to be copied, its photograph at 25 degrees, and the page with both before it: for tests that mark it, lay it under
// and measure what is seen there in the page.

import { writeFileSync } from "node:fs";
import { join, resolve } from "node:path";
import type { Browser, Locator, Page } from "playwright-core";
import { afterAll, beforeAll, expect, onTestFinished } from "vitest";
import { launchBrowser } from "./browser.ts";
import { complaintsOf } from "./complaints.ts";
import { type DeskDesign, layDesign } from "./desk-page.ts";
import { isRead } from "./panel-bench.ts";
import { darkMiddle, type Panel, panelPhotograph, pngOf, type Seen } from "./panel-photograph.ts";

const PAGE = resolve(import.meta.dirname, "../../dist/viewer");

/** Screwed down at its corners, so that its finished outline is the one that is written. */
export const TEXT = `consolewright: 1
kind: panel
name: old
title: Old panel
mount: corner-screws
width: 140 mm
height: 90 mm
stack: [{ layer: face, sheet: aluminium-2 }]
components:
  main: { part: toggle-6, at: { x: 100 mm, y: 30 mm } }   # to be moved onto its hole
`;

export const OLD: Panel = {
  width: 140,
  height: 90,
  holes: [
    { x: 30, y: 25, radius: 6 },
    { x: 112, y: 22.5, radius: 3 },
    { x: 70, y: 45, radius: 8 },
    { x: 24.3, y: 70, radius: 3 },
    { x: 118, y: 68, radius: 6 },
  ],
};

export const PHOTOGRAPH = panelPhotograph(OLD, {
  slant: 25,
  distance: 500,
  roll: 4,
  focal: 2.8,
  width: 1200,
  height: 900,
});
export const PNG = pngOf(PHOTOGRAPH);

const CORNERS = [
  [0, 0],
  [OLD.width, 0],
  [OLD.width, OLD.height],
  [0, OLD.height],
] as const;

/** The same with a photograph that has been marked on its four corners already. */
export const MARKED = `${TEXT}photo:
  file: old.png
  points:
${CORNERS.map(([x, y]) => {
  const seen = PHOTOGRAPH.seen(x, y);
  return `    - { in-picture: [${seen.x.toFixed(1)}, ${seen.y.toFixed(1)}], on-panel: [${x} mm, ${y} mm] }\n`;
}).join("")}`;

export interface PhotoBench {
  readonly page: Page;
  readonly design: DeskDesign;
  readonly complaints: readonly string[];
}

/**
 * For the tests of a file: a browser that lasts as long as they, and in it the page with a design of one panel, cleared away when
 * its test is over. The panel's text may name old.png: it is there.
 */
export function photoBenches(): (text: string) => Promise<PhotoBench> {
  let browser: Browser | undefined;
  beforeAll(async () => {
    browser = await launchBrowser();
  });
  afterAll(() => browser?.close());
  return (text) => {
    if (browser === undefined) throw new Error("the browser has not been started");
    return photoBench(browser, text);
  };
}

async function photoBench(browser: Browser, text: string): Promise<PhotoBench> {
  const design = layDesign({ entry: "panel.yaml", files: { "panel.yaml": text } });
  if (text.includes("old.png")) writeFileSync(join(design.folder, "old.png"), PNG);
  const server = await design.serve(PAGE);
  const page = await browser.newPage({ viewport: { width: 1500, height: 1000 } });
  const complaints = complaintsOf(page);
  onTestFinished(async () => {
    await page.close();
    await server.close();
    design.remove();
  });
  await page.goto(server.address);
  await sheetOf(page).waitFor();
  await isRead(page);
  return { page, design, complaints };
}

export const sheetOf = (page: Page): Locator =>
  page.getByRole("application", { name: /from the front/ });

export const pictureOf = (page: Page): Locator =>
  page.getByRole("application", { name: "The photograph, 1200 by 900 pixels" });

/** Once it has been read. */
export async function textOf(page: Page): Promise<string> {
  await isRead(page);
  return page.getByRole("textbox", { name: "Text of panel.yaml" }).inputValue();
}

export async function openDrawer(page: Page): Promise<void> {
  await page.getByRole("button", { name: "Photograph", exact: true }).click();
  await pictureOf(page).waitFor();
}

export async function choosePicture(page: Page): Promise<void> {
  await page.getByRole("button", { name: "Photograph", exact: true }).click();
  await page
    .getByLabel(/Choose a picture|Another picture/)
    .setInputFiles({ name: "old panel.png", mimeType: "image/png", buffer: PNG });
  await pictureOf(page).waitFor();
}

/** Sets a mark by its two numbers of pixels. */
export async function typeMark(page: Page, index: number, x: number, y: number): Promise<void> {
  for (const [name, value] of [
    ["across", x],
    ["down", y],
  ] as const) {
    await fill(page, `Point ${index + 1}, pixels ${name}`, value.toFixed(1));
    const field = page.getByLabel(`Point ${index + 1}, pixels ${name}`);
    await expect.poll(async () => Number(await field.inputValue())).toBe(Number(value.toFixed(1)));
  }
  await expect
    .poll(() => textOf(page))
    .toContain(`[${Number(x.toFixed(1))}, ${Number(y.toFixed(1))}]`);
}

/** Writes into a field and waits until it is read: the next edit is made on its text. */
export async function fill(page: Page, label: string, words: string): Promise<void> {
  const field = page.getByLabel(label, { exact: true });
  await field.fill(words);
  await field.press("Enter");
  await isRead(page);
}

export async function markCorners(page: Page): Promise<void> {
  for (const [index, [x, y]] of CORNERS.entries()) {
    const seen = PHOTOGRAPH.seen(x, y);
    await typeMark(page, index, seen.x, seen.y);
  }
}

interface Piece extends Seen {
  /** Where the hole should be, in pixels of the piece; pixels a millimetre. */
  readonly about: { readonly x: number; readonly y: number };
  readonly perMm: number;
}

/** Of the picture under the drawing what lies about each hole, by the millimetres that the drawing gives it (y down). */
async function piecesIn(page: Page): Promise<readonly Piece[]> {
  const pieces = await page.locator(".photo-under").evaluate(piecesOf, OLD.holes);
  return pieces.map((piece) => ({ ...piece, data: [...Buffer.from(piece.data, "latin1")] }));
}

/** In the page. The pixels come as one word: as a million numbers they take the browser's line a quarter of a minute, where it is busy. */
async function piecesOf(under: SVGImageElement, holes: Panel["holes"]) {
  const image = new Image();
  image.src = under.href.baseVal;
  await image.decode();
  const { naturalWidth, naturalHeight } = image;
  const context = new OffscreenCanvas(naturalWidth, naturalHeight).getContext("2d", {
    willReadFrequently: true,
  });
  context?.drawImage(image, 0, 0);
  const perMm = naturalWidth / under.width.baseVal.value;
  const down = naturalHeight / under.height.baseVal.value;
  return holes.map(({ x, y, radius }) => {
    const middle = {
      x: (x - under.x.baseVal.value) * perMm,
      y: (-y - under.y.baseVal.value) * down,
    };
    const reach = Math.ceil((radius + 2) * perMm);
    const [left, top] = [Math.floor(middle.x) - reach, Math.floor(middle.y) - reach];
    const size = 2 * reach + 1;
    const pixels = context?.getImageData(left, top, size, size).data ?? [];
    const data = Array.from(pixels, (value) => String.fromCharCode(value)).join("");
    const about = { x: middle.x - left, y: middle.y - top };
    return { width: size, height: size, data, about, perMm };
  });
}

/** How far the hole lies that is farthest from where the panel has it, mm. */
export const worstError = async (page: Page): Promise<number> => {
  const pieces = await piecesIn(page);
  return Math.max(
    ...pieces.map((piece) => {
      const found = darkMiddle(piece, piece.about, piece.width);
      return Math.hypot(found.x - piece.about.x, found.y - piece.about.y) / piece.perMm;
    }),
  );
};
