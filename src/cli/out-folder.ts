// Where `make` writes: the folder that the user names, or out/NAME. A folder that holds the design itself, or the place
// where the user stands, is refused: a pack swaps its folder and would carry them away.

import { dirname, join, resolve } from "node:path";
import { safeName } from "../pack/file-name.ts";
import { type WrongUse, wrongUse } from "./command.ts";
import type { Disk } from "./disk.ts";
import { attempt } from "./disk-trouble.ts";
import { isBelow } from "./is-below.ts";
import type { OpenProject } from "./open-project.ts";
import { targetRefusal } from "./pack-folder.ts";
import type { Shell } from "./shell.ts";

export const outFolder = (
  asked: string | undefined,
  { loaded, project }: OpenProject,
  { cwd, disk }: Pick<Shell, "cwd" | "disk">,
): { readonly path: string } | WrongUse => {
  const path = resolve(cwd, asked ?? join("out", safeName(project.name)));
  const looked = attempt(() => targetRefusal(path, disk));
  if (looked.kind === "trouble") return wrongUse(`${path} can't be used: ${looked.why}.`);
  if (looked.result !== null) return wrongUse(looked.result);
  const place = truePlace(path, disk);
  const held = [loaded.root, truePlace(cwd, disk)].find((folder) => isBelow(place, folder));
  if (held !== undefined)
    return wrongUse(`${path} holds ${held}; a pack needs a folder of its own: --out out/NAME.`);
  return { path };
};

/** Zips lie in a folder that nothing is swapped for: it may hold whatever it likes. `isOneFile`: the project gives one zip. */
export const zipOutFolder = (
  asked: string | undefined,
  {
    name,
    isOneFile,
  }: { readonly name: OpenProject["project"]["name"]; readonly isOneFile: boolean },
  { cwd, disk }: Pick<Shell, "cwd" | "disk">,
): { readonly path: string } | WrongUse => {
  const path = resolve(cwd, asked ?? (isOneFile ? "out" : join("out", safeName(name))));
  const looked = attempt(() => targetRefusal(path, disk));
  if (looked.kind === "trouble") return wrongUse(`${path} can't be used: ${looked.why}.`);
  return looked.result === null ? { path } : wrongUse(looked.result);
};

/** Links followed as far as the path exists. */
const truePlace = (path: string, disk: Disk): string => {
  const found = attempt(() => disk.truePath(path));
  if (found.kind === "done") return found.result;
  const above = dirname(path);
  return above === path ? path : join(truePlace(above, disk), path.slice(above.length));
};
