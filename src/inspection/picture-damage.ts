// What is wrong with a picture behind its head: data that are cut off, or altered where the format can tell. A browser shows such a
// picture in part, grey from there on, or not at all. Nothing is decoded.

import { jpegDamage } from "./jpeg-damage.ts";
import { pngDamage } from "./png-damage.ts";

/** null where nothing is wrong, and for pictures of other formats. A clause: "it is cut off ...". */
export const pictureDamage = (bytes: Uint8Array): string | null => {
  const known = KNOWN.get(bytes);
  if (known !== undefined) return known.why;
  const why = pngDamage(bytes) ?? jpegDamage(bytes);
  KNOWN.set(bytes, { why });
  return why;
};

/** An edit of the text reads the same bytes again, and the check of 50 MB takes a quarter of a second. */
const KNOWN = new WeakMap<Uint8Array, { readonly why: string | null }>();
