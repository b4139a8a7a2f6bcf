// The library that is built beside the program: catalogue, fonts and licences in one file.

import { type Library, openLibrary } from "../catalogue/library.ts";
import { utf8Text } from "../pack/utf8.ts";
import type { Disk } from "./disk.ts";

export const libraryFrom = async (file: string, disk: Disk): Promise<Library> =>
  openLibrary(JSON.parse(utf8Text(disk.read(file))));
