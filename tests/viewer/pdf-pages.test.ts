// The page's reader of PDFs against the tests' own, which was written apart from it from the same standard: the same paths at the
// same places on paper of the same size. Whatever is no PDF of a pack is refused.

import { describe, expect, test } from "vitest";
import { pdfPages } from "../../viewer/job-pack/pdf-pages.ts";
import type { PaintedPage, PaintedShape } from "../../viewer/job-pack/pdf-paint.ts";
import { wholePumpPack } from "../pack/pump-panel.ts";
import { type PdfReadPage, readPdf } from "../support/pdf-reader.ts";

/** One with dimensions, dashes and clips, one with bars and tables: the others are written by the same functions. */
const READ = ["drawings/pumps-section.pdf", "template/pumps-face-front.pdf"];

const pdfs = (await wholePumpPack()).files.filter(({ path }) => READ.includes(path));

const UNTOLD = (): void => undefined;

/** x and y of every place of every path, y down. */
const placesOf = (shapes: readonly PaintedShape[]): readonly number[] =>
  shapes.flatMap(({ data }) => (data.match(/-?[\d.]+(?:e-?\d+)?/g) ?? []).map(Number));

const placesRead = ({ runs, height }: PdfReadPage): readonly number[] => {
  const paper = (height * 25.4) / 72;
  return runs
    .filter(({ painted }) => painted !== "n")
    .flatMap(({ pieces }) => {
      const [first] = pieces;
      const rest = pieces.flatMap((piece) =>
        piece.kind === "line" ? [piece.to] : [piece.first, piece.second, piece.to],
      );
      return first === undefined ? [] : [first.from, ...rest];
    })
    .flatMap(({ x, y }) => [x, paper - y]);
};

describe("a PDF of a panel's pack", () => {
  test("is there to be read", () => expect(pdfs).toHaveLength(READ.length));

  test.each(pdfs.map(({ path, bytes }) => [path, bytes] as const))("%s", (_path, bytes) => {
    const pages = pdfPages(bytes, UNTOLD) ?? [];
    const others = readPdf(bytes).pages;
    expect(pages).toHaveLength(others.length);
    for (const [index, page] of pages.entries()) {
      const other = others[index];
      if (other === undefined) throw new Error("a page less");
      expect(page.width).toBeCloseTo((other.width * 25.4) / 72, 6);
      expect(page.height).toBeCloseTo((other.height * 25.4) / 72, 6);
      const [ours, theirs] = [placesOf(page.shapes), placesRead(other)];
      expect(ours.length).toBe(theirs.length);
      const worst = ours.reduce(
        (most, value, at) => Math.max(most, Math.abs(value - (theirs[at] ?? Number.NaN))),
        0,
      );
      // A ten-thousandth of a millimetre is written.
      expect(worst).toBeLessThan(0.0002);
      expect(ours.length).toBeGreaterThan(100);
    }
  });
});

test("pages are told of one by one, as they are read, and of how many", () => {
  for (const { bytes } of pdfs) {
    const told: (readonly [PaintedPage, number])[] = [];
    const pages = pdfPages(bytes, (page, of) => told.push([page, of])) ?? [];
    expect(told).toEqual(pages.map((page) => [page, readPdf(bytes).pages.length]));
  }
});

describe("sabotage", () => {
  const [first] = pdfs;
  const bytes = first?.bytes ?? new Uint8Array();
  const inStream = Buffer.from(bytes).indexOf("stream\n", 1000) + 300;

  test.each([
    ["nothing", new Uint8Array()],
    ["a text", new Uint8Array(Buffer.from("%PDF-1.7\nhello"))],
    ["half of it", bytes.subarray(0, bytes.length / 2)],
    [
      "a list of forms with others' names",
      bytes.map((byte, at) => (at > 2000 && at < 2400 ? byte ^ 0x5a : byte)),
    ],
    [
      "a stream with one byte spoilt",
      bytes.map((byte, at) => (at === inStream ? byte ^ 0x10 : byte)),
    ],
  ])("%s is refused", (_what, spoilt) => expect(pdfPages(spoilt, UNTOLD)).toBeNull());

  test("a place that is moved is found", () => {
    const [page] = pdfPages(bytes, UNTOLD) ?? [];
    const [other] = readPdf(bytes).pages;
    if (page === undefined || other === undefined) throw new Error("no page");
    const moved = { ...other, height: other.height + 1 };
    expect(placesRead(moved)[1]).not.toBeCloseTo(placesOf(page.shapes)[1] ?? 0, 2);
  });
});
