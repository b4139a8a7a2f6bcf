// Changes here and outside: what is taken over, what is joined, what is asked about. Joining is held against a reference:
// `git merge-file`, which merges three texts by lines, where it is there.

import { execFileSync, spawnSync } from "node:child_process";
import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { differences, mergeLines } from "../../viewer/files/line-merge.ts";
import { type Reconciled, reconcile } from "../../viewer/files/reconcile.ts";
import { textMove } from "../../viewer/files/text-move.ts";
import { withMoves } from "../../viewer/history.ts";

const BASE = "one\ntwo\nthree\nfour\nfive\nsix\n";
const MINE = BASE.replace("one", "ONE");
const THEIRS = BASE.replace("six", "SIX");

const texts = (text: string | null): ReadonlyMap<string, string> =>
  new Map(text === null ? [] : [["a.yaml", text]]);

const reconciled = (
  stored: string | null,
  mine: string | null,
  theirs: string | null,
): Reconciled & { readonly after: string | null } => {
  const sides = { stored: texts(stored), mine: texts(mine), theirs: texts(theirs) };
  const found = reconcile(sides);
  const moved = withMoves(sides.mine, found.moves);
  if (moved.kind === "refused") throw new Error(moved.why);
  return { ...found, after: moved.texts.get("a.yaml") ?? null };
};

describe("a file", () => {
  test("that is not edited here is taken over, deleted or made as it may be", () => {
    for (const [base, theirs] of [
      [BASE, THEIRS],
      [BASE, null],
      [null, THEIRS],
    ] as const) {
      const { after, takenOver, conflicts, stored } = reconciled(base, base, theirs);
      expect([after, takenOver, conflicts]).toEqual([theirs, ["a.yaml"], []]);
      expect(stored).toEqual(texts(theirs));
    }
  });

  test("that has not changed outside stays as it is here", () => {
    const { after, moves, stored } = reconciled(BASE, MINE, BASE);
    expect([after, moves]).toEqual([MINE, []]);
    expect(stored).toEqual(texts(BASE));
  });

  test("with edits in other lines is joined", () => {
    const { after, joined, stored } = reconciled(BASE, MINE, THEIRS);
    expect([after, joined]).toEqual([BASE.replace("one", "ONE").replace("six", "SIX"), ["a.yaml"]]);
    expect(stored).toEqual(texts(THEIRS));
  });

  test("with edits in the same lines, or deleted on one side, is left as it is and asked about", () => {
    for (const [base, mine, theirs] of [
      [BASE, MINE, BASE.replace("one", "eins")],
      [BASE, MINE, null],
      [BASE, null, THEIRS],
      [null, MINE, THEIRS],
    ] as const) {
      const { after, conflicts, moves, stored } = reconciled(base, mine, theirs);
      expect([after, moves]).toEqual([mine, []]);
      expect(conflicts).toEqual([{ file: "a.yaml", base, theirs }]);
      expect(stored).toEqual(texts(base));
    }
  });

  test("that became the same on both sides is no more a matter", () => {
    const { moves, conflicts, stored } = reconciled(BASE, MINE, MINE);
    expect([moves, conflicts]).toEqual([[], []]);
    expect(stored).toEqual(texts(MINE));
  });
});

const lines = fc.array(fc.constantFrom("a\n", "b\n", "c\n", "d\n", "e\n"), { maxLength: 12 });

test("joining keeps both changes or says that it can't, and is the same from both sides", () => {
  fc.assert(
    fc.property(lines, lines, lines, (a, b, c) => {
      const [base, mine, theirs] = [a.join(""), b.join(""), c.join("")];
      const merged = mergeLines({ base, mine, theirs });
      const mirrored = mergeLines({ base, mine: theirs, theirs: mine });
      expect(mirrored.kind).toBe(merged.kind);
      if (mine === base) expect(merged).toEqual({ kind: "merged", text: theirs });
      if (theirs === base) expect(merged).toEqual({ kind: "merged", text: mine });
    }),
  );
});

const hasGit = spawnSync("git", ["--version"]).status === 0;

