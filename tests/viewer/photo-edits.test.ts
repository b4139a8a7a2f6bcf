// A photograph's marks written into a text: what is read back is what was set, and everything else stays as it was.

import { describe, expect, test } from "vitest";
import type { Edit } from "../../src/design/edit.ts";
import type { PhotoDesign } from "../../src/design/photo-design.ts";
import {
  type MarksText,
  markMoved,
  markSaid,
  photoFile,
  photoWritten,
  pointAdded,
  pointPlaced,
  pointTakenOff,
  sheetMoved,
  sheetPlaced,
  sheetSaid,
} from "../../src/design/photo-edit.ts";
import { takenFromPhoto } from "../../src/design/photo-taken.ts";
import { readDesign } from "../../src/design/read-design.ts";
import { source } from "../../src/design/source.ts";
import { applyEdits } from "../../src/diagnostics/text-edit.ts";
import { degrees } from "../../src/geometry/quantity.ts";

const FILE = "panel.yaml";

const PANEL = `consolewright: 1
kind: panel
name: old
mount: console-rail
height: 10 modules   # as the old one
stack: [{ layer: face, sheet: aluminium-2 }]
components:
  main: { part: toggle-6, at: { x: 40 mm, y: 50 mm } }
  aux: { part: toggle-6, at: centre }
  lamps: { row: { part: led-5, count: 3, pitch: 10 mm, x: 20 mm, y: 20 mm } }
`;

const POINTS: MarksText = {
  kind: "points",
  points: [
    { inPicture: { x: 100, y: 900 }, onPanel: { x: 0, y: 0 } },
    { inPicture: { x: 1300.25, y: 900 }, onPanel: { x: 146.05, y: 0 } },
    { inPicture: { x: 1300, y: 100 }, onPanel: { x: 146.05, y: 95.25 } },
    { inPicture: { x: 100, y: 100 }, onPanel: { x: 0, y: 95.25 } },
  ],
};

const done = (text: string, made: Edit): string => {
  if (made.kind === "refused") throw new Error(made.why);
  const applied = applyEdits(text, [made.edit]);
  if (applied.kind === "refused") throw new Error(applied.why);
  return applied.text;
};

const photoOf = (text: string): PhotoDesign => {
  const { design, findings } = readDesign(FILE, text);
  expect(findings).toEqual([]);
  if (design?.kind !== "panel" || design.photo === null) throw new Error("no photograph");
  return design.photo;
};

const written = (text: string, marks: MarksText = POINTS): string =>
  done(text, photoWritten(source(FILE, text), { file: "old, 1.jpg", marks }, "mm"));

describe("the key", () => {
  test("is added at the end, in lines, with its file quoted where it must be", () => {
    const text = written(PANEL);
    expect(text.startsWith(PANEL)).toBe(true);
    expect(text.slice(PANEL.length)).toBe(`photo:
  file: "old, 1.jpg"
  points:
    - { in-picture: [100, 900], on-panel: [0 mm, 0 mm] }
    - { in-picture: [1300.3, 900], on-panel: [146.05 mm, 0 mm] }
    - { in-picture: [1300, 100], on-panel: [146.05 mm, 95.25 mm] }
    - { in-picture: [100, 100], on-panel: [0 mm, 95.25 mm] }
`);
    expect(photoOf(text).file).toBe("old, 1.jpg");
  });

  test.each([
    ["without a line's end", PANEL.trimEnd()],
    ["of another system", PANEL.replaceAll("\n", "\r\n")],
    [
      "in braces",
      `{ ${PANEL.trimEnd().replace("   # as the old one", "").split("\n").slice(0, 6).join(", ")} }`,
    ],
  ])("is added to a text %s", (_what, text) => {
    expect(photoOf(written(text)).marks).toMatchObject({ kind: "points" });
  });

  test("takes the place of the one that is there", () => {
    const sheet: MarksText = {
      kind: "sheet",
      sheet: {
        size: "a4",
        corners: [
          { x: 100, y: 3070 },
          { x: 2200, y: 3070 },
          { x: 2200, y: 100 },
          { x: 100, y: 100 },
        ],
        at: { x: 20, y: -40 },
        turn: degrees(90),
      },
    };
    const text = written(written(PANEL), sheet);
    expect(text.match(/photo:/g)).toHaveLength(1);
    expect(photoOf(text).marks).toMatchObject(sheet);
    const moved = done(
      text,
      markMoved(source(FILE, text), { kind: "sheet", index: 2, at: { x: 2210, y: 90 } }),
    );
    const turned = done(moved, sheetSaid(source(FILE, moved), "turn", "45 deg"));
    const lain = done(turned, sheetPlaced(source(FILE, turned), "along", "-41 mm"));
    const named = done(lain, photoFile(source(FILE, lain), "new.png"));
    const { file, marks } = photoOf(named);
    expect(file).toBe("new.png");
    if (marks.kind === "sheet") expect(marks.sheet.corners[2]).toEqual({ x: 2210, y: 90 });
    expect(marks).toMatchObject({ sheet: { turn: 45, at: { x: 20, y: -41 } } });
  });
});

