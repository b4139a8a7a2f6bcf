// The lamp boxes of a panel: box, lid, the diffusers in its cells and the film in front of them.

import type { LampBoxDesign } from "../../design/printed-design.ts";
import { spanOf } from "../../design/written.ts";
import { type Finding, finding } from "../../diagnostics/finding.ts";
import { grownExtent } from "../../geometry/extent.ts";
import { type Mm, mm } from "../../geometry/quantity.ts";
import { LAMP_BOX_EAR, lampBoxPlan } from "../../layout/lamp-box-plan.ts";
import type { PanelLayout, PlacedComponent } from "../../layout/panel-layout.ts";
import { thicknessOf } from "../../layout/stack.ts";
import { HEAT_SET_BOSS } from "../../standards/heat-set.ts";
import type { SheetPart } from "../sheet-part.ts";
import { bareFacts, solidBox, wallFact } from "./bare-facts.ts";
import { insertFor } from "./bosses.ts";
import { fittedSheet } from "./fitted-sheet.ts";
import { fittedPrint, fittedStock } from "./fitted-stock.ts";
import { LAMP_BOX_LEDS } from "./lamp-box-codes.ts";
import type { LampBoxFact, LampBoxPart, LampCellFact, LampTextFact } from "./lamp-box-facts.ts";
import { type LabelFilm, labelFilm, legendOf } from "./lamp-box-film.ts";
import { lampBoxFindings, patternFinding } from "./lamp-box-findings.ts";
import {
  type LampBoxScene,
  type LampBoxSizes,
  type LampCell,
  lampBoxSizes,
  seatedLed,
} from "./lamp-box-sizes.ts";
import { cellContour, lampBoxLid, lampBoxSolid } from "./lamp-box-solid.ts";
import { tidy } from "./opaque-wall.ts";
import { type PrintedContext, type PrintedMaker, printerFor } from "./printed-context.ts";
import type { BossFact } from "./printed-facts.ts";
import type { PrintedPart } from "./printed-part.ts";
import { bedFindings, singlePart } from "./single-part.ts";

export interface LampBoxes {
  /** Each box and its lid. */
  readonly parts: readonly PrintedPart[];
  /** The diffusers, to be cut. */
  readonly sheets: readonly SheetPart[];
  readonly films: readonly LabelFilm[];
  readonly findings: readonly Finding[];
}

export const lampBoxesOf: PrintedMaker = (layout, context) => lampBoxesWithSheets(layout, context);

export const lampBoxesWithSheets = (layout: PanelLayout, context: PrintedContext): LampBoxes => {
  const entries = [
    ...new Set(
      layout.components.filter(({ common }) => common.lampBox !== null).map(({ entry }) => entry),
    ),
  ];
  const made = entries.map((entry) => {
    const members = layout.components.filter((component) => component.entry === entry);
    return lampBoxOf(members, layout, context);
  });
  return {
    parts: made.flatMap(({ parts }) => parts),
    sheets: made.flatMap(({ sheets }) => sheets),
    films: made.flatMap(({ films }) => films),
    findings: made.flatMap(({ findings }) => findings),
  };
};

const NO_BOX: LampBoxes = { parts: [], sheets: [], films: [], findings: [] };

const lampBoxOf = (
  members: readonly PlacedComponent[],
  layout: PanelLayout,
  context: PrintedContext,
): LampBoxes => {
  const scene = sceneOf(members, layout, context);
  if ("missing" in scene) return { ...NO_BOX, findings: scene.missing };
  const sizes = lampBoxSizes(scene);
  const findings = lampBoxFindings(scene, sizes);
  if (findings.some(({ severity }) => severity === "fault")) return { ...NO_BOX, findings };
  const box = boxPart(scene, sizes);
  const lid = lidPart(scene, sizes, context);
  const owner = box.owner;
  const diffusers = fittedSheet(
    {
      id: `${layout.name}-${owner}-diffusers`,
      title: `${layout.design.title}, diffusers of ${owner}`,
      stock: scene.diffuserStock,
      pieces: sizes.cells.map((cell) => ({
        feature: `${cell.id}/diffuser`,
        contour: cellContour(grownExtent(cell.opening, -sizes.clearance)),
      })),
    },
    layout,
    context,
  );
  return {
    parts: [box, lid],
    sheets: [diffusers],
    films: [labelFilm(layout, members, sizes)],
    findings: [...findings, ...bedFindings(box)],
  };
};

