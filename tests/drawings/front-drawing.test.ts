import { describe, expect, it } from "vitest";
import { frontSheet } from "../../src/drawings/front-drawing.ts";
import { svgDrawing } from "../../src/export/svg-drawing.ts";
import { type Extent, extentsOverlap } from "../../src/geometry/extent.ts";
import { contourExtent } from "../../src/geometry/measure.ts";
import { itemExtents, laidOut, library, panelText, sixtyComponents, WINCH } from "./panels.ts";

const sheetOf = (text: string) => {
  const layout = laidOut(text);
  return { layout, sheet: frontSheet(layout, [], library.lettering) };
};

/** Half the last digit that is printed. */
const HALF_DIGIT = 0.005;

describe("the front drawing's numbers", () => {
  const { layout, sheet } = sheetOf(WINCH);

  it("are the components' places, each in one ordinate an axis", () => {
    for (const component of layout.components) {
      const across = sheet.ordinates.bottom.filter(({ ids }) => ids.includes(component.id));
      const up = sheet.ordinates.left.filter(({ ids }) => ids.includes(component.id));
      expect(across).toHaveLength(1);
      expect(up).toHaveLength(1);
      expect(Math.abs(Number(across[0]!.text) - component.at.x)).toBeLessThanOrEqual(HALF_DIGIT);
      expect(Math.abs(Number(up[0]!.text) - component.at.y)).toBeLessThanOrEqual(HALF_DIGIT);
    }
  });

  it("are the mount holes' places along the other two sides", () => {
    for (const hole of layout.mountHoles) {
      const across = sheet.ordinates.top.find(({ ids }) => ids.includes(hole.id));
      const up = sheet.ordinates.right.find(({ ids }) => ids.includes(hole.id));
      expect(Number(across?.text)).toBeCloseTo(hole.at.x, 1);
      expect(Number(up?.text)).toBeCloseTo(hole.at.y, 1);
    }
  });

  it("give the rail standard's panel: 146.05 wide, eleven modules of 9.525, holes 136.525 apart", () => {
    // MS25212 and MIL-F-25173A by secondary copies: 5.750 in wide, 0.375 in a module, 5.375 in between columns.
    expect(sheet.width.text).toContain("(nominal 146.05)");
    expect(sheet.height.text).toContain("(nominal 104.78)");
    const columns = sheet.ordinates.top
      .filter(({ ids }) => layout.mountHoles.some(({ id }) => ids.includes(id)))
      .map(({ value }) => value);
    expect(Math.max(...columns) - Math.min(...columns)).toBeCloseTo(5.375 * 25.4, 9);
  });

  it("say the size as cut", () => {
    const cut = contourExtent(layout.outline);
    expect(sheet.width.value).toBeCloseTo(cut.maxX - cut.minX, 9);
    expect(Number.parseFloat(sheet.width.text)).toBeCloseTo(sheet.width.value, 2);
    expect(Number.parseFloat(sheet.height.text)).toBeCloseTo(sheet.height.value, 2);
  });

  it("merge what prints alike", () => {
    const row = sheet.ordinates.left.filter(({ ids }) => ids.some((id) => id.startsWith("warn.")));
    expect(row).toHaveLength(1);
    expect(row[0]?.ids).toEqual(["warn.1", "warn.2", "warn.3", "warn.4"]);
  });
});

describe("a component moved by 3 mm", () => {
  const text = (left: number) =>
    panelText([`lamp: { part: led-5-bezel, at: { left: ${left} mm, top: 40 mm } }`]);
  const before = sheetOf(text(40));
  const after = sheetOf(text(43));

  it("is printed 3 mm further", () => {
    const at = ({ sheet }: typeof before) =>
      sheet.ordinates.bottom.find(({ ids }) => ids.includes("lamp"))?.value ?? Number.NaN;
    expect(at(after) - at(before)).toBeCloseTo(3, 9);
  });

  it("is drawn 3 mm further", () => {
    const lens = ({ sheet }: typeof before) => {
      const found = sheet.drawing.items.find(
        (item) => item.kind === "fill" && item.ink === "lens-white",
      );
      if (found?.kind !== "fill") throw new Error("no lens is drawn");
      return contourExtent(found.regions[0]!.outline);
    };
    expect(lens(after).minX - lens(before).minX).toBeCloseTo(3, 9);
    expect(lens(after).minY).toBeCloseTo(lens(before).minY, 9);
  });
});

