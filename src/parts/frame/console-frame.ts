// The door of this folder: bays of a console and what its builder says of the frame become boards that go together. Takes the
// layout and the workshop's stock and machine; gives every part with its joints and the order of assembly, and findings.
// Where a fault stands in the way there is no frame.

import type { Catalogue } from "../../catalogue/record.ts";
import type { ConsoleDesign } from "../../design/console-design.ts";
import type { FrameDesign } from "../../design/frame-design.ts";
import { REVISION } from "../../design/usual-values.ts";
import type { MachineDesign, StockDesign, WorkshopDesign } from "../../design/workshop-design.ts";
import { spanOf } from "../../design/written.ts";
import type { Finding } from "../../diagnostics/finding.ts";
import { decimal } from "../../geometry/number.ts";
import type { ConsoleLayout } from "../../layout/console/console-layout.ts";
import {
  type LayoutContext,
  machineFor,
  stockNames,
  stockOf,
  unknownName,
} from "../../layout/context.ts";
import type { Lettering } from "../../lettering/lettering.ts";
import { assembled } from "./assembly.ts";
import { type CarriedBays, carriedBays } from "./carried-bays.ts";
import { SHEET_UNKNOWN } from "./codes.ts";
import { finishedPart, type Making } from "./finished-part.ts";
import { partFindings, planFindings, stockFindings, widthFindings } from "./frame-findings.ts";
import { frameInside } from "./frame-inside.ts";
import type { ConsoleFrame } from "./frame-part.ts";
import { acrossBays, type FramePlan, leastAcross } from "./frame-plan.ts";
import { proud, withOpenings } from "./openings.ts";
import type { Piece, Pieces } from "./piece.ts";
import type { Profile } from "./profile.ts";
import { type Relief, reliefFor } from "./relief.ts";
import { sectionPieces } from "./section-pieces.ts";
import { parted } from "./sections.ts";
import { narrowestSlot } from "./slot-sides.ts";

export interface FrameContext {
  /** null: the console has none; its layout says which design it came from. */
  readonly design: FrameDesign | null;
  readonly workshop: WorkshopDesign | null;
  readonly catalogue: Catalogue;
  readonly lettering: Lettering;
}

export interface FramedConsole {
  readonly frame: ConsoleFrame | null;
  readonly findings: readonly Finding[];
}

const UNFRAMED: FramedConsole = { frame: null, findings: [] };

export const consoleFrame = (layout: ConsoleLayout, context: FrameContext): FramedConsole => {
  const { design } = context;
  if (design === null) return UNFRAMED;
  const named: LayoutContext = context;
  const stock = stockOf(named, design.sheet);
  if (stock === null) {
    const span = spanOf(design.written, "sheet");
    const known = stockNames(named);
    return { frame: null, findings: [unknownName(SHEET_UNKNOWN, design.sheet, { span, known })] };
  }
  const carried = carriedBays(layout, design, stock.measured ?? stock.nominal);
  const known = stockFindings(
    stock,
    design,
    context.catalogue.materials.get(stock.material) ?? null,
  );
  if (carried.kind === "refused")
    return { frame: null, findings: inConsole(layout.design, [...known, ...carried.findings]) };
  const machine = machineFor(named, "frame");
  const framed = framedBays(carried, {
    layout,
    design,
    stock,
    machine,
    lettering: context.lettering,
  });
  return {
    frame: framed.frame,
    findings: inConsole(layout.design, [...known, ...framed.findings]),
  };
};

const inConsole = ({ name }: ConsoleDesign, findings: readonly Finding[]): readonly Finding[] =>
  findings.map((found) => ({ ...found, panel: name }));

type RowOfBays = Extract<CarriedBays, { readonly kind: "carried" }>;

interface Scene {
  readonly layout: ConsoleLayout;
  readonly design: FrameDesign;
  readonly stock: StockDesign;
  readonly machine: MachineDesign | null;
  readonly lettering: Lettering;
}

const framedBays = ({ bays, profile }: RowOfBays, scene: Scene): FramedConsole => {
  const { design, stock, machine } = scene;
  const thickness = stock.measured ?? stock.nominal;
  const least = leastAcross(bays, design, thickness);
  const narrow = widthFindings(design, least.to - least.from);
  if (narrow.length > 0) return { frame: null, findings: narrow };
  const across = acrossBays(bays, design, thickness);
  const { plans, findings } = parted(bays, { design, thickness, across, machine });
  const relief = machine === null ? SHARP : reliefFor(machine, narrowestSlot(plans));
  const judged = [...findings, ...plans.flatMap((plan) => planFindings(plan, relief, machine))];
  if (judged.some(({ severity }) => severity === "fault")) return { frame: null, findings: judged };
  const sections = plans.map((plan, index) =>
    sectionOf(plan, { index, count: plans.length, profile, relief }),
  );
  const ordered = sections.map(({ pieces }) =>
    assembled(pieces, { joints: design.joints, profile }),
  );
  const making = makingOf(scene, thickness);
  const parts = ordered
    .flatMap(({ pieces }) => pieces)
    .map((piece, index) => finishedPart(piece, index + 1, making));
  const said = partFindings(parts, {
    design,
    machine,
    leftOut: sections.flatMap(({ leftOut }) => leftOut),
  });
  const frame: ConsoleFrame = {
    parts,
    joints: sections.flatMap(({ joints }) => joints),
    inside: frameInside(plans, { profile, span: design.written.span }),
    assembly: [...ordered.flatMap(({ steps }) => steps), ...bolting(plans)],
  };
  return { frame, findings: [...judged, ...said] };
};

const SHARP: Relief = { radius: 0, tooThick: null };

const makingOf = ({ layout, stock, machine, lettering }: Scene, thickness: number): Making => ({
  console: layout.name,
  title: layout.design.title,
  revision: REVISION,
  stock,
  thickness,
  machine,
  lettering,
});

interface SectionPieces extends Pieces {
  readonly leftOut: readonly string[];
}

const sectionOf = (
  plan: FramePlan,
  of: {
    readonly index: number;
    readonly count: number;
    readonly profile: Profile;
    readonly relief: Relief;
  },
): SectionPieces => {
  const { index, count, profile, relief } = of;
  const { suffix } = plan;
  const made = sectionPieces(plan, { profile, section: index + 1, suffix, relief });
  const isFirst = index === 0;
  const isLast = index === count - 1;
  const opened = withOpenings(plan, made.pieces, { suffix, isFirst, isLast });
  const pieces = opened.pieces.map((piece: Piece) => proud(piece, plan.thickness));
  return { pieces, joints: made.joints, leftOut: opened.leftOut };
};

const bolting = (plans: readonly FramePlan[]): ConsoleFrame["assembly"] =>
  plans.slice(1).map((plan, index) => {
    const before = plans[index]!;
    const spacer = plan.ends.from - before.ends.to + 2 * plan.design.beyond;
    return {
      adds: [],
      enters: null,
      words: `Stand section ${index + 2} in line with section ${index + 1}; bolt their end boards together with four M8 and spacers ${decimal(spacer, 1)} mm long.`,
    };
  });
