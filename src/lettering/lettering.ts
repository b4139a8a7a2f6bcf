// All faces of a library by their ids. Nothing is decoded here: a face opens its font when a character is first asked for.

import { strFromU8 } from "fflate";
import { invariant } from "../geometry/invariant.ts";
import { bytesFromBase64 } from "./base64.ts";
import { type Face, faceOf } from "./face.ts";
import type { FontRecord } from "./font-record.ts";
import type { GlyphSource } from "./glyph-source.ts";
import { openOutlineSource } from "./outline-source.ts";
import { openSingleLineSource } from "./single-line-source.ts";

export interface Lettering {
  /** In the order of the records. */
  readonly faces: ReadonlyMap<string, Face>;
}

export const openLettering = (fonts: readonly FontRecord[]): Lettering => {
  const faces = new Map<string, Face>();
  for (const record of fonts) {
    invariant(!faces.has(record.id), "every font of a library has an id of its own");
    faces.set(
      record.id,
      faceOf(record, () => openSource(record)),
    );
  }
  return { faces };
};

const openSource = (record: FontRecord): GlyphSource => {
  const bytes = bytesFromBase64(record.base64);
  switch (record.format) {
    case "woff":
      return openOutlineSource(bytes);
    case "svg":
      return openSingleLineSource(strFromU8(bytes));
  }
};
