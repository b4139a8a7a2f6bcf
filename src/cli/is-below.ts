// Whether a place lies in a folder, or is that folder. Both absolute, links already followed.

import { isAbsolute, relative, sep } from "node:path";

export const isBelow = (folder: string, place: string): boolean => {
  const way = relative(folder, place);
  return !isAbsolute(way) && way.split(sep)[0] !== "..";
};