describe("a point", () => {
  const text = written(PANEL);

  test("is moved, placed, added and taken off, and nothing else changes", () => {
    const moved = done(
      text,
      markMoved(source(FILE, text), { kind: "points", index: 1, at: { x: 1290, y: 880.5 } }),
    );
    expect(moved).toBe(text.replace("[1300.3, 900]", "[1290, 880.5]"));
    const right = done(
      moved,
      pointPlaced(source(FILE, moved), { index: 3, axis: "across" }, "1/8 in"),
    );
    const placed = done(
      right,
      pointPlaced(source(FILE, right), { index: 3, axis: "along" }, "95 mm"),
    );
    const lower = done(
      placed,
      markSaid(source(FILE, placed), { kind: "points", index: 0, axis: "along" }, 901.5),
    );
    expect(lower).toBe(placed.replace("[100, 900]", "[100, 901.5]"));
    expect(placed).toBe(moved.replace("[0 mm, 95.25 mm] }", "[1/8 in, 95 mm] }"));
    const more = done(
      placed,
      pointAdded(
        source(FILE, placed),
        { inPicture: { x: 7, y: 8 }, onPanel: { x: 1, y: 2 } },
        "in",
      ),
    );
    expect(more).toBe(
      `${placed}    - { in-picture: [7, 8], on-panel: [0.03937 in, 0.07874 in] }\n`,
    );
    expect(done(more, pointTakenOff(source(FILE, more), 4))).toBe(placed);
  });
});

describe("taken from the photograph", () => {
  const at = (...path: readonly string[]) => ({ name: path[1] ?? "", path });
  const said = (
    text: string,
    residual: string,
    ...paths: readonly (readonly string[])[]
  ): string => {
    const { edit } = takenFromPhoto(
      source(FILE, text),
      paths.map((path) => at(...path)),
      residual,
    );
    if (edit === null) throw new Error("nothing was said");
    return done(text, edit);
  };

  test("a component and a row say how far off they may be, once", () => {
    const once = said(
      PANEL,
      "0.4 mm",
      ["components", "main", "at"],
      ["components", "lamps", "row"],
    );
    expect(once).toBe(
      PANEL.replace("y: 50 mm }", "y: 50 mm, residual: 0.4 mm }").replace(
        "y: 20 mm }",
        "y: 20 mm, residual: 0.4 mm }",
      ),
    );
    const again = said(once, "0.2 mm", ["components", "main", "at"]);
    expect(again).toBe(once.replace("0.4", "0.2"));
  });

  test("a place said by a word, and one that the text does not have, say so each; the others are said", () => {
    const { edit, ...told } = takenFromPhoto(
      source(FILE, PANEL),
      [
        at("components", "aux", "at"),
        { name: "fixing.1", path: null },
        at("components", "main", "at"),
      ],
      "0.4 mm",
    );
    expect(told).toEqual({
      said: ["main"],
      unsaid: [
        { name: "aux", why: "it is placed by a word; write numbers for it first" },
        { name: "fixing.1", why: "the text gives it no place of its own" },
      ],
    });
    expect(edit === null ? "" : done(PANEL, edit)).toBe(
      PANEL.replace("y: 50 mm }", "y: 50 mm, residual: 0.4 mm }"),
    );
  });
});

describe("a sheet of paper that is moved", () => {
  const lain = (at: string, turn = ""): string =>
    `${PANEL}photo:\n  file: a.png\n  sheet:\n    size: a4\n    corners: [[100, 3070], [2200, 3070], [2200, 100], [100, 100]]\n    at: ${at}\n${turn}`;
  const before = { at: { x: 20, y: -38.1 }, turn: 0 };

  test("gets the numbers that are new, and keeps what is as before in its own words", () => {
    const text = lain("[20, -1 1/2 in]   # by the rule");
    const across = sheetMoved(source(FILE, text), {
      before,
      after: { at: { x: 25.5, y: -38.1 }, turn: 0 },
      unit: "mm",
    });
    expect(done(text, across)).toBe(lain("[25.5 mm, -1 1/2 in]   # by the rule"));
    const turned = sheetMoved(source(FILE, text), {
      before,
      after: { at: before.at, turn: -1.5 },
      unit: "mm",
    });
    expect(done(text, turned)).toBe(
      lain("[20, -1 1/2 in]   # by the rule", "    turn: -1.5 deg\n"),
    );
  });

  test("in inches where the file is in inches", () => {
    const text = lain("[20, -38.1]", "    turn: 3\n");
    const moved = sheetMoved(source(FILE, text), {
      before: { ...before, turn: 3 },
      after: { at: { x: 50.8, y: 25.4 }, turn: 0 },
      unit: "in",
    });
    const { marks } = photoOf(done(text, moved));
    expect(done(text, moved)).toContain("at: [2 in, 1 in]");
    expect(marks).toMatchObject({ sheet: { at: { x: 50.8, y: 25.4 }, turn: 0 } });
  });
});
