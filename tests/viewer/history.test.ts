// The page's history: edits, steps back and forth, and the property that any list of edits undoes to the first text.

import fc from "fast-check";
import { expect, test } from "vitest";
import { textHash } from "../../src/diagnostics/text-edit.ts";
import {
  type Desk,
  EMPTY_HISTORY,
  movesBack,
  stepBack,
  stepForth,
  withEdits,
  withMoves,
  withOutsideStep,
  withStep,
} from "../../viewer/history.ts";

const edited = (desk: Desk, file: string, change: readonly [number, number, string]): Desk => {
  const [start, end, text] = change;
  const baseHash = textHash(desk.texts.get(file) ?? "");
  const changed = withEdits(desk.texts, [{ file, baseHash, start, end, text }]);
  if (changed.kind === "refused") throw new Error(changed.why);
  const step = { what: `edit ${file}`, moves: changed.moves };
  return { texts: changed.texts, history: withStep(desk.history, step) };
};

const FIRST: Desk = {
  texts: new Map([
    ["a.yaml", "name: pump\n"],
    ["b.yaml", "name: shed\n"],
  ]),
  history: EMPTY_HISTORY,
};

const all = (desk: Desk, step: typeof stepBack): Desk => {
  const stepped = step(desk);
  return stepped.kind === "stepped" ? all(stepped.desk, step) : desk;
};

test("random edits of two files undo to the first texts and redo to the last", () => {
  const change = fc.record({
    file: fc.constantFrom("a.yaml", "b.yaml"),
    from: fc.double({ min: 0, max: 1, noNaN: true }),
    share: fc.double({ min: 0, max: 1, noNaN: true }),
    text: fc.string({ maxLength: 8 }),
  });
  fc.assert(
    fc.property(fc.array(change, { maxLength: 40 }), (changes) => {
      const last = changes.reduce((desk, { file, from, share, text }) => {
        const { length } = desk.texts.get(file) ?? "";
        const start = Math.floor(from * length);
        return edited(desk, file, [start, start + Math.floor(share * (length - start)), text]);
      }, FIRST);
      const back = all(last, stepBack);
      expect(back.texts).toEqual(FIRST.texts);
      expect(back.history.done).toEqual([]);
      expect(all(back, stepForth)).toEqual(last);
    }),
  );
});

test("edits of several files are carried out all or none", () => {
  const at = (file: string, baseHash: string) => ({
    file,
    baseHash,
    start: 0,
    end: 4,
    text: "title",
  });
  const [a, b] = ["a.yaml", "b.yaml"].map((file) => textHash(FIRST.texts.get(file) ?? ""));
  const done = withEdits(FIRST.texts, [at("a.yaml", a!), at("b.yaml", b!)]);
  expect(done.kind === "changed" && [...done.texts.values()]).toEqual([
    "title: pump\n",
    "title: shed\n",
  ]);
  const stale = withEdits(FIRST.texts, [at("a.yaml", a!), at("b.yaml", "stale")]);
  expect(stale).toEqual({
    kind: "refused",
    why: "b.yaml has changed since this edit was made",
  });
  expect(withEdits(FIRST.texts, [at("c.yaml", a!)]).kind).toBe("refused");
});

test("a new step ends what could be redone; one from outside only where it meets it", () => {
  const two = edited(edited(FIRST, "a.yaml", [0, 4, "title"]), "a.yaml", [0, 0, "# "]);
  const undone = stepBack(two);
  if (undone.kind !== "stepped") throw new Error(undone.kind);
  const { desk } = undone;
  expect(edited(desk, "b.yaml", [0, 0, "# "]).history.undone).toEqual([]);
  const outside = (file: string) => {
    const text = desk.texts.get(file) ?? "";
    const move = { kind: "presence" as const, file, before: text, after: null };
    return withOutsideStep(desk.history, { what: "outside", moves: [move] });
  };
  expect(outside("b.yaml").undone).toHaveLength(1);
  expect(outside("a.yaml").undone).toEqual([]);
});

test("a file that came goes again, and only while it is the one that came", () => {
  const came = { kind: "presence" as const, file: "c.yaml", before: null, after: "kind: panel\n" };
  const there = withMoves(FIRST.texts, [came]);
  if (there.kind === "refused") throw new Error(there.why);
  expect(there.texts.get("c.yaml")).toBe("kind: panel\n");
  const gone = withMoves(there.texts, movesBack([came]));
  expect(gone.kind === "changed" && gone.texts).toEqual(FIRST.texts);
  const other = new Map([...there.texts, ["c.yaml", "kind: console\n"]]);
  expect(withMoves(other, movesBack([came])).kind).toBe("refused");
});

test("an edit that changes nothing is no step", () => {
  const same = edited(FIRST, "a.yaml", [0, 4, "name"]);
  expect(same.history.done).toEqual([]);
});
