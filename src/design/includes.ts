// Which further files a design needs. Pure: whoever may read files goes on until no new name comes up.

import { type Finding, finding, type Span } from "../diagnostics/finding.ts";
import { nearestHint } from "../diagnostics/nearest.ts";
import { MEANING_CODES } from "./codes-of-meaning.ts";
import { nearPaths } from "./near-paths.ts";
import { readText } from "./read-text.ts";
import { resolveInclude } from "./resolve-include.ts";
import { source } from "./source.ts";
import type { MapNode, TextNode } from "./text-node.ts";

/** A file that is named, and where. */
export interface Include {
  /** From the root, forward slashes. */
  readonly path: string;
  readonly span: Span;
}

/** Paths from the root of the files that a file names, in the order of its text, each once. */
export const includesOf = (file: string, text: string): readonly string[] => [
  ...new Set(includeSpans(file, text).map(({ path }) => path)),
];

/** Paths from the root of files of another kind than text: shapes of a console's obstacles and walls, a panel's photograph. */
export const binariesOf = (file: string, text: string): readonly string[] => [
  ...new Set(binarySpans(file, text).map(({ path }) => path)),
];

/** The same with their places. */
export const binarySpans = (file: string, text: string): readonly Include[] => {
  const { root } = readText(source(file, text));
  if (root?.kind !== "map") return [];
  const paths = root.entries.flatMap(({ key, value }): readonly TextNode[] => {
    if (key === "obstacles") return shapesOf(value);
    if (key === "photo") return valuesOf(value, "file");
    return key === "envelope" && value.kind === "map"
      ? value.entries
          .filter((entry) => entry.key === "walls")
          .flatMap((entry) => shapesOf(entry.value))
      : [];
  });
  return paths.flatMap((node) => resolvedAt(node, file));
};

const shapesOf = (list: TextNode): readonly TextNode[] =>
  list.kind === "list" ? list.items.flatMap((item) => valuesOf(item, "stl")) : [];

/** Texts that a file names, with their places. What can't be resolved is left out here: reading the design says so. */
export const includeSpans = (file: string, text: string): readonly Include[] => {
  const { root } = readText(source(file, text));
  if (root?.kind !== "map") {
    return [];
  }
  return writtenPaths(root).flatMap((node) => resolvedAt(node, file));
};

const resolvedAt = (node: TextNode, file: string): readonly Include[] => {
  const resolved = node.kind === "scalar" ? resolveInclude(file, node.text) : null;
  return resolved?.kind === "resolved" ? [{ path: resolved.path, span: node.span }] : [];
};

/**
 * A finding for every circle in which files name each other. `includes` holds, by path, what each file names.
 * A circle is told once, at the place where its first file (by name) leads into it.
 */
export const includeCycles = (
  includes: ReadonlyMap<string, readonly Include[]>,
): readonly Finding[] => {
  const findings: Finding[] = [];
  const done = new Set<string>();
  for (const file of [...includes.keys()].toSorted()) {
    const circle = circleFrom(file, includes);
    const closing = circle?.at(-1);
    if (circle === null || closing === undefined || done.has(circleName(circle))) {
      continue;
    }
    done.add(circleName(circle));
    const first = circle[0] ?? closing;
    findings.push(
      finding(MEANING_CODES.includeCycle, {
        message: `files name each other in a circle: ${[file, ...circle.map(({ path }) => path)].join(" names ")}`,
        span: first.span,
        related: circle.slice(1).map(({ path, span }) => ({ what: `${path} is named here`, span })),
      }),
    );
  }
  return findings;
};

/** A finding for a named file that is not among those there are. */
export const fileMissing = ({ path, span }: Include, there: Iterable<string>): Finding => {
  return finding(MEANING_CODES.fileMissing, {
    message: `there is no file ${path}${nearestHint(nearPaths(path, there))}`,
    span,
  });
};

const writtenPaths = (root: MapNode): readonly TextNode[] =>
  root.entries.flatMap(({ key, value }): readonly TextNode[] => {
    switch (key) {
      case "workshop":
        return [value];
      case "catalogue":
        return value.kind === "list" ? value.items : [value];
      case "panels":
        return value.kind === "list" ? value.items.flatMap(filesOf) : [];
      default:
        return [];
    }
  });

const filesOf = (use: TextNode): readonly TextNode[] => valuesOf(use, "file");

const valuesOf = (node: TextNode, wanted: string): readonly TextNode[] =>
  node.kind === "map"
    ? node.entries.filter(({ key }) => key === wanted).map(({ value }) => value)
    : [];

const circleName = (circle: readonly Include[]): string =>
  circle
    .map(({ path }) => path)
    .toSorted()
    .join("\n");

type Way = readonly Include[];

/** The shortest way from a file back to itself, by breadth; null where there is none. */
const circleFrom = (file: string, includes: ReadonlyMap<string, Way>): Way | null => {
  const seen = new Set<string>();
  let ways: readonly Way[] = [[]];
  while (ways.length > 0) {
    const longer = ways.flatMap((way) =>
      (includes.get(way.at(-1)?.path ?? file) ?? []).map((next): Way => [...way, next]),
    );
    const closed = longer.find((way) => way.at(-1)?.path === file);
    if (closed !== undefined) {
      return closed;
    }
    ways = longer.filter((way) => isNew(seen, way.at(-1)?.path ?? file));
  }
  return null;
};

const isNew = (seen: Set<string>, path: string): boolean => {
  const before = seen.size;
  seen.add(path);
  return seen.size > before;
};
