// Mount holes are judged by their mount's own record: its web is thin by standard, and no general rule cries about it.

import { spanOf } from "../../design/written.ts";
import { type CodeEntry, type Finding, finding } from "../../diagnostics/finding.ts";
import { contourDistance } from "../../geometry/distance.ts";
import { rectangle } from "../../geometry/shapes.ts";
import { samePlace } from "../../geometry/tolerance.ts";
import { lastRigidSheet } from "../../layout/stack.ts";
import type { PanelFacts, Rule } from "../rule.ts";
import { measureMm, millimetres } from "../words.ts";

const thinWeb: CodeEntry = {
  code: "checks/mount-web",
  severity: "fault",
  title: "a mount hole nearer to the edge than its mount allows",
  why: "The stud's hole is so close to the edge by standard that nothing is to spare. A smaller panel, a larger hole or more undersize breaks through.",
  example: "mount: console-rail",
};

const inAcrylic: CodeEntry = {
  code: "checks/mount-in-acrylic",
  severity: "query",
  title: "studs that clamp acrylic",
  why: "Beside a rail's stud hole only about 1.3 mm of the sheet is left. Acrylic cracks there when the stud is drawn tight, sooner or later. Aluminium of 1.5 to 2 mm, laminate, or a bush round each stud holds.",
  example: "mount: console-rail\nstack:\n  - { layer: face, sheet: opal-acrylic-3 }",
};

export const mountWeb: Rule = {
  entry: thinWeb,
  judge: (facts) => {
    const { layout } = facts;
    const held = layout.layers[lastRigidSheet(layout.layers)];
    if (held === undefined) return [];
    // The standard's web is reckoned on nominal sizes; acrylic has a rule of its own.
    if (held.material?.startsWith("acrylic") ?? false) return [];
    const nominal = rectangle(layout.nominal);
    const holes = held.cutOuts.filter(({ purpose }) => purpose === "mount");
    const gaps = holes.map((hole) => ({ hole, gap: contourDistance(nominal, hole.contour).gap }));
    const thinnest = gaps.toSorted((a, b) => a.gap - b.gap)[0];
    const least = layout.mount.web;
    if (thinnest === undefined || thinnest.gap >= least - samePlace) return [];
    return [
      finding(thinWeb, {
        message: `${thinnest.hole.owner} leaves ${millimetres(thinnest.gap)} to the edge of ${held.id}; the mount ${layout.mount.id} counts on ${millimetres(least)}.`,
        span: spanOf(layout.design.written, "mount"),
        subjects: [thinnest.hole.owner],
        measured: measureMm(thinnest.gap),
        limit: measureMm(least),
        source: { kind: "standard", name: layout.mount.title },
      }),
    ];
  },
};

export const mountInAcrylic: Rule = { entry: inAcrylic, judge: (facts) => acrylicFindings(facts) };

const acrylicFindings = ({ layout }: PanelFacts): readonly Finding[] => {
  const held = layout.layers[lastRigidSheet(layout.layers)];
  if (held?.material == null || !held.material.startsWith("acrylic")) return [];
  if (layout.mount.holes.kind !== "columns") return [];
  const hole = held.cutOuts.find(({ purpose }) => purpose === "mount");
  if (hole === undefined) return [];
  const { gap } = contourDistance(layout.outline, hole.contour);
  return [
    finding(inAcrylic, {
      message: `The studs clamp ${held.id}, which is acrylic, with ${millimetres(gap)} of it beside each hole. Aluminium of 1.5 or 2 mm, laminate, or a bush round each stud would hold.`,
      span: spanOf(held.design.written, "sheet"),
      subjects: [held.id],
      measured: measureMm(gap),
      limit: measureMm(2),
      source: {
        kind: "house-rule",
        name: "acrylic beside a drawn-up stud (common practice)",
        key: "mount-web-acrylic",
      },
    }),
  ];
};
