// What the page does with a photograph where something is in its way: a panel without corners, a file that stands twice, a
// picture that has gone, another panel opened meanwhile. The worker is answered for by the test.

import { beforeEach, describe, expect, test, vi } from "vitest";
import { source } from "../../src/design/source.ts";
import { applyEdits } from "../../src/diagnostics/text-edit.ts";
import { moveEdits } from "../../src/layout/move-edits.ts";
import { compile } from "../../src/project.ts";
import { answer, asked } from "../support/asked-worker.ts";
import { testLibrary } from "../support/test-library.ts";

vi.stubGlobal("createImageBitmap", async () => ({ width: 1200, height: 900, close: () => null }));

const { askBefore, choosePanel, openDesign, panel, texts } = await import("../../viewer/desk.ts");
const { said } = await import("../../viewer/panel/board.ts");
const { choosePicture } = await import("../../viewer/photo/choose-picture.ts");
const { addPoint, holdMark, letMarkGo, sayKnown } = await import(
  "../../viewer/photo/photo-acts.ts"
);
const { placedByPhoto, placesIn } = await import("../../viewer/photo/placed-by-photo.ts");
const { panelUpdates } = await import("../../viewer/panel-updates.ts");
const { takePaper } = await import("../../viewer/photo/paper-acts.ts");
const { isTaking, paperInHand, paperKey, picture, residualNow, unset } = await import(
  "../../viewer/photo/photo-state.ts"
);

const HEAD = `consolewright: 1
kind: panel
mount: corner-screws
width: 120 mm
height: 80 mm
stack: [{ layer: face, sheet: aluminium-2 }]
`;
const point = (x: number, y: number): string =>
  `    - { in-picture: [${100 + 9 * x}, ${850 - 9 * y}], on-panel: [${x} mm, ${y} mm] }\n`;
const marked = (...more: readonly string[]): string =>
  `photo:\n  file: old.png\n  points:\n${[point(0, 0), point(120, 0), point(120, 80), point(0, 80), ...more].join("")}`;

const settled = async (): Promise<void> => {
  for (let turn = 0; turn < 8; turn += 1) await Promise.resolve();
};

/** As where a fault keeps a panel from being laid out. */
let isLaidOut = true;

/** Answers as the worker does, of every panel by itself. */
const reply = async (): Promise<void> => {
  const { number, texts: now } = asked.shift()!;
  const panels = [...now.keys()].flatMap((file) =>
    compile({ entry: file, files: now }, testLibrary()).panels.map(({ name, design, layout }) => ({
      ...{ name, title: name, file, design, picture: null },
      layout: isLaidOut ? layout : null,
    })),
  );
  const updates = panelUpdates(panels, []);
  answer({ kind: "read", number, panels: updates, console: null, findings: [] });
  await settled();
};

const open = async (own: string, other = ""): Promise<void> => {
  const files = new Map([
    ["a.yaml", `${HEAD}name: a\n${own}`],
    ["b.yaml", `${HEAD}name: b\n${other}`],
  ]);
  while (asked.length > 0) await reply();
  void openDesign("panels", { texts: files, binaries: new Map() });
  await reply();
  choosePanel("a");
};

const text = (file: string): string => texts.value.get(file) ?? "";

const SHOWN = { key: "1", blob: new Blob([]), address: "blob:1", width: 1200, height: 900 };

beforeEach(() => {
  isLaidOut = true;
  askBefore(() => false);
  picture.value = SHOWN;
  isTaking.value = false;
  said.value = "";
});

