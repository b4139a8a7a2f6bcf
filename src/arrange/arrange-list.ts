// A component list becomes a panel file: rows by group, spaced by the people table, nothing colliding behind, rails and
// fixings kept free, on as few modules as that takes. What comes out is laid out and judged like any design; where a
// fault is left, the spacing grows and it is tried again.

import type { Mount } from "../catalogue/mount.ts";
import type { Catalogue } from "../catalogue/record.ts";
import { judge } from "../checks/judge.ts";
import type { ComponentList } from "../design/component-list.ts";
import { HOLE_NAMES } from "../design/hole-names.ts";
import type { PanelDesign } from "../design/panel-design.ts";
import { readDesign } from "../design/read-design.ts";
import { VIEWING_DISTANCE } from "../design/usual-values.ts";
import type { WorkshopDesign } from "../design/workshop-design.ts";
import { type CodeEntry, type Finding, finding } from "../diagnostics/finding.ts";
import { decimal } from "../geometry/number.ts";
import { type Mm, mm } from "../geometry/quantity.ts";
import { UNKNOWN_FONT, UNKNOWN_MOUNT, UNKNOWN_PART } from "../layout/codes.ts";
import { unknownName } from "../layout/context.ts";
import { layoutPanel } from "../layout/layout-panel.ts";
import type { TextStyle } from "../layout/markings/style.ts";
import type { Lettering } from "../lettering/lettering.ts";
import { sheetPartsOf } from "../parts/sheet-parts.ts";
import { blockOf, LEAST_RUN } from "./blocks.ts";
import { type Composition, composed } from "./composition.ts";
import { BORDER_GAP, type PanelHead, panelText } from "./panel-text.ts";
import { plainStack } from "./plain-stack.ts";
import type { Spacing } from "./spacing.ts";
import { type Unit, unitOf } from "./unit.ts";
import { namer } from "./unit-names.ts";

export interface ArrangeOptions {
  readonly name: string;
  readonly title: string;
  readonly mount: string;
  /** For mounts that leave the width open. */
  readonly width: Mm | null;
  /** `plain`: one engraved sheet. `lit`: a painted opal face on an aluminium backing, with fixings. */
  readonly stack: "plain" | "lit";
  /** Path of the workshop file as it is to stand in the text, and what it says. */
  readonly workshopPath: string | null;
  readonly workshop: WorkshopDesign | null;
  /** Path of the project's own catalogue file as it is to stand in the text; `catalogue` holds its records already. */
  readonly cataloguePath: string | null;
  readonly catalogue: Catalogue;
  readonly lettering: Lettering;
}

export interface Arranged {
  /** null where the list or the mount leave nothing to arrange. */
  readonly text: string | null;
  /** Of the list, and of the panel that was made from it. */
  readonly findings: readonly Finding[];
}

const TOO_MANY: CodeEntry = {
  code: "arrange/too-many",
  severity: "fault",
  title: "a list that no panel of this mount takes",
  why: "The components, at the distances that hands, bodies and legends need, are wider or higher than the mount allows. Split the list over two panels, or take another mount.",
  example: "part,quantity\npush-button-22,500",
};

export const ARRANGE_CODES: readonly CodeEntry[] = [TOO_MANY];

const FONT = "overpass-semibold";
const LEGEND_HEIGHT = mm(4.1);
/** A list longer than this is a slip: no panel holds so many hands. */
const MOST_UNITS = 400;
/** Each try adds a millimetre between neighbours. */
const TRIES = 6;

export const arrangeList = (list: ComponentList, options: ArrangeOptions): Arranged => {
  const { catalogue, lettering } = options;
  const mount = catalogue.mounts.get(options.mount);
  const face = lettering.faces.get(FONT);
  const origin = { file: list.file, start: 0, end: 0 };
  if (mount === undefined) {
    const miss = unknownName(UNKNOWN_MOUNT, options.mount, {
      span: origin,
      known: catalogue.mounts.keys(),
    });
    return { text: null, findings: [...list.findings, miss] };
  }
  if (face === undefined) {
    const miss = unknownName(UNKNOWN_FONT, FONT, { span: origin, known: lettering.faces.keys() });
    return { text: null, findings: [...list.findings, miss] };
  }
  const style: TextStyle = { face, height: LEGEND_HEIGHT, gap: mm(2), cutWidth: mm(0.15) };
  const read = unitsOf(list, { catalogue, style });
  const findings = [...list.findings, ...read.findings];
  if (read.units.length === 0) return { text: null, findings };
  if (read.units.length > MOST_UNITS)
    return { text: null, findings: [...findings, tooMany(list, read.units.length)] };
  const best = bestOf(read.units, { ...options, mount, style, list });
  return { text: best.text, findings: [...findings, ...best.findings] };
};

