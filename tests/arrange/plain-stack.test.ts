// The paint of an unlit panel that is made of a list: one that can be read on bare aluminium, and the text says why. The ratios
// by hand: #23262a, #efede6 and #c6cace have luminances of 0.019, 0.846 and 0.587; 0.637 / 0.069 = 9.2, 0.896 / 0.637 = 1.4.

import { expect, test } from "vitest";
import { arrangeList } from "../../src/arrange/arrange-list.ts";
import { readComponentList } from "../../src/design/component-list.ts";
import { readDesign } from "../../src/design/read-design.ts";
import { compile } from "../../src/project.ts";
import { testLibrary } from "../support/test-library.ts";
import { arranged } from "./arranged.ts";

const LIST = "part,quantity,legend,group,note\ntoggle-6,2,MAIN; AUX,Power,\n";

const faint = (made: ReturnType<typeof arranged>): readonly string[] =>
  (made.panel?.findings ?? [])
    .filter(({ code }) => code === "checks/legend-faint")
    .map(({ message }) => message);

test("legends of a list are filled with black, and the line says by how much either stands out", () => {
  const made = arranged(LIST);
  expect(faint(made)).toEqual([]);
  expect(made.text).toContain(
    "finish: black-filled } # against aluminium-2: black 9.2 to 1; white 1.4 to 1, and 4.5 is wanted\n",
  );
});

test("the same panel with white paint is told both ratios and a paint that works", () => {
  const white = (arranged(LIST).text ?? "").replace("black-filled", "paint-filled");
  const files = new Map([["panel.yaml", white]]);
  const { panels } = compile({ entry: "panel.yaml", files }, testLibrary());
  const told = panels[0]?.findings.find(({ code }) => code === "checks/legend-faint");
  expect(told?.message).toBe(
    "Legends filled with white stand out from aluminium by 1.4 to 1 in face; 4.5 to 1 is wanted, 3.1 more. Filled with black it is 9.2 to 1: finish: black-filled.",
  );
  expect(told?.measured?.value).toBeCloseTo(0.896 / 0.637, 2);
});

test("a builder's own finish of the usual name goes before it where it can be read", () => {
  const { catalogue, lettering } = testLibrary();
  const text = `consolewright: 1
kind: workshop
name: shed
finishes: { paint-filled: { coats: [dark blue], order: engrave-fill } }
`;
  const { design } = readDesign("shed.yaml", text);
  const workshop = design?.kind === "workshop" ? design : null;
  const made = arrangeList(readComponentList("list.csv", LIST), {
    ...{ name: "a", title: "A", mount: "console-rail", width: null, stack: "plain" },
    ...{ workshopPath: "shed.yaml", workshop, cataloguePath: null, catalogue, lettering },
  });
  expect(made.text).toContain("finish: paint-filled }\n");
});
