// From what a user calls a design (a file, or a folder that holds one) to the file to begin with and its root:
// the nearest folder upward that holds a workshop file, else the nearest with a console file, unless `--root` names another.
// It is looked for from the folder that was named: a file in it that is a link leads nowhere else.

import { dirname, extname, join, relative, resolve, sep } from "node:path";
import { utf8Text } from "../pack/utf8.ts";
import { isWrongUse, type WrongUse, wrongUse } from "./command.ts";
import type { Disk } from "./disk.ts";
import { attempt } from "./disk-trouble.ts";
import { isBelow } from "./is-below.ts";

export interface DesignPlace {
  /** Absolute, all links followed. */
  readonly root: string;
  /** Path of the first file from the root, forward slashes. */
  readonly entry: string;
}

export const designPlace = (
  argument: string,
  given: { readonly cwd: string; readonly root: string | undefined },
  disk: Disk,
): DesignPlace | WrongUse => {
  const named = namedFile(resolve(given.cwd, argument), argument, disk);
  if (isWrongUse(named)) return named;
  const file = truePath(named.path, argument, disk);
  if (isWrongUse(file)) return file;
  const root =
    given.root === undefined
      ? { path: nearestRoot(named.home, disk) }
      : truePath(resolve(given.cwd, given.root), given.root, disk);
  if (isWrongUse(root)) return root;
  if (given.root !== undefined && !isBelow(root.path, file.path))
    return wrongUse(`${argument} does not lie below the root ${root.path}.`);
  const bounds = named.isFolder ? named.home : root.path;
  return given.root !== undefined || isBelow(bounds, file.path)
    ? { root: root.path, entry: relative(root.path, file.path).split(sep).join("/") }
    : leadsOut(named, file.path);
};

const leadsOut = ({ path }: Named, target: string): WrongUse =>
  wrongUse(
    `${path} is a link to ${target}, which is outside its folder's design. To work on that file, name it: ${target}`,
  );

interface Place {
  readonly path: string;
}

/** The file that is meant, the folder that it was found in (all links followed), and whether the folder was named. */
interface Named extends Place {
  readonly home: string;
  readonly isFolder: boolean;
}

const namedFile = (path: string, argument: string, disk: Disk): Named | WrongUse => {
  if (disk.look(path) === "nothing") return wrongUse(`There is no file or folder ${argument}.`);
  const place = truePath(path, argument, disk);
  if (isWrongUse(place)) return place;
  const isFolder = disk.look(place.path) === "folder";
  const home = isFolder ? place : truePath(dirname(path), argument, disk);
  if (isWrongUse(home)) return home;
  const file = isFolder ? onlyDesignIn(home.path, argument, disk) : { path };
  return isWrongUse(file) ? file : { path: file.path, home: home.path, isFolder };
};

const truePath = (path: string, argument: string, disk: Disk): Place | WrongUse => {
  const found = attempt(() => disk.truePath(path));
  return found.kind === "trouble"
    ? wrongUse(`${argument} can't be used: ${found.why}.`)
    : { path: found.result };
};

const onlyDesignIn = (folder: string, argument: string, disk: Disk): Place | WrongUse => {
  const kinds = kindsIn(folder, disk);
  for (const kind of ["console", "panel"]) {
    const found = kinds.filter((file) => file.kind === kind).map(({ name }) => name);
    const usual = found.find((name) => name === `${kind}.yaml`);
    const only = usual ?? (found.length === 1 ? found[0] : undefined);
    if (only !== undefined) return { path: join(folder, only) };
    if (found.length > 1)
      return wrongUse(`${argument} holds several ${kind} files; name one: ${found.join(", ")}.`);
  }
  return wrongUse(`${argument} holds no console or panel file (YAML with "kind: panel").`);
};

/** A stray folder of thousands of files is not searched to its end. */
const MOST_FILES = 200;
const HEAD = 4096;

const kindsIn = (
  folder: string,
  disk: Disk,
): readonly { readonly name: string; readonly kind: string }[] => {
  const listed = attempt(() => disk.list(folder));
  if (listed.kind === "trouble") return [];
  return listed.result
    .filter((name) => [".yaml", ".yml"].includes(extname(name)))
    .slice(0, MOST_FILES)
    .flatMap((name) => {
      const kind = kindOf(join(folder, name), disk);
      return kind === null ? [] : [{ name, kind }];
    });
};

const kindOf = (file: string, disk: Disk): string | null => {
  const head = attempt(() =>
    // A pipe or a device would keep the reader waiting.
    disk.look(disk.truePath(file)) === "file" ? utf8Text(disk.readHead(file, HEAD)) : "",
  );
  return head.kind === "done" ? (/^kind:[ \t]*([a-z]+)/m.exec(head.result)?.[1] ?? null) : null;
};

/** Designs are not nested deeper than this below their root. */
const MOST_LEVELS = 12;

/** Several consoles may share a workshop that lies above them; a design that has none ends at its console. */
const nearestRoot = (start: string, disk: Disk): string => {
  const above = foldersUpward(start).map((folder) => ({ folder, kinds: kindsIn(folder, disk) }));
  const holding = (wanted: string): string | undefined =>
    above.find(({ kinds }) => kinds.some(({ kind }) => kind === wanted))?.folder;
  return holding("workshop") ?? holding("console") ?? start;
};

const foldersUpward = (start: string): readonly string[] => {
  const folders = [start];
  for (let folder = start; folders.length < MOST_LEVELS; ) {
    const above = dirname(folder);
    if (above === folder) break;
    folders.push(above);
    folder = above;
  }
  return folders;
};
