// The library of the catalogue as it stands in the sources, built once a test file.

import { buildLibrary } from "../../scripts/build-library.ts";
import { type Library, openLibrary } from "../../src/catalogue/library.ts";

let built: Library | null = null;

export const testLibrary = async (): Promise<Library> => {
  built ??= openLibrary(JSON.parse(JSON.stringify(buildLibrary())));
  return built;
};
