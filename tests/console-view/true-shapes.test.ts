// The true shapes of prints come a few at a time, so that they can be counted and given up; in between the page's worker answers
// whatever else is asked.

import { expect, test } from "vitest";
import { compile } from "../../src/project.ts";
import { consoleAnswers } from "../../viewer/console/console-answers.ts";
import type { ConsoleReply } from "../../viewer/console/console-messages.ts";
import { openKernel } from "../support/kernel.ts";
import { SMALL_CONSOLE } from "../support/small-console.ts";
import { testLibrary } from "../support/test-library.ts";

const boxed = (name: string): string => `consolewright: 1
kind: panel
name: ${name}
workshop: shed.yaml
mount: box-lid
width: 90 mm
height: 140 mm
box: { footprint: [[0, 0], [106, 0], [106, 150], [0, 150]], slope: 15 deg, rise: 70 mm }
stack: [{ layer: face, sheet: plate }, { layer: spacer, print: black, depth: 14 mm }]
components:
  start: { part: push-button-16, at: centre }
`;

/** Beside its two panels on rails two that are lids of printed boxes, whose walls lean: shapes that only a kernel makes. */
const PRINTED = new Map(
  Object.entries({
    ...SMALL_CONSOLE,
    "left.yaml": boxed("left"),
    "right.yaml": boxed("right"),
    "console.yaml": (SMALL_CONSOLE["console.yaml"] ?? "").replace(
      "obstacles:",
      `  - { file: left.yaml, as: left, stand: { at: [0, -400, 780], along: [1, 0, 0], slope: 15 deg } }
  - { file: right.yaml, as: right, stand: { at: [0, 400, 780], along: [1, 0, 0], slope: 15 deg } }
obstacles:`,
    ),
    "shed.yaml": (SMALL_CONSOLE["shed.yaml"] ?? "").replace(
      "stock:\n",
      "stock:\n  black: { material: petg }\n",
    ),
  }),
);

const opened = (kernel = openKernel) => {
  const projects = [compile({ entry: "console.yaml", files: PRINTED }, testLibrary())];
  return consoleAnswers({ compiled: async () => projects, kernel });
};

/** Until something other than a count comes. */
const shaped = async (ask: () => Promise<ConsoleReply>): Promise<readonly ConsoleReply[]> => {
  const replies = [await ask()];
  while (replies.at(-1)?.kind === "shaping" && replies.length < 100) replies.push(await ask());
  return replies;
};

test("true shapes are counted as they come, and the last answer is the scene", async () => {
  const answer = opened();
  const first = await answer({ kind: "open", texts: PRINTED, binaries: new Map() });
  expect(first.kind).toBe("scene");
  const replies = await shaped(() => answer({ kind: "true-shapes" }));
  const last = replies.at(-1);
  const counts = replies.flatMap((reply) => (reply.kind === "shaping" ? [reply] : []));
  // The boxes of the two lids.
  expect(counts.at(-1)).toMatchObject({ kind: "shaping", done: 2, of: 2 });
  expect(counts.map(({ done }) => done)).toEqual(
    counts.map(({ done }) => done).toSorted((a, b) => a - b),
  );
  if (last?.kind !== "scene" || first.kind !== "scene") throw new Error("no scene came");
  expect(trianglesOf(last)).toBeGreaterThan(trianglesOf(first));
});

test("it is said at once that the kernel is opened, and which print is made next", async () => {
  let isOpen = (): void => undefined;
  const gate = new Promise<void>((done) => {
    isOpen = done;
  });
  const answer = opened(() => gate.then(openKernel));
  await answer({ kind: "open", texts: PRINTED, binaries: new Map() });
  // It never opens before this is told.
  const words = "opening the solid kernel";
  expect(await answer({ kind: "true-shapes" })).toEqual({ kind: "shaping", words, done: 0, of: 2 });
  isOpen();
  const told = (await shaped(() => answer({ kind: "true-shapes" }))).flatMap((reply) =>
    reply.kind === "shaping" ? [reply.words] : [],
  );
  expect(told.at(-1)).toBe("drawing them");
  for (const each of told.slice(0, -1)) expect(each).toMatch(/^making .* on (left|right)$/);
});

test("a kernel that can't be opened is told of once, and opened anew when it is asked for again", async () => {
  let tries = 0;
  const answer = opened(async () => {
    tries += 1;
    if (tries === 1) throw new Error("it could not be fetched");
    return openKernel();
  });
  await answer({ kind: "open", texts: PRINTED, binaries: new Map() });
  await answer({ kind: "true-shapes" });
  await expect(answer({ kind: "true-shapes" })).rejects.toThrow("it could not be fetched");
  const again = await shaped(() => answer({ kind: "true-shapes" }));
  expect(again.at(-1)?.kind).toBe("scene");
});

test("a drag is answered while they are not all made, and what is made is kept for who asks again", async () => {
  const answer = opened();
  await answer({ kind: "open", texts: PRINTED, binaries: new Map() });
  const begun = await answer({ kind: "true-shapes" });
  expect(begun.kind).toBe("shaping");
  const drag = await answer({ kind: "drag", move: { panel: "two", module: 14 } });
  expect(drag.kind).toBe("dragged");
  const [next] = await shaped(() => answer({ kind: "true-shapes" }));
  const done = begun.kind === "shaping" ? begun.done : 0;
  expect(next?.kind === "scene" || (next?.kind === "shaping" && next.done > done)).toBe(true);
});

const trianglesOf = ({ scene }: Extract<ConsoleReply, { readonly kind: "scene" }>): number =>
  scene.groups
    .flatMap(({ lots }) => lots ?? [])
    .filter(({ tone }) => tone === "print")
    .reduce((sum, { triangles }) => sum + triangles.length / 3, 0);
