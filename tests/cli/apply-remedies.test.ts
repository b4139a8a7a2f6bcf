import { expect, test } from "vitest";
import { applyRemedies } from "../../src/cli/apply-remedies.ts";
import {
  type CodeEntry,
  type Finding,
  finding,
  type Remedy,
} from "../../src/diagnostics/finding.ts";
import { textHash } from "../../src/diagnostics/text-edit.ts";

const entry = (code: string, severity: CodeEntry["severity"]): CodeEntry => ({
  code,
  severity,
  title: "",
  why: "",
  example: "",
});

/** A toy judge: every "bad" is a fault that may become a "good"; "worse" has a remedy that makes two faults of one. */
const judge = (files: ReadonlyMap<string, string>): readonly Finding[] =>
  [...files].flatMap(([file, text]) => {
    const found = (word: string, code: CodeEntry, remedy: (at: number) => string): Finding[] =>
      [...text.matchAll(new RegExp(`\\b${word}\\b`, "g"))].map((match) => {
        const [start, end] = [match.index, match.index + word.length];
        const edit = { file, baseHash: textHash(text), start, end, text: remedy(start) };
        const remedies: readonly Remedy[] = [{ title: `${word} to ${edit.text}`, edits: [edit] }];
        return finding(code, {
          message: `${word} at ${start}`,
          span: { file, start, end },
          remedies,
        });
      });
    return [
      ...found("bad", entry("toy/bad", "fault"), () => "good"),
      ...found("sad", entry("toy/sad", "fault"), () => "good"),
      ...found("worse", entry("toy/worse", "fault"), () => "bad, worst"),
      ...found("doubtful", entry("toy/doubtful", "query"), () => "good"),
    ];
  });

test("faults are mended one after another, in every file; comments and the rest stay", () => {
  const files = new Map([
    ["a.yaml", "one: bad   # why\ntwo: bad\n"],
    ["b.yaml", "three: bad\n"],
  ]);
  const { files: mended, applied } = applyRemedies(files, judge);
  expect([...mended.values()]).toEqual(["one: good   # why\ntwo: good\n", "three: good\n"]);
  expect(applied).toHaveLength(3);
});

test("a remedy that brings another fault is not taken", () => {
  const files = new Map([["a.yaml", "one: worse\n"]]);
  const { files: mended, applied } = applyRemedies(files, judge);
  expect(mended).toEqual(files);
  expect(applied).toEqual([]);
});

test("queries are left to a person", () => {
  const files = new Map([["a.yaml", "one: doubtful\ntwo: bad\n"]]);
  expect([...applyRemedies(files, judge).files.values()]).toEqual(["one: doubtful\ntwo: good\n"]);
});

test("a fault that was held back for the same cause may come to light and is mended in its turn", () => {
  const veiled = (files: ReadonlyMap<string, string>): readonly Finding[] => {
    const [first, ...rest] = judge(files);
    return first === undefined ? [] : [{ ...first, suppressed: rest.length }];
  };
  const files = new Map([["a.yaml", "one: bad\ntwo: sad\n"]]);
  const { files: mended, applied } = applyRemedies(files, veiled);
  expect([...mended.values()]).toEqual(["one: good\ntwo: good\n"]);
  expect(applied).toHaveLength(2);
});