type Scene = LampBoxScene & { readonly diffuserStock: SheetPart["stock"] };

/** Everything looked up that the box is made of, or what could not be found. */
const sceneOf = (
  members: readonly PlacedComponent[],
  layout: PanelLayout,
  context: PrintedContext,
): Scene | { readonly missing: readonly Finding[] } => {
  const [first] = members;
  const design = first?.common.lampBox ?? null;
  if (first === undefined || design === null) return { missing: [] };
  const plan = lampBoxPlan(members, design, layout.layers);
  const counts = { columns: plan.columns.length, rows: plan.rows.length };
  const pattern = patternFinding(members, counts);
  const asked = { written: design.written, owner: first.entry };
  const print = fittedPrint(design.print, { ...asked, key: "print" }, { layout, context });
  const diffuser = fittedStock(design.diffuser, { ...asked, key: "diffuser" }, context);
  const part = context.catalogue.parts.get(design.led);
  const led = part === undefined ? null : seatedLed(part);
  if (pattern !== null || print.kind === "missing" || diffuser.kind === "missing" || led === null)
    return {
      missing: [
        ...(pattern === null ? [] : [pattern]),
        ...[print, diffuser].flatMap((one) => (one.kind === "missing" ? [one.finding] : [])),
        ...(led === null ? [noLed(design, first.entry)] : []),
      ],
    };
  const material = context.catalogue.materials.get(diffuser.stock.material) ?? null;
  return {
    layout,
    members,
    design,
    stock: print.stock,
    printer: printerFor("lamp-box", context),
    diffuser: thicknessOf(diffuser.stock, material),
    diffuserStock: diffuser.stock,
    led,
    insert: insertFor("m2", context, plan.front - plan.rear),
  };
};

const noLed = (design: LampBoxDesign, entry: string): Finding =>
  finding(LAMP_BOX_LEDS, {
    message: `The lamp box of ${entry} can't seat "${design.led}": it takes a bare LED with a round rim, like led-3 or led-5.`,
    span: spanOf(design.written, "led"),
    subjects: [entry],
  });

const commonOf = (
  { layout, members, stock, printer, design }: LampBoxScene,
  what: string,
): Omit<Parameters<typeof singlePart>[0], "role" | "solid" | "bedSide" | "facts"> => {
  const owner = members[0]?.entry ?? "";
  return {
    id: `${layout.name}-${owner}-${what}`,
    panel: layout.name,
    title: `${layout.design.title}, ${what.replaceAll("-", " ")} of ${owner}`,
    revision: layout.design.revision,
    owner,
    stock,
    printer,
    span: design.written.span,
  };
};

const boxPart = (scene: LampBoxScene, sizes: LampBoxSizes): LampBoxPart => {
  const { wall } = sizes;
  const solid = lampBoxSolid(sizes, scene);
  const owners = scene.members.map(({ id }) => id);
  const inner = [sizes.innerLines.across, sizes.innerLines.up].filter((lines) => lines !== null);
  const facts = bareFacts(solidBox(solid), {
    walls: [sizes.outerLines, ...inner].map((lines) =>
      wallFact("box", owners, { thickness: tidy(lines * wall.line), wall }),
    ),
    bosses: bossFacts(scene, sizes),
  });
  const part = singlePart({
    ...commonOf(scene, "lamp-box"),
    role: "lamp-box",
    solid,
    bedSide: "rear",
    facts,
  });
  return { ...part, role: "lamp-box", lampBox: lampBoxFact(scene, sizes) };
};