describe("names on the front drawing", () => {
  for (const [what, text] of [
    ["a winch", WINCH],
    ["sixty components", sixtyComponents()],
  ] as const) {
    const { layout, sheet } = sheetOf(text);

    it(`name every component of ${what} once`, () => {
      expect(sheet.tags.map(({ id }) => id)).toEqual(layout.components.map(({ id }) => id));
      for (const tag of sheet.tags) expect(tag.items.length).toBeGreaterThan(0);
    });

    it(`stay clear of each other for ${what}`, () => {
      expect(overlaps(sheet.tags.map(({ box }) => box))).toEqual([]);
    });

    it(`keep the ordinates of ${what} apart`, () => {
      for (const run of Object.values(sheet.ordinates))
        expect(overlaps(run.map(({ box }) => box))).toEqual([]);
    });

    it(`leave the foot of the sheet to itself for ${what}`, () => {
      const crossing = itemExtents(sheet.drawing).filter(
        (box) => extentsOverlap(box, sheet.foot) && !isWithin(box, sheet.foot),
      );
      expect(crossing).toEqual([]);
      const panel = contourExtent(layout.outline);
      expect(extentsOverlap(panel, sheet.foot)).toBe(false);
    });

    it(`draw everything of ${what} inside the sheet`, () => {
      for (const box of itemExtents(sheet.drawing))
        expect(isWithin(box, sheet.drawing.box)).toBe(true);
    });
  }
});

describe("marks on the front drawing", () => {
  it("are drawn where a figure was measured and where a thing comes later", () => {
    const { sheet } = sheetOf(WINCH);
    const plain = sheetOf(
      WINCH.replace(/, measured: \{[^}]*\}/, "").replace(", fitted: later", ""),
    );
    const items = (each: typeof sheet, id: string) =>
      each.tags.find((tag) => tag.id === id)?.items.length ?? 0;
    expect(items(sheet, "brake")).toBeGreaterThan(items(plain.sheet, "brake"));
    expect(items(sheet, "tension")).toBeGreaterThan(items(plain.sheet, "tension"));
    expect(items(sheet, "speed")).toBe(items(plain.sheet, "speed"));
  });

  it("draw what comes later in broken lines only", () => {
    const text = panelText([
      "gauge: { part: gauge-52, at: { left: 60 mm, top: 50 mm }, fitted: later }",
    ]);
    const dashed = sheetOf(text).sheet.drawing.items.filter(
      (item) => item.kind === "outline" && item.dashed,
    );
    const now = sheetOf(text.replace(", fitted: later", "")).sheet.drawing.items.filter(
      (item) => item.kind === "outline" && item.dashed,
    );
    expect(dashed.length).toBeGreaterThan(now.length);
  });
});

describe("hostile text", () => {
  const hostile = `"</svg><script>alert(1)</script> \\u202e\\u0000\\n & ]]> ${"W".repeat(3000)}"`;
  const text = WINCH.replace("title: Towing winch", `title: ${hostile}`).replace(
    "legend: BRAKE",
    `legend: ${hostile}`,
  );

  it("is outlines: the file has only paths, their groups and its escaped title", () => {
    const { sheet } = sheetOf(text);
    const svg = svgDrawing(sheet.drawing);
    const elements = new Set([...svg.matchAll(/<([a-zA-Z]+)/g)].map(([, name]) => name));
    const harmless = ["defs", "g", "path", "svg", "title", "use"];
    expect([...elements].filter((name) => !harmless.includes(name ?? ""))).toEqual([]);
    expect(svg).not.toContain("NaN");
    expect(sheet.foot.maxX - sheet.foot.minX).toBeLessThanOrEqual(200);
    for (const box of itemExtents(sheet.drawing).filter((each) => extentsOverlap(each, sheet.foot)))
      expect(box.maxX).toBeLessThanOrEqual(sheet.foot.maxX + 1e-6);
  });

  it("of findings wraps within the sheet", () => {
    const layout = laidOut(WINCH);
    const message = `${"unbroken".repeat(100)} <b> ${"word ".repeat(400)}`;
    const finding = {
      code: "checks/example",
      severity: "query",
      panel: "winch",
      subjects: [],
      message,
      span: { file: "panel.yaml", start: 0, end: 0 },
      related: [],
      measured: null,
      limit: null,
      source: null,
      remedies: [],
      suppressed: 0,
    } as const;
    const held = frontSheet(layout, [finding, { ...finding, severity: "note" }], library.lettering);
    const free = frontSheet(layout, [], library.lettering);
    expect(held.foot.minY).toBeLessThan(free.foot.minY - 20);
    for (const box of itemExtents(held.drawing)) expect(isWithin(box, held.drawing.box)).toBe(true);
  });
});

it("the same layout gives the same bytes", () => {
  const once = svgDrawing(sheetOf(WINCH).sheet.drawing);
  expect(svgDrawing(sheetOf(WINCH).sheet.drawing)).toBe(once);
});

const overlaps = (boxes: readonly Extent[]): readonly (readonly [Extent, Extent])[] =>
  boxes.flatMap((a, index) =>
    boxes
      .slice(index + 1)
      .filter((b) => extentsOverlap(a, b))
      .map((b) => [a, b] as const),
  );

const NOISE = 1e-9;

const isWithin = (box: Extent, outer: Extent): boolean =>
  box.minX >= outer.minX - NOISE &&
  box.minY >= outer.minY - NOISE &&
  box.maxX <= outer.maxX + NOISE &&
  box.maxY <= outer.maxY + NOISE;
