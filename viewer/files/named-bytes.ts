// Bytes of the shapes and photographs that a design's texts name, as far as they are not too large: of such a one it is said
// that it is there and how large it is.

import { MOST_BINARY_BYTES } from "../../src/design/file-caps.ts";
import type { DesignBinaries } from "../core-messages.ts";

export interface NamedFile {
  readonly path: string;
  readonly file: Pick<File, "size" | "arrayBuffer">;
}

export interface NamedBytes {
  /** null: it is there and is too large. */
  readonly binaries: DesignBinaries;
  /** Of each that is too large, in words. */
  readonly troubles: readonly string[];
}

export async function namedBytes(files: readonly NamedFile[]): Promise<NamedBytes> {
  const binaries = await Promise.all(
    files.map(
      async ({ path, file }): Promise<[string, Uint8Array | null]> => [
        path,
        isTooLarge(file) ? null : new Uint8Array(await file.arrayBuffer()),
      ],
    ),
  );
  const troubles = files
    .filter(({ file }) => isTooLarge(file))
    .map(
      ({ path, file }) => `${path} has ${file.size} bytes, at most ${MOST_BINARY_BYTES} are read`,
    );
  return { binaries: new Map(binaries), troubles };
}

const isTooLarge = ({ size }: NamedFile["file"]): boolean => size > MOST_BINARY_BYTES;
