// A file that a design names and that is not there, told with the nearest of those that lie about where it was looked for. Takes
// the project and the disk; the design's texts alone don't know what else its folders hold.

import { extname, join, posix } from "node:path";
import { MEANING_CODES } from "../design/codes-of-meaning.ts";
import { binarySpans, fileMissing, type Include, includeSpans } from "../design/includes.ts";
import type { Finding } from "../diagnostics/finding.ts";
import type { Project } from "../project.ts";
import type { Disk } from "./disk.ts";
import { attempt } from "./disk-trouble.ts";
import { isBelow } from "./is-below.ts";

export interface Folder {
  readonly root: string;
  readonly disk: Disk;
}

export const withNearFiles = (project: Project, folder: Folder): Project => ({
  ...project,
  findings: project.findings.map((found) => withNearFile(found, project.files, folder)),
});

const withNearFile = (found: Finding, files: Project["files"], folder: Folder): Finding => {
  if (found.code !== MEANING_CODES.fileMissing.code) return found;
  const { file, start } = found.span;
  const text = files.get(file);
  const named: readonly Include[] =
    text === undefined ? [] : [...includeSpans(file, text), ...binarySpans(file, text)];
  const missing = named.find(({ span }) => span.start === start);
  if (missing === undefined) return found;
  const there = [...files.keys(), ...filesAbout(missing.path, folder)].filter(
    (path) => path !== file && isAlike(path, missing.path),
  );
  return { ...found, message: fileMissing(missing, there).message };
};

/** What one kind of file may end in: a name is as easily mistaken in its ending as elsewhere. */
const KINDS: readonly (readonly string[])[] = [[".yaml", ".yml"], [".stl"]];

const isAlike = (path: string, wanted: string): boolean => {
  const endings = [path, wanted].map((one) => extname(one).toLowerCase());
  return (
    endings[0] === endings[1] || KINDS.some((kind) => endings.every((one) => kind.includes(one)))
  );
};

/** A stray folder with thousands in it is not searched to its end. */
const MOST_FOLDERS = 50;

/** Paths from the root: in the folder where it would lie, the one above, and those beside. */
const filesAbout = (path: string, folder: Folder): readonly string[] => {
  const own = posix.dirname(path);
  const above = posix.dirname(own);
  const folders = new Set([own, above, ...listed(above, "folder", folder)]);
  return [...folders].slice(0, MOST_FOLDERS).flatMap((one) => listed(one, "file", folder));
};

const listed = (
  within: string,
  kind: "file" | "folder",
  { root, disk }: Folder,
): readonly string[] => {
  const folder = join(root, within);
  const found = attempt(() =>
    isBelow(root, disk.truePath(folder))
      ? disk
          .list(folder)
          .filter((name) => !name.startsWith(".") && disk.look(join(folder, name)) === kind)
      : [],
  );
  const names = found.kind === "done" ? found.result : [];
  return names.map((name) => posix.join(within, name));
};
