// The files that a name which leads to none was most likely meant to be: those alone whose own name, without folder and ending, is
// nearly the same. A file of quite another name is no help to whoever mistyped one.

import { isNearly, nearestNames, typingDistance } from "../diagnostics/nearest.ts";

/** Nearest first, three at most; of equally near names the one in the folder that was written comes first. */
export const nearPaths = (path: string, there: Iterable<string>): readonly string[] => {
  const wanted = nameOf(path);
  const near = [...new Set(there)].filter((other) => isNearly(wanted, nameOf(other)));
  const inOrder = nearestNames(path, near, near.length);
  return inOrder
    .toSorted((a, b) => typingDistance(wanted, nameOf(a)) - typingDistance(wanted, nameOf(b)))
    .slice(0, MOST);
};

const MOST = 3;

const nameOf = (path: string): string => {
  const own = path.slice(path.lastIndexOf("/") + 1);
  const dot = own.lastIndexOf(".");
  return dot > 0 ? own.slice(0, dot) : own;
};
