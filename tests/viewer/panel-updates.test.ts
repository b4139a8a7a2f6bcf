// What goes to the page of a reading, and what the page makes of it: the same as if everything had been sent, and what an edit
// leaves alone is the same object as before.

import fc from "fast-check";
import { expect, test } from "vitest";
import { compile } from "../../src/project.ts";
import type { PanelReading } from "../../viewer/core-messages.ts";
import { panelPicture } from "../../viewer/panel/panel-picture.ts";
import { shapeData } from "../../viewer/panel/shape-data.ts";
import { panelsAfter, panelUpdates } from "../../viewer/panel-updates.ts";
import { testLibrary } from "../support/test-library.ts";

const library = testLibrary();
const shapes = shapeData();

const PANEL = (x: number, word: string, isLevel: boolean): string => `consolewright: 1
kind: panel
name: pumps
mount: console-rail
height: 10 modules
stack: [{ layer: face, sheet: ${isLevel ? "aluminium-2" : "unknown-sheet"} }]
components:
  main: { part: toggle-6, at: { x: 40 mm, y: 50 mm }, legend: MAIN }
  aux: { part: toggle-6, at: { x: ${x} mm, y: 50 mm }, legend: ${word} }
`;

const read = (text: string): PanelReading => {
  const files = new Map([["pumps.yaml", text]]);
  const [panel] = compile({ entry: "pumps.yaml", files }, library).panels;
  if (panel === undefined) throw new Error("the text is a panel");
  const { name, design, layout } = panel;
  const picture = layout === null ? null : panelPicture(layout, shapes);
  return { name, title: design.title, file: design.file, design, layout, picture };
};

/** Over the border between worker and page nothing keeps its identity. */
const sent = <Data>(data: Data): Data => structuredClone(data);

const readings = fc
  .tuple(fc.integer({ min: 80, max: 90 }), fc.constantFrom("AUX", "BILGE"), fc.boolean())
  .map(([x, word, isLevel]) => read(PANEL(x, word, isLevel || word === "AUX")));

test("however panels come, go and change, the page has what the worker read", () => {
  fc.assert(
    fc.property(fc.array(fc.array(readings, { maxLength: 3 }), { maxLength: 5 }), (steps) => {
      let [worker, page]: [readonly PanelReading[], readonly PanelReading[]] = [[], []];
      for (const step of steps) {
        // Some panels are those of the step before, at whatever place.
        const next = [...worker.slice(1), ...step];
        page = panelsAfter(sent(panelUpdates(next, worker)), page);
        worker = next;
        expect(page).toEqual(sent(worker));
      }
    }),
    { numRuns: 25 },
  );
});

test("a moved component is sent, and nothing else of the picture", () => {
  const [before, after] = [read(PANEL(80, "AUX", true)), read(PANEL(84, "AUX", true))];
  const page = panelsAfter(sent(panelUpdates([before], [])), []);
  const [update] = panelUpdates([after], [before]);
  const pieces = update?.kind === "changed" ? (update.picture?.pieces ?? []) : [];
  const owners = pieces.flatMap((piece) => (typeof piece === "number" ? [] : piece.owner));
  expect([...new Set(owners)]).toEqual(["aux"]);
  const now = panelsAfter(sent(panelUpdates([after], [before])), page);
  const own = (of: readonly PanelReading[]) =>
    of[0]?.picture?.pieces.filter(({ owner }) => owner === "main") ?? [];
  expect(own(now).length).toBeGreaterThan(0);
  for (const [index, piece] of own(now).entries()) expect(piece).toBe(own(page)[index]);
});