const tooMany = (list: ComponentList, count: number): Finding =>
  finding(TOO_MANY, {
    message: `The list holds ${count} components; a panel takes ${MOST_UNITS} at most.`,
    span: { file: list.file, start: 0, end: 0 },
    measured: { value: count, unit: "count" },
    limit: { value: MOST_UNITS, unit: "count" },
  });

const unitsOf = (
  list: ComponentList,
  options: { readonly catalogue: Catalogue; readonly style: TextStyle },
): { readonly units: readonly Unit[]; readonly findings: readonly Finding[] } => {
  const findings: Finding[] = [];
  const nameOf = namer(HOLE_NAMES);
  const units = list.lines.flatMap((line) => {
    const part = options.catalogue.parts.get(line.part);
    if (part === undefined) {
      const span = line.cells.part ?? line.span;
      findings.push(
        unknownName(UNKNOWN_PART, line.part, { span, known: options.catalogue.parts.keys() }),
      );
      return [];
    }
    const count = Math.min(line.quantity, MOST_UNITS + 1);
    const isShared = line.legend !== null && !line.legend.includes(";") && count >= LEAST_RUN;
    const shared = isShared ? nameOf(line.legend, part.id) : null;
    const named = Array.from({ length: count }, (_, index) => {
      const legend = memberLegend(line.legend, count, index);
      return { id: nameOf(legend, part.id), line, part, legend };
    });
    const rowId = shared ?? named[0]?.id ?? "";
    return named.map((one) => unitOf({ ...one, rowId }, options));
  });
  return { units: byGroup(units), findings };
};

/** "A; B; C" gives one legend each; a single one is numbered where there are several of the part. */
const memberLegend = (legend: string | null, count: number, index: number): string | null => {
  if (legend === null) return null;
  const words = legend.split(";").map((word) => word.trim());
  if (words.length > 1) return words[index] || null;
  return count === 1 ? legend : `${legend} ${index + 1}`;
};

/** Groups in the order in which the list first names them. */
const byGroup = (units: readonly Unit[]): readonly Unit[] => {
  const groups = new Map<string, Unit[]>();
  for (const unit of units) groups.set(unit.group, [...(groups.get(unit.group) ?? []), unit]);
  return [...groups.values()].flat();
};

interface Attempt {
  readonly text: string | null;
  readonly findings: readonly Finding[];
}

interface Scene extends Omit<ArrangeOptions, "mount"> {
  readonly mount: Mount;
  readonly style: TextStyle;
  readonly list: ComponentList;
}

/** The first attempt without a fault or a hand query; else the one with the fewest. */
const bestOf = (units: readonly Unit[], scene: Scene): Attempt => {
  let best: Attempt | null = null;
  for (let extra = 0; extra < TRIES; extra += 1) {
    const attempt = attemptWith(units, extra, scene);
    if (attempt.text === null) return best ?? attempt;
    if (best === null || troubles(attempt) < troubles(best)) best = attempt;
    if (troubles(best) === 0) break;
  }
  return best ?? { text: null, findings: [] };
};

const troubles = ({ findings }: Attempt): number =>
  findings.filter(({ severity, code }) => severity === "fault" || code === "checks/hands").length;

const attemptWith = (units: readonly Unit[], extra: number, scene: Scene): Attempt => {
  const room = roomFor(scene, extra);
  const blocks = groupsOf(units).map((group) =>
    blockOf(group, { width: room.panelWidth - 2 * room.side, spacing: room.spacing }),
  );
  const composition = composed(blocks, room);
  const head = headFor(scene, composition);
  if (head === null) return { text: null, findings: [tooHigh(scene, composition)] };
  const text = panelText(head, composition.rows);
  return { text, findings: judged(text, scene) };
};

const groupsOf = (units: readonly Unit[]): readonly (readonly Unit[])[] => {
  const groups = new Map<string, Unit[]>();
  for (const unit of units) groups.set(unit.group, [...(groups.get(unit.group) ?? []), unit]);
  return [...groups.values()];
};

/** Kept free beside a rail or edge for the stack's fixings: a web, a screw's head, a web. */
const FIXING_STRIP = 9.5;
/** Widest panel that a subrack or a free mount is given when the list does not say. */
const USUAL_WIDTH = 200;

