// The paper template: true places and sizes, BACK mirrored once, two bars of exactly 100 mm on every page, nothing lost in the table.

import { describe, expect, test } from "vitest";
import { pdfDrawing } from "../../src/export/pdf-drawing.ts";
import { tablePages } from "../../src/export/table-pages.ts";
import { templatePdf } from "../../src/export/template-pdf.ts";
import { templatePoints } from "../../src/export/template-points.ts";
import { extent } from "../../src/geometry/extent.ts";
import { faceNamed } from "../lettering/faces.ts";
import { type PdfReadPage, readPdf } from "../support/pdf-reader.ts";
import { FRONT_UP, HOSTILE_NAMES, PLATE, plateNamed } from "./bureau-plate.ts";
import { CROSSING } from "./crossing.ts";

const face = faceNamed("b612");

describe("what is marked", () => {
  const front = templatePoints(PLATE, "FRONT");
  const back = templatePoints(PLATE, "BACK");

  test("the part's own sizes, without kerf", () => {
    // The piece stands 7 mm below the plate and belongs to the same sheet.
    expect([front.width, front.height]).toEqual([146.05, 64.15]);
    const stud = front.points.find(({ feature }) => feature === "stud-1");
    expect(stud?.size).toBe("dia 6.6");
    expect(stud?.at).toEqual({ x: 4.7625, y: 11.7625 });
  });

  test("BACK is FRONT mirrored once: x runs from the other side, y stays", () => {
    for (const point of front.points) {
      const behind = back.points.find(({ number }) => number === point.number);
      expect(behind?.at.x).toBeCloseTo(146.05 - point.at.x, 9);
      expect(behind?.at.y).toBeCloseTo(point.at.y, 9);
      expect(behind?.size).toBe(point.size);
    }
  });

  test("a hand operation stands at its opening; one without a place is listed by itself", () => {
    const tapped = front.points.filter(({ work }) => work.length > 0);
    expect(tapped.map(({ feature, work, at }) => [feature, work[0], at.x, at.y])).toEqual([
      ["pilot", "tap from the rear, M3 tap, 6 deep", 120, 37],
    ]);
    expect(front.placeless).toEqual(["edge: deburr from the front, scraper"]);
  });

  test("an opening that two set-ups cut is one opening", () => {
    const twice = { ...PLATE, setUps: [FRONT_UP, { ...FRONT_UP, id: "2" }] };
    expect(templatePoints(twice, "FRONT").points).toHaveLength(front.points.length);
  });
});

/** Straight strokes of a page by direction, with their lengths in mm. */
const strokesOf = (
  page: PdfReadPage,
): readonly { readonly along: "x" | "y"; readonly length: number }[] =>
  page.runs
    .filter((run) => run.painted === "S" && !run.closed && run.pieces.length === 1)
    .flatMap((run) => {
      const piece = run.pieces[0];
      if (piece === undefined) return [];
      const dx = Math.abs(piece.to.x - piece.from.x);
      const dy = Math.abs(piece.to.y - piece.from.y);
      return [{ along: dx > dy ? ("x" as const) : ("y" as const), length: Math.max(dx, dy) }];
    });

const isBar = (length: number): boolean => Math.abs(length - 100) < 0.001;

describe("on paper", () => {
  test.each(["A4", "Letter"] as const)(
    "%s: a bar of 100 mm both ways on every page of a drawing",
    (paper) => {
      const wide = { ...CROSSING, box: extent(-20, -10, 460, 300) };
      const file = readPdf(pdfDrawing([CROSSING, wide], { paper, face, title: "t" }));
      expect(file.pages.length).toBeGreaterThan(4);
      for (const page of file.pages) {
        const bars = strokesOf(page).filter(({ length }) => isBar(length));
        expect(bars.map(({ along }) => along).toSorted()).toEqual(["x", "y"]);
      }
    },
  );

  test("the template draws holes at cut size and in true places, on the side asked for", () => {
    for (const side of ["FRONT", "BACK"] as const) {
      const file = readPdf(templatePdf(PLATE, { paper: "A4", face, side, dated: "2026-10-02" }));
      expect(file.pages).toHaveLength(2);
      const holes = (file.pages[0]?.runs ?? [])
        .filter((run) => run.painted === "S" && run.pieces.every(({ kind }) => kind === "curve"))
        .map((run) => {
          const xs = run.pieces.flatMap(({ from, to }) => [from.x, to.x]);
          return {
            width: Math.max(...xs) - Math.min(...xs),
            x: (Math.max(...xs) + Math.min(...xs)) / 2,
          };
        });
      const pilot = holes.filter(({ width }) => Math.abs(width - 2.5) < 0.001);
      const studs = holes.filter(({ width }) => Math.abs(width - 6.6) < 0.001);
      expect([pilot.length, studs.length]).toEqual([1, 4]);
      const left = Math.min(...studs.map(({ x }) => x)) - 4.7625;
      expect((pilot[0]?.x ?? 0) - left).toBeCloseTo(side === "FRONT" ? 120 : 26.05, 3);
    }
  });

  test("the same bytes twice", () => {
    const options = { paper: "A4", face, side: "BACK", dated: null } as const;
    expect(Buffer.compare(templatePdf({ ...PLATE }, options), templatePdf(PLATE, options))).toBe(0);
  });

  test.each(HOSTILE_NAMES.map((name) => [JSON.stringify(name.slice(0, 40)), name]))(
    "a name breaks no page: %s",
    (_shown, name) => {
      const { part } = plateNamed(name);
      const file = readPdf(
        templatePdf(part, { paper: "Letter", face, side: "FRONT", dated: name }),
      );
      expect(file.pages.length).toBeGreaterThan(1);
    },
  );
});

describe("a table on paper", () => {
  test("two hundred rows take several pages and every row is on one of them", () => {
    const rows = Array.from({ length: 200 }, (_, index) => [String(index + 1), "H"]);
    const columns = [
      { title: "No.", share: 0.5 },
      { title: "What", share: 0.5 },
    ];
    const pages = tablePages({ heading: "Holes", columns, rows, notes: [] }, { paper: "A4", face });
    expect(pages.length).toBeGreaterThan(3);
    const rules = pages
      .flatMap(({ sheets }) => sheets.flatMap(({ items }) => items))
      .filter((item) => item.ink === "faint");
    expect(rules).toHaveLength(200 + pages.length);
  });
});
