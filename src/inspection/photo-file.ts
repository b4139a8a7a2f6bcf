// Whether the photograph that a panel names is there, is a picture, and holds the marks that were set in it. Only its head
// is read; nothing of the panel hangs on it.

import type { PanelDesign } from "../design/panel-design.ts";
import type { PhotoDesign } from "../design/photo-design.ts";
import { markPairs } from "../design/photo-plane.ts";
import { markName } from "../design/photo-words.ts";
import { resolveInclude } from "../design/resolve-include.ts";
import { spanOf } from "../design/written.ts";
import { type Finding, finding } from "../diagnostics/finding.ts";
import { PHOTO_MISSING, PHOTO_PICTURE } from "../layout/codes.ts";
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
  if (size.kind === "picture") return outside(photo, size, name);
  const message = `${path} can't be laid under the drawing: ${size.why}. Save it again as JPEG or PNG.`;
  return [finding(PHOTO_PICTURE, { message, span, panel: name })];
};

const outside = (
  photo: PhotoDesign,
  { width, height }: { readonly width: number; readonly height: number },
  panel: string,
): readonly Finding[] => {
  const beyond = markPairs(photo.marks).flatMap(({ from }, index) =>
    from.x <= width && from.y <= height ? [] : [index],
  );
  const [first] = beyond;
  if (first === undefined) return [];
  const names = beyond.map((index) => markName(index, photo.marks.kind)).join(", ");
  return [
    finding(PHOTO_PICTURE, {
      message: `${names} of the photograph: ${photo.file} is ${width} by ${height} pixels, and the mark lies outside of it. Was it marked in another size of the picture? Mark it again in this one.`,
      span: spanOf(photo.written, photo.marks.kind),
      panel,
      suppressed: beyond.length - 1,
    }),
  ];
};