test.skipIf(!hasGit)(
  "(skipped only where there is no git) edits of far lines give what `git merge-file` gives",
  () => {
    const folder = mkdtempSync(join(tmpdir(), "consolewright-"));
    const line = fc.integer({ min: 0, max: 9 });
    try {
      fc.assert(
        fc.property(line, line, fc.boolean(), (first, gap, removes) => {
          const rows = Array.from({ length: 24 }, (_, index) => `line ${index}\n`);
          const base = rows.join("");
          const mine = rows.with(first, "mine\n").join("");
          // At least two lines lie between: both count that as apart.
          const theirs = rows.with(first + gap + 3, removes ? "" : "theirs\n").join("");
          const [m, b, t] = Object.entries({ mine, base, theirs }).map(([name, text]) => {
            writeFileSync(join(folder, name), text);
            return join(folder, name);
          });
          const reference = execFileSync("git", ["merge-file", "-p", m!, b!, t!], {
            encoding: "utf8",
          });
          expect(mergeLines({ base, mine, theirs })).toEqual({ kind: "merged", text: reference });
        }),
        { numRuns: 20 },
      );
    } finally {
      rmSync(folder, { recursive: true });
    }
  },
);

test("a move between any two texts leads there and back, and keeps only what differs", () => {
  const text = fc.option(fc.string({ unit: "binary", maxLength: 30 }));
  fc.assert(
    fc.property(text, text, (before, after) => {
      const move = textMove("a.yaml", before, after);
      const there = withMoves(texts(before), [move]);
      expect(there.kind === "changed" && there.texts).toEqual(texts(after));
    }),
  );
  const move = textMove("a.yaml", BASE, MINE);
  expect(move.kind === "edit" && move.forth.map(({ text: put }) => put)).toEqual(["ONE"]);
});

test("line ends stay what they are", () => {
  const windows = (unix: string): string => unix.replaceAll("\n", "\r\n");
  const merged = mergeLines({ base: windows(BASE), mine: windows(MINE), theirs: windows(THEIRS) });
  const wanted = windows(BASE.replace("one", "ONE").replace("six", "SIX"));
  expect(merged).toEqual({ kind: "merged", text: wanted });
  expect(mergeLines({ base: "a\nb", mine: "a\nb\n", theirs: "a\nb" })).toEqual({
    kind: "merged",
    text: "a\nb\n",
  });
});

test("differences name the line and both wordings", () => {
  expect(differences("a\nb\nc\n", "a\nx\ny\nc\n")).toEqual([
    { line: 2, before: ["b"], after: ["x", "y"] },
  ]);
  expect(differences("a\n", "a\n")).toEqual([]);
});

describe("a text in which one line stands thousands of times, as blank ones do", () => {
  const BLANK = "\n".repeat(20_000);
  // Searched line by line this takes the third power of that number: 15 s for 2,000.
  const PATIENCE = 1000;
  const timed = <Result>(work: () => Result): Result => {
    const began = performance.now();
    const result = work();
    expect(performance.now() - began).toBeLessThan(PATIENCE);
    return result;
  };

  test("is joined where the changes lie apart, and told apart where they meet, in a moment", () => {
    const base = `one\ntwo\n${BLANK}six\n`;
    const mine = base.replace("one", "ONE");
    expect(timed(() => mergeLines({ base, mine, theirs: base.replace("six", "SIX") }))).toEqual({
      kind: "merged",
      text: `ONE\ntwo\n${BLANK}SIX\n`,
    });
    expect(timed(() => mergeLines({ base, mine, theirs: "one\ntwo\nsix\n" }))).toEqual({
      kind: "merged",
      text: "ONE\ntwo\nsix\n",
    });
    for (const theirs of [base.replace("two", "TWO"), base.replace("one", "eins")])
      expect(timed(() => mergeLines({ base, mine, theirs })).kind).toBe("overlapping");
  });

  test("is shown with what differs, in a moment", () => {
    const before = `one\n${BLANK}two\n${BLANK}six\n`;
    const after = before.replace("one", "ONE").replace("six", "SIX");
    const found = timed(() => differences(before, after));
    expect(found.map(({ line }) => line)).toEqual([1]);
    const [only] = found;
    expect([only?.before.at(0), only?.before.at(-1)]).toEqual(["one", "six"]);
    expect([only?.after.at(0), only?.after.at(-1)]).toEqual(["ONE", "SIX"]);
    expect(timed(() => differences(before, before.replace("two", "TWO")))).toEqual([
      { line: 20_002, before: ["two"], after: ["TWO"] },
    ]);
  });
});
