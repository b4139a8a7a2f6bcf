// The disk, in the few steps that the program takes on it: so that a test can let any one of them fail.
// Nothing in here follows a link, except reading.

import {
  accessSync,
  closeSync,
  constants,
  existsSync,
  lstatSync,
  mkdirSync,
  openSync,
  readdirSync,
  readFileSync,
  readlinkSync,
  readSync,
  realpathSync,
  renameSync,
  rmdirSync,
  statSync,
  unlinkSync,
  writeFileSync,
} from "node:fs";
import { dirname } from "node:path";

export type Thing = "nothing" | "file" | "folder" | "link" | "other";

export interface Disk {
  readonly look: (path: string) => Thing;
  /** Names in a folder, in order. */
  readonly list: (folder: string) => readonly string[];
  readonly sizeOf: (path: string) => number;
  readonly read: (path: string) => Uint8Array;
  /** The first bytes of a file. */
  readonly readHead: (path: string, most: number) => Uint8Array;
  /** The true place of something that exists, all links followed. */
  readonly truePath: (path: string) => string;
  readonly linkTarget: (path: string) => string;
  /** Whether its text may be changed; no where the file is marked read-only, whoever asks. */
  readonly isWritable: (path: string) => boolean;
  /** Writes a new file, with the permissions of `like` where it is given; fails where there is one. */
  readonly write: (path: string, bytes: Uint8Array, like?: string) => void;
  readonly makeFolder: (path: string) => void;
  readonly rename: (from: string, to: string) => void;
  readonly removeFile: (path: string) => void;
  /** Fails where the folder is not empty. */
  readonly removeFolder: (path: string) => void;
}

/** What the system makes new files with, less the user's mask. */
const USUAL_MODE = 0o666;

export const realDisk: Disk = {
  look: (path) => thingAt(path),
  list: (folder) => readdirSync(folder).sort(),
  sizeOf: (path) => statSync(path).size,
  read: (path) => readFileSync(path),
  readHead: (path, most) => {
    const handle = openSync(path, "r");
    try {
      const head = new Uint8Array(most);
      return head.subarray(0, readSync(handle, head, 0, most, 0));
    } finally {
      closeSync(handle);
    }
  },
  truePath: (path) => realpathSync(path),
  linkTarget: (path) => readlinkSync(path),
  isWritable: (path) => canWrite(path),
  write: (path, bytes, like) => {
    const mode = like === undefined ? USUAL_MODE : statSync(like).mode & 0o777;
    const handle = openSync(path, "wx", mode);
    try {
      writeFileSync(handle, bytes);
    } finally {
      closeSync(handle);
    }
  },
  makeFolder: (path) => makeFolders(path),
  rename: (from, to) => renameSync(from, to),
  removeFile: (path) => unlinkSync(path),
  removeFolder: (path) => rmdirSync(path),
};

/** One after the other: Node's own recursive mkdir never ends where a file system answers that a new folder is not there. */
const makeFolders = (path: string): void => {
  if (existsSync(path)) return;
  const above = dirname(path);
  if (above !== path) makeFolders(above);
  try {
    mkdirSync(path);
  } catch (error) {
    // Another run may have made it in between.
    if (!existsSync(path)) throw error;
  }
};

/** A rename replaces a file that is marked read-only, and an administrator may write any: the mark itself is asked. */
const canWrite = (path: string): boolean => {
  try {
    accessSync(path, constants.W_OK);
    accessSync(dirname(realpathSync(path)), constants.W_OK);
    return (statSync(path).mode & ANYBODY_WRITES) !== 0;
  } catch {
    return false;
  }
};

const ANYBODY_WRITES = 0o222;

const thingAt = (path: string): Thing => {
  const found = lstatSync(path, { throwIfNoEntry: false });
  if (found === undefined) return "nothing";
  if (found.isSymbolicLink()) return "link";
  if (found.isDirectory()) return "folder";
  return found.isFile() ? "file" : "other";
};