const roomFor = (scene: Scene, extra: number): Parameters<typeof composed>[1] => {
  const spacing: Spacing = { solid: 3 + extra, words: scene.style.height };
  const panelWidth = scene.mount.width ?? scene.width ?? USUAL_WIDTH;
  const fixings = scene.stack === "lit" ? FIXING_STRIP : 4;
  const border = BORDER_GAP + scene.style.height / 2 + 1;
  return {
    panelWidth,
    side: Math.max(scene.mount.seat, 3) + fixings + BORDER_GAP,
    end: fixings + border,
    between: 2 * border + extra,
    spacing,
  };
};

const LIT_STACK = [
  "{ layer: face, sheet: opal-acrylic-3, finish: paint-and-engrave }",
  "{ layer: backing, sheet: aluminium-2 }",
];

const headFor = (scene: Scene, composition: Composition): PanelHead | null => {
  const { mount } = scene;
  const sizes = sizesFor(scene, composition.height);
  if (sizes === null) return null;
  return {
    name: scene.name,
    title: scene.title,
    mount: mount.id,
    workshop: scene.workshopPath,
    catalogue: scene.cataloguePath,
    ...sizes,
    viewingDistance: `${decimal(VIEWING_DISTANCE, 3)} mm`,
    stack: scene.stack === "lit" ? LIT_STACK : plainStack(scene),
    fixings: scene.stack === "lit" ? "{ screws: m3, dowels: 3 mm }" : null,
    font: FONT,
  };
};

/** A panel higher than this is no panel: two metres. */
const MOST_HEIGHT = 2000;

const sizesFor = (
  { mount, width }: Scene,
  height: number,
): Pick<PanelHead, "height" | "width"> | null => {
  const wide = `${decimal(width ?? USUAL_WIDTH, 3)} mm`;
  if (height > MOST_HEIGHT) return null;
  if (mount.counts === "width") {
    if (mount.fixedHeight !== null && height > mount.fixedHeight) return null;
    const pitches = Math.ceil(((width ?? USUAL_WIDTH) + mount.height.less) / mount.height.pitch);
    const own = mount.fixedHeight === null ? height : mount.fixedHeight;
    return { height: `${decimal(own, 3)} mm`, width: `${pitches} ${mount.height.unit}` };
  }
  const own = mount.width === null ? wide : null;
  if (mount.height.unit === "mm") return { height: `${Math.ceil(height)} mm`, width: own };
  const count = Math.ceil((height + mount.height.less) / mount.height.pitch);
  return { height: `${count} ${mount.height.unit}`, width: own };
};

const tooHigh = (scene: Scene, composition: Composition): Finding => {
  const most = scene.mount.fixedHeight ?? mm(MOST_HEIGHT);
  return finding(TOO_MANY, {
    message: `The list needs a panel ${decimal(composition.height, 1)} mm high; ${scene.mount.id} takes ${decimal(most, 1)} mm.`,
    span: { file: scene.list.file, start: 0, end: 0 },
    measured: { value: composition.height, unit: "mm" },
    limit: { value: most, unit: "mm" },
  });
};

/** The panel read, laid out and judged as `check` would; its findings are the arranger's own yardstick. */
const judged = (text: string, scene: Scene): readonly Finding[] => {
  const { workshop, catalogue, lettering } = scene;
  const { design, findings } = readDesign("panel.yaml", text);
  if (design?.kind !== "panel") return findings;
  return [...findings, ...panelFindings(design, { workshop, catalogue, lettering })];
};

const panelFindings = (
  design: PanelDesign,
  context: Pick<ArrangeOptions, "workshop" | "catalogue" | "lettering">,
): readonly Finding[] => {
  const laid = layoutPanel(design, context);
  if (laid.layout === null) return laid.findings;
  const made = sheetPartsOf(laid.layout, context.lettering);
  const { workshop, catalogue } = context;
  const parts = { sheetParts: made.parts, printedParts: [] };
  const facts = { layout: laid.layout, ...parts, workshop, catalogue, edit: NO_EDIT };
  return [...laid.findings, ...made.findings, ...judge(facts)];
};

const NO_EDIT = (
  span: Finding["span"],
  text: string,
): Finding["remedies"][number]["edits"][number] => ({
  file: span.file,
  baseHash: "",
  start: span.start,
  end: span.end,
  text,
});
