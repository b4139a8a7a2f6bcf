// Mount holes are judged by their mount's own record: its web is thin by standard, and no general rule cries about it.

import type { Mount } from "../../catalogue/mount.ts";
import { shapeSize } from "../../catalogue/shape-contour.ts";
import { spanOf } from "../../design/written.ts";
import { type CodeEntry, finding } from "../../diagnostics/finding.ts";
import { contourDistance } from "../../geometry/distance.ts";
import { rectangle } from "../../geometry/shapes.ts";
import { seatedLayer } from "../../layout/seated-layer.ts";
import { isUnder } from "../limits.ts";
import type { Rule } from "../rule.ts";
import { measureMm, millimetres } from "../words.ts";
import { WEB } from "./web-limit.ts";

const entry: CodeEntry = {
  code: "checks/mount-web",
  severity: "fault",
  title: "a mount hole nearer to the edge than its mount allows",
  why: "The mount's record says how much of the sheet must be left beside its holes; some leave little by standard, and nothing is to spare. A panel that is too small, or a larger hole, breaks through.",
  example: "mount: corner-screws\nwidth: 120 mm\nheight: 12 mm",
};

export const mountWeb: Rule = {
  entry,
  move: null,
  judge: ({ layout }) => {
    const held = seatedLayer(layout);
    // The mount's web is reckoned on nominal sizes and for the hole in metal; acrylic has a rule of its own.
    if (held === null || (held.material?.startsWith("acrylic") ?? false)) return [];
    const nominal = rectangle(layout.nominal);
    const thinnest = held.cutOuts
      .filter(({ purpose }) => purpose === "mount")
      .map((hole) => ({ hole, gap: contourDistance(nominal, hole.contour).gap }))
      .reduce<{ readonly hole: { readonly owner: string }; readonly gap: number } | null>(
        (worst, one) => (worst === null || one.gap < worst.gap ? one : worst),
        null,
      );
    const { mount, design } = layout;
    if (thinnest === null || !isUnder(thinnest.gap, mount.web)) return [];
    const key = design.written.keys["height"] === undefined ? "width" : "height";
    const more = mount.web - thinnest.gap;
    return [
      finding(entry, {
        message: `${thinnest.hole.owner} leaves ${millimetres(thinnest.gap, mount.web)} to the edge of ${held.id}; ${mount.id} counts on ${millimetres(mount.web, thinnest.gap)}, ${millimetres(more, 0)} more.${advice(key, mount)}`,
        span: spanOf(design.written, key),
        related: [{ what: "mount", span: spanOf(design.written, "mount") }],
        subjects: [thinnest.hole.owner],
        measured: measureMm(thinnest.gap),
        limit: measureMm(mount.web),
        source: { kind: "standard", name: mount.title },
      }),
    ];
  },
};

/** Two holes of a side, one at each end, with a web between them. */
const advice = (key: string, mount: Mount): string => {
  if (mount.holes.kind !== "corners") return "";
  const size = shapeSize(mount.holes.hole);
  const least = Math.ceil(2 * Math.max(mount.holes.inset, mount.web + size / 2) + size + WEB.usual);
  return ` ${key}: ${millimetres(least)} is the least that holds its screws.`;
};