const lidPart = (
  scene: LampBoxScene,
  sizes: LampBoxSizes,
  context: PrintedContext,
): PrintedPart => {
  const solid = lampBoxLid(sizes, scene, context.lettering);
  return singlePart({
    ...commonOf(scene, "lamp-box-lid"),
    role: "lamp-box-lid",
    solid,
    bedSide: "front",
    facts: bareFacts(solidBox(solid)),
  });
};

const bossFacts = (
  { insert, members }: LampBoxScene,
  { plan, pilot }: LampBoxSizes,
): readonly BossFact[] =>
  insert === null || pilot === null
    ? []
    : plan.ears.map((at) => ({
        owner: members[0]?.entry ?? "",
        at,
        kind: "insert",
        thread: insert.thread,
        hole: pilot,
        outside: mm(LAMP_BOX_EAR),
        wall: tidy((LAMP_BOX_EAR - pilot.modelled) / 2),
        depth: tidy(insert.length + HEAT_SET_BOSS.holeBeyondInsert.most),
        below: tidy(plan.front - plan.rear - insert.length - HEAT_SET_BOSS.holeBeyondInsert.most),
        insert: insert.length,
      }));

const lampBoxFact = (scene: LampBoxScene, sizes: LampBoxSizes): LampBoxFact => {
  const { members, design, led } = scene;
  const { plan, wall, innerLines } = sizes;
  const thickness = (lines: number | null): Mm | null =>
    lines === null ? null : tidy(lines * wall.line);
  const { supply } = led.part;
  return {
    owner: members[0]?.entry ?? "",
    cells: sizes.cells.map((cell, index) => cellFact(cell, members[index], scene.layout)),
    wallAcross: thickness(innerLines.across),
    wallUp: thickness(innerLines.up),
    outerWall: tidy(sizes.outerLines * wall.line),
    line: wall.line,
    depth: tidy(plan.front - sizes.shelfDepth - plan.rear),
    lampHeight: tidy(plan.rear + (sizes.plug + led.reach) / 2),
    outsideDepth: tidy(plan.front - plan.rear),
    shelf: {
      diffuser: design.diffuser,
      depth: sizes.shelfDepth,
      ledge: sizes.ledge,
      clearance: sizes.clearance,
    },
    flange: design.flange,
    lid: {
      thickness: sizes.lidThickness,
      plug: sizes.plug,
      clearance: sizes.clearance,
      screws: plan.ears,
      lens: sizes.lens,
      rim: sizes.rim,
    },
    watts:
      supply === null
        ? null
        : (members.length * design.leds * supply.volts * supply.milliamps) / 1000,
  };
};

const cellFact = (
  cell: LampCell,
  member: PlacedComponent | undefined,
  layout: PanelLayout,
): LampCellFact => ({
  window: cell.id,
  number: cell.number,
  opening: cellContour(cell.opening),
  inside: cellContour(cell.inside),
  leds: cell.leds,
  pitch: cell.pitch,
  text: member === undefined ? null : textFact(cell, member, layout),
});

/** The text's ends and the places midway between LEDs are the farthest from any. */
const textFact = (
  cell: LampCell,
  member: PlacedComponent,
  layout: PanelLayout,
): LampTextFact | null => {
  const marking = legendOf(layout, member);
  if (marking === undefined) return null;
  const { minX, maxX } = marking.box;
  const places = [...new Set(cell.leds.map(({ x }) => x))].sort((a, b) => a - b);
  const middles = places.slice(1).map((x, index) => (x + places[index]!) / 2);
  const candidates = [minX, maxX, ...middles.filter((x) => x > minX && x < maxX)];
  const away = (x: number): number => Math.min(...places.map((led) => Math.abs(led - x)));
  return {
    words: marking.text ?? "",
    length: mm(maxX - minX),
    reach: mm(Math.max(...candidates.map(away))),
  };
};
