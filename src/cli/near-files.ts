// A file that a design names and that is not there, told with the nearest of those that lie where it was looked for. Takes the
// project and the disk; the design's texts alone don't know what else its folder holds.

import { dirname, extname, join, posix } from "node:path";
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

const withNearFile = (found: Finding, files: Project["files"], { root, disk }: Folder): Finding => {
  if (found.code !== MEANING_CODES.fileMissing.code) return found;
  const { file, start } = found.span;
  const text = files.get(file);
  const named: readonly Include[] =
    text === undefined ? [] : [...includeSpans(file, text), ...binarySpans(file, text)];
  const missing = named.find(({ span }) => span.start === start);
  if (missing === undefined) return found;
  const there = filesBeside(missing.path, { root, disk }).filter((path) => path !== file);
  return there.length === 0 ? found : { ...found, message: fileMissing(missing, there).message };
};

/** Paths from the root of files of the same ending in the folder where it would lie. */
const filesBeside = (path: string, { root, disk }: Folder): readonly string[] => {
  const beside = posix.dirname(path);
  const folder = join(root, dirname(path));
  const listed = attempt(() =>
    isBelow(root, disk.truePath(folder))
      ? disk.list(folder).filter((name) => disk.look(join(folder, name)) === "file")
      : [],
  );
  const names = listed.kind === "done" ? listed.result : [];
  return names
    .filter((name) => !name.startsWith(".") && extname(name) === extname(path))
    .map((name) => posix.join(beside, name));
};
