// The library for tests: built in memory from the same sources as the shipped one, once a test file.

import { buildLibrary } from "../../scripts/build-library.ts";
import { type Library, openLibrary } from "../../src/catalogue/library.ts";

let opened: Library | null = null;

export function testLibrary(): Library {
  opened ??= openLibrary(JSON.parse(JSON.stringify(buildLibrary())));
  return opened;
}
