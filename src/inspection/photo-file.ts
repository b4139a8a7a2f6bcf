// Whether the photograph that a panel names is there, is a picture, and holds the marks that were set in it. Its
// pixels are not decoded; nothing of the panel hangs on it.

import type { PanelDesign } from "../design/panel-design.ts";
import type { PhotoDesign } from "../design/photo-design.ts";
import { markPairs } from "../design/photo-plane.ts";
import { markName } from "../design/photo-words.ts";
import { resolveInclude } from "../design/resolve-include.ts";
import { spanOf } from "../design/written.ts";
import { type Finding, finding } from "../diagnostics/finding.ts";
import { decimal } from "../geometry/number.ts";
import { PHOTO_MISSING, PHOTO_PICTURE } from "../layout/codes.ts";
import { pictureDamage } from "./picture-damage.ts";
import { pictureSize } from "./picture-size.ts";

export const photoFindings = (
  { file, photo, name }: Pick<PanelDesign, "file" | "photo" | "name">,
  /** By path from the root; null: it is there and could not be read, which whoever tried has said. */
  binaries: ReadonlyMap<string, Uint8Array | null> = new Map(),
): readonly Finding[] => {
  if (photo === null) return [];
  const resolved = resolveInclude(file, photo.file);
  const path = resolved.kind === "resolved" ? resolved.path : photo.file;
  const bytes = binaries.get(path);
  const span = spanOf(photo.written, "file");
  if (bytes === null) return [];
  if (bytes === undefined) {
    const message = `the photograph ${path} is not there; the panel is made without it. Put it there, or strike out photo:.`;
    return [finding(PHOTO_MISSING, { message, span, panel: name })];
  }
  const size = pictureSize(bytes);
  if (size.kind === "refused") {
    const message = `${path} can't be laid under the drawing: ${size.why}. ${size.works}`;
    return [finding(PHOTO_PICTURE, { message, span, panel: name })];
  }
  const damage = pictureDamage(bytes);
  if (damage === null) return outside(photo, size, name);
  const message = `${path} can't be laid under the drawing whole: ${damage}. Copy it again from where it came from.`;
  return [finding(PHOTO_PICTURE, { message, span, panel: name })];
};

const outside = (
  photo: PhotoDesign,
  { width, height }: { readonly width: number; readonly height: number },
  panel: string,
): readonly Finding[] => {
  const beyond = markPairs(photo.marks).flatMap(({ from: { x, y } }, index) => {
    const [right, below] = [x - width, y - height];
    return right <= 0 && below <= 0 ? [] : [{ index, x, y, isAcross: right >= below }];
  });
  const [first, ...others] = beyond;
  if (first === undefined) return [];
  const { index, x, y, isAcross } = first;
  const [measured, limit] = isAcross ? [x, width] : [y, height];
  const more = others.map((one) => markName(one.index, photo.marks.kind)).join(", ");
  const by = decimal(measured - limit, 1);
  return [
    finding(PHOTO_PICTURE, {
      message: `${markName(index, photo.marks.kind)} of the photograph lies at [${decimal(x, 1)}, ${decimal(y, 1)}], ${by} ${by === "1" ? "pixel" : "pixels"} beyond the ${isAcross ? "right" : "lower"} edge of ${photo.file}, which is ${width} by ${height} pixels${more === "" ? "" : `; beyond its edges too: ${more}`}. Was it marked in another size of the picture? Mark it again in this one.`,
      span: spanOf(photo.written, photo.marks.kind),
      panel,
      measured: { value: measured, unit: "pixels" },
      limit: { value: limit, unit: "pixels" },
      source: { kind: "geometry", name: "the size of the picture" },
      suppressed: others.length,
    }),
  ];
};
