// An angle as somebody types it, whole or with decimals, with or without its unit. What is none is refused with one that would do.

export type TypedAngle =
  /** `text`: as it may stand in a design; `value`: degrees. */
  | { readonly kind: "angle"; readonly text: string; readonly value: number }
  | { readonly kind: "refused"; readonly why: string };

export function angleTyped(typed: string): TypedAngle {
  const text = typed.trim();
  const found = /^([+-]?\d+(?:\.\d+)?) ?(?:deg|°)?$/.exec(text);
  return found === null
    ? { kind: "refused", why: `"${text}" is no angle; write 15 deg` }
    : { kind: "angle", text, value: Number(found[1]) };
}