describe("a picture is chosen", () => {
  const file = new File([new Uint8Array(4)], "old.png");

  test("for a panel: its corners are marked", async () => {
    await open("");
    await choosePicture(file);
    expect(text("a.yaml")).toContain("on-panel: [120 mm, 80 mm]");
  });

  test("for a panel that could not be laid out: no pixels are written as millimetres", async () => {
    isLaidOut = false;
    await open("");
    expect(panel.value?.layout).toBeNull();
    const before = text("a.yaml");
    await choosePicture(file);
    expect(text("a.yaml")).toBe(before);
    expect(said.value).toMatch(/old\.png is not laid under: the panel's corners are not known/);
  });

  test("and another panel is opened meanwhile: neither gets it", async () => {
    await open("");
    const choosing = choosePicture(file);
    choosePanel("b");
    await choosing;
    expect(`${text("a.yaml")}${text("b.yaml")}`).not.toContain("photo:");
    expect(said.value).toMatch(/old\.png is not laid under: another panel/);
  });

  test("and the file stands twice: it is not called done", async () => {
    await open("");
    askBefore(() => true);
    await choosePicture(file);
    expect(text("a.yaml")).not.toContain("photo:");
    expect(said.value).toMatch(/^Not done yet: the file stands more than once/);
  });
});

describe("the sheet of paper in hand", () => {
  // UI Events, KeyboardEvent.key: named keys have one name on every layout, with Shift and without. The key to the right of M
  // writes a comma on a QWERTY keyboard and a semicolon on an AZERTY one.
  test.each([
    ["PageUp", false, 0.5],
    ["PageUp", true, 5],
    ["PageDown", false, -0.5],
    ["PageDown", true, -5],
  ])("is turned by %s, with Shift %s", async (key, shiftKey, turn) => {
    await open(
      "photo: { file: old.png, sheet: { size: a4, corners: [[100, 850], [1100, 850], [1100, 100], [100, 100]], at: [0, 0], turn: 0 } }\n",
    );
    paperKey.value = null;
    takePaper();
    const event = { key, code: key, shiftKey, altKey: false, ctrlKey: false, metaKey: false };
    expect(paperKey.peek()?.(event as KeyboardEvent)).toBe(true);
    expect(paperInHand.value?.turn).toBeCloseTo(turn, 9);
    takePaper();
  });
});

describe("the marks", () => {
  test("become a sheet of paper, and what is lost by it is said", async () => {
    await open(marked(point(30, 20), point(90, 50)));
    sayKnown("paper");
    expect(text("a.yaml")).toContain("size: a4");
    expect(said.value).toMatch(/point 5, point 6 and the places of the marks .* struck out/);
  });

  test("of a sheet of paper begin at the picture's own corners, and tell nothing until all four are set", async () => {
    await open(marked());
    sayKnown("paper");
    expect(said.value).toMatch(/Now set the four marks on the corners of the paper/);
    await reply();
    // The picture has 1200 by 900 pixels.
    expect(text("a.yaml")).toContain("corners: [[0, 900], [1200, 900], [1200, 0], [0, 0]]");
    expect([unset.value, residualNow().kind]).toEqual([4, "unknown"]);
    for (const [index, x, y] of [
      [0, 200, 800],
      [1, 1000, 810],
      [2, 990, 120],
      [3, 210, 100],
    ] as const) {
      expect(residualNow().kind).toBe("unknown");
      holdMark(index, { x, y });
      letMarkGo();
      await reply();
    }
    expect(unset.value).toBe(0);
    expect(residualNow().kind === "unknown" ? residualNow() : null).not.toMatchObject({
      why: expect.stringContaining("not all marks are set"),
    });
  });

  test("get a fifth off the lines between the corners, so that each can be held against the others", async () => {
    await open(marked());
    addPoint();
    const [, x = "", y = ""] =
      /on-panel: \[([\d.]+) mm, ([\d.]+) mm\] }\n$/.exec(text("a.yaml")) ?? [];
    // The diagonals of 120 by 80: y = 2x / 3 and y = 80 - 2x / 3.
    const [right, up] = [Number(x), Number(y)];
    expect(Math.abs(up - (2 * right) / 3)).toBeGreaterThan(5);
    expect(Math.abs(up - 80 + (2 * right) / 3)).toBeGreaterThan(5);
  });

  test("get no fifth where they say no plane", async () => {
    await open(marked().replace("[1180, 850]", "[100, 850]"));
    const before = text("a.yaml");
    addPoint();
    expect(text("a.yaml")).toBe(before);
    expect(said.value).toMatch(/^No point is added: the marks do not say/);
  });

  test("one let go of when the picture has gone is written where it was held", async () => {
    await open(marked());
    holdMark(1, { x: 1100, y: 840 });
    picture.value = null;
    letMarkGo();
    await settled();
    expect(text("a.yaml")).toContain("in-picture: [1100, 840]");
  });

  test("one let go of over another panel is not written into that", async () => {
    await open(marked(), marked());
    holdMark(1, { x: 1100, y: 840 });
    choosePanel("b");
    letMarkGo();
    await settled();
    expect(`${text("a.yaml")}${text("b.yaml")}`).not.toContain("[1100, 840]");
    expect(said.value).toMatch(/another panel was opened/);
  });
});

test("a window that is moved by the photograph says so, and so does what moves with it", async () => {
  await open(
    `components:\n  a: { part: toggle-6, at: { x: 40 mm, y: 40 mm } }\nmarkings:\n  - window: { name: w, at: { x: 80 mm, y: 30 mm }, width: 9 mm, height: 9 mm, layers: [face] }\n${marked()}`,
  );
  isTaking.value = true;
  const from = source("a.yaml", text("a.yaml"));
  const layout = panel.value?.layout;
  if (layout == null) throw new Error("not laid out");
  const entries = ["a", "w"];
  const moved = moveEdits({ entries, x: 5, y: 0 }, layout, from);
  if (moved.kind !== "edits") throw new Error(moved.kind);
  const { edits, words } = placedByPhoto(moved.edits, from, placesIn(layout, from, entries));
  const whole = applyEdits(from.text, edits);
  expect(whole).toMatchObject({ kind: "edited" });
  const now = whole.kind === "edited" ? whole.text : "";
  expect(now).toMatch(/x: 45 mm, y: 40 mm, residual: 0\.\d mm/);
  expect(now).toMatch(/x: 85 mm, y: 30 mm, residual: 0\.\d mm/);
  expect(words).toMatch(/^, from the photograph ± 0\.\d mm: a, w$/);
});
