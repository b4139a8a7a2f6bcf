// The library at run time: records and fonts as one plain JSON value, opened without any YAML.
// A project's own records go over the built-in ones; a component's measured values go over its part's.

import type { MeasuredDesign } from "../design/panel-design.ts";
import type { FinishDesign, MachineDesign, StockDesign } from "../design/workshop-design.ts";
import { comparedTexts } from "../diagnostics/compared-texts.ts";
import { invariant } from "../geometry/invariant.ts";
import type { FontRecord } from "../lettering/font-record.ts";
import { type Lettering, openLettering } from "../lettering/lettering.ts";
import { derivedBodies, writtenBodies } from "./derived-bodies.ts";
import { HARDWARE_KINDS, type Hardware } from "./hardware.ts";
import { measuredFigures, withReadings } from "./measured-figures.ts";
import type { Part } from "./part.ts";
import type { Catalogue, CatalogueRecord } from "./record.ts";
import { shapeSize } from "./shape-contour.ts";

export interface Library {
  readonly catalogue: Catalogue;
  readonly lettering: Lettering;
  /** Changes whenever a record or a font does. */
  readonly version: string;
}

/** What the build writes and `openLibrary` reads. */
export interface LibraryData {
  readonly format: typeof LIBRARY_FORMAT;
  readonly version: string;
  readonly records: readonly CatalogueRecord[];
  readonly stock: readonly StockDesign[];
  readonly finishes: readonly FinishDesign[];
  readonly machines: readonly MachineDesign[];
  readonly fonts: readonly FontRecord[];
}

export const LIBRARY_FORMAT = "consolewright-library-1";

/** Opens what the build wrote. Anything else is a fault of the installation, not of a design: it throws. */
export function openLibrary(json: unknown): Library {
  invariant(isLibraryData(json), "the library file is one that this program's build wrote");
  return {
    catalogue: catalogueOf(json),
    lettering: openLettering(json.fonts),
    version: json.version,
  };
}

/** The catalogue with a project's own records over it; one with the same name takes the built-in one's place. */
export function catalogueWith(catalogue: Catalogue, own: readonly CatalogueRecord[]): Catalogue {
  return {
    ...catalogue,
    parts: byId([...catalogue.parts.values(), ...own.filter(isPart)]),
    hardware: byId([...catalogue.hardware.values(), ...own.filter(isHardware)]),
    boards: byId([
      ...catalogue.boards.values(),
      ...own.filter((record) => record.kind === "board"),
    ]),
    strips: byId([
      ...catalogue.strips.values(),
      ...own.filter((record) => record.kind === "strip"),
    ]),
    ledBoards: byId([
      ...catalogue.ledBoards.values(),
      ...own.filter((record) => record.kind === "led-board"),
    ]),
    inserts: byId([
      ...catalogue.inserts.values(),
      ...own.filter((record) => record.kind === "insert"),
    ]),
    mounts: byId([
      ...catalogue.mounts.values(),
      ...own.filter((record) => record.kind === "mount"),
    ]),
    materials: byId([
      ...catalogue.materials.values(),
      ...own.filter((record) => record.kind === "material"),
    ]),
  };
}

const EMPTY_CATALOGUE: Catalogue = {
  parts: new Map(),
  hardware: new Map(),
  boards: new Map(),
  strips: new Map(),
  ledBoards: new Map(),
  inserts: new Map(),
  mounts: new Map(),
  materials: new Map(),
  stock: new Map(),
  finishes: new Map(),
  machines: new Map(),
};

/** A part with the values that were measured on the real thing. Paths that it has no number at are left alone. */
export function partAsMeasured(part: Part, measured: MeasuredDesign): Part {
  const bush = withMeasuredBush(part, withReadings(part, measured));
  return {
    ...bush,
    bodies: [...writtenBodies(bush.bodies), ...derivedBodies(bush)],
    figures: measuredFigures(part, measured),
  };
}

/** A round bush that was measured is what must enter its hole. */
function withMeasuredBush(before: Part, after: Part): Part {
  const { passes } = after.openings;
  if (before.hold.kind !== "bush" || after.hold.kind !== "bush") return after;
  const followed = shapeSize(before.openings.passes) === before.hold.diameter;
  if (!followed || !("diameter" in passes) || passes.diameter !== before.hold.diameter)
    return after;
  return {
    ...after,
    openings: { ...after.openings, passes: { ...passes, diameter: after.hold.diameter } },
  };
}

const isPart = (record: CatalogueRecord): record is Part => record.kind === "part";

const isHardware = (record: CatalogueRecord): record is Hardware =>
  HARDWARE_KINDS.some((kind) => kind === record.kind);

const catalogueOf = (data: LibraryData): Catalogue => ({
  ...catalogueWith(EMPTY_CATALOGUE, data.records),
  stock: byId(data.stock),
  finishes: byId(data.finishes),
  machines: byId(data.machines),
});

const byId = <Item extends { readonly id: string }>(
  items: readonly Item[],
): ReadonlyMap<string, Item> =>
  new Map(
    [...new Map(items.map((item) => [item.id, item])).entries()].toSorted(([a], [b]) =>
      comparedTexts(a, b),
    ),
  );

const isLibraryData = (json: unknown): json is LibraryData =>
  typeof json === "object" &&
  json !== null &&
  "format" in json &&
  json.format === LIBRARY_FORMAT &&
  "records" in json &&
  Array.isArray(json.records);
