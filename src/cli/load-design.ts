// Reads the files of a design: the first one, then whatever they name, until no new name comes up.
// Nothing above the root is read, links included; a file that can't be read is a finding, not an end.

import { dirname, join, resolve } from "node:path";
import { MOST_BINARY_BYTES, MOST_TEXT_BYTES } from "../design/file-caps.ts";
import { binarySpans, includesOf } from "../design/includes.ts";
import { type CodeEntry, type Finding, finding } from "../diagnostics/finding.ts";
import { OUTSIDE_ROOT, OVERSIZE_FILE, TOO_MANY_FILES, UNREADABLE_FILE } from "./codes.ts";
import type { DesignPlace } from "./design-argument.ts";
import type { Disk } from "./disk.ts";
import { attempt } from "./disk-trouble.ts";
import { isBelow } from "./is-below.ts";

export interface LoadedDesign extends DesignPlace {
  /** Text by path from the root. */
  readonly files: ReadonlyMap<string, string>;
  /** Bytes by path from the root: what the texts name that is no text; null where it is there and was refused. */
  readonly binaries: ReadonlyMap<string, Uint8Array | null>;
  readonly findings: readonly Finding[];
}

const MOST_FILES = 500;

export const loadDesign = (place: DesignPlace, disk: Disk): LoadedDesign => {
  const files = new Map<string, string>();
  const findings: Finding[] = [];
  const seen = new Set([place.entry]);
  for (const path of seen) {
    const read = readText(path, place.root, disk);
    if (read.kind === "absent") continue;
    if (read.kind === "refused") {
      findings.push(read.finding);
      continue;
    }
    files.set(path, read.text);
    for (const include of includesOf(path, read.text)) {
      if (seen.size < MOST_FILES) seen.add(include);
      else if (!seen.has(include)) {
        findings.push(
          told(
            TOO_MANY_FILES,
            path,
            `more than ${MOST_FILES} files; ${include} and what follows were not read`,
          ),
        );
        return withShapes({ ...place, files, findings }, disk);
      }
    }
  }
  return withShapes({ ...place, files, findings }, disk);
};

/**
 * With the bytes that its texts name. What is refused is told where it is named: it is a trouble of that panel or console, and
 * of no other.
 */
const withShapes = (loaded: Omit<LoadedDesign, "binaries">, disk: Disk): LoadedDesign => {
  const binaries = new Map<string, Uint8Array | null>();
  const findings = [...loaded.findings];
  const named = [...loaded.files].flatMap(([path, text]) => binarySpans(path, text));
  for (const path of new Set(named.map((one) => one.path))) {
    const read = readBytes(path, loaded.root, { disk, most: MOST_BINARY_BYTES });
    if (read.kind === "bytes") binaries.set(path, read.bytes);
    if (read.kind !== "refused") continue;
    binaries.set(path, null);
    for (const one of named)
      if (one.path === path) findings.push({ ...read.finding, span: one.span });
  }
  return { ...loaded, binaries, findings };
};

type ReadText =
  | { readonly kind: "text"; readonly text: string }
  /** Whoever named it says so, at the place where it is named. */
  | { readonly kind: "absent" }
  | { readonly kind: "refused"; readonly finding: Finding };

type ReadBytes =
  | { readonly kind: "bytes"; readonly bytes: Uint8Array }
  | Exclude<ReadText, { readonly kind: "text" }>;

const readText = (path: string, root: string, disk: Disk): ReadText => {
  const read = readBytes(path, root, { disk, most: MOST_TEXT_BYTES });
  return read.kind === "bytes" ? decoded(path, read.bytes) : read;
};

const readBytes = (
  path: string,
  root: string,
  { disk, most }: { readonly disk: Disk; readonly most: number },
): ReadBytes => {
  const place = join(root, path);
  const outcome = attempt((): ReadBytes => {
    if (disk.look(linkEnd(place, disk)) === "nothing") return { kind: "absent" };
    const truePlace = disk.truePath(place);
    if (!isBelow(root, truePlace))
      return refused(OUTSIDE_ROOT, path, `${path} is a link that leads out of the design's folder`);
    if (disk.look(truePlace) !== "file")
      return refused(UNREADABLE_FILE, path, `${path} is not a file`);
    const size = disk.sizeOf(truePlace);
    if (size > most)
      return refused(OVERSIZE_FILE, path, `${path} has ${size} bytes, at most ${most} are read`);
    return { kind: "bytes", bytes: disk.read(truePlace) };
  });
  return outcome.kind === "done"
    ? outcome.result
    : refused(UNREADABLE_FILE, path, `${path} can't be read: ${outcome.why}`);
};

/** Where links lead from a place, one after the other; more of them than any system follows lead in a circle. */
const linkEnd = (place: string, disk: Disk, left = MOST_LINKS): string =>
  left === 0 || disk.look(place) !== "link"
    ? place
    : linkEnd(resolve(dirname(place), disk.linkTarget(place)), disk, left - 1);

/** Linux gives up after as many (path_resolution(7)). */
const MOST_LINKS = 40;

const decoded = (path: string, bytes: Uint8Array): ReadText => {
  try {
    // The mark at the beginning stays: offsets count it.
    const decoder = new TextDecoder("utf-8", { fatal: true, ignoreBOM: true });
    return { kind: "text", text: decoder.decode(bytes) };
  } catch {
    return refused(UNREADABLE_FILE, path, `${path} is not UTF-8 text`);
  }
};

const refused = (
  code: CodeEntry,
  path: string,
  message: string,
): { readonly kind: "refused"; readonly finding: Finding } => ({
  kind: "refused",
  finding: told(code, path, message),
});

const told = (code: CodeEntry, file: string, message: string): Finding =>
  finding(code, { message, span: { file, start: 0, end: 0 } });
