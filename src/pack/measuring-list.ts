// What nobody has measured and a fit depends on: dimension, instrument, and where in the design to enter the reading.

import { fieldAt } from "../catalogue/field-path.ts";
import type { Hardware } from "../catalogue/hardware.ts";
import type { Mount } from "../catalogue/mount.ts";
import type { Figures } from "../catalogue/part.ts";
import { markdownTable } from "../export/markdown-table.ts";
import { decimal } from "../geometry/number.ts";
import type { LayerLayout, PlacedComponent, Range } from "../layout/panel-layout.ts";
import { type PhotoPlace, photoPlaces } from "../layout/photo-places.ts";
import type { SetUp, SheetPart } from "../parts/sheet-part.ts";
import type { PackFile } from "./pack-file.ts";
import type { PanelForPack } from "./panel-pack.ts";
import { paperFile } from "./paper-file.ts";

interface MeasuringLine {
  readonly what: string;
  readonly dimension: string;
  /** What the program reckons with until then. */
  readonly assumed: string;
  readonly instrument: string;
  /** Where the reading goes. */
  readonly enter: string;
}

export const measuringListPaper = (panel: PanelForPack): PackFile => {
  const lines = measuringList(panel);
  return paperFile(
    "measuring-list",
    "measuring-list.md",
    [
      "# Measuring list",
      "",
      lines.length === 0
        ? "Nothing is left to measure: every dimension that a fit depends on has been."
        : "Measure these before the sheet is cut, and enter what you read.",
      "",
      ...(lines.length === 0
        ? []
        : [
            markdownTable(
              [
                { title: "what", align: "left" },
                { title: "dimension", align: "left" },
                { title: "taken as", align: "right" },
                { title: "instrument", align: "left" },
                { title: "enter it as", align: "left" },
                { title: "measured", align: "right" },
              ],
              lines.map(({ what, dimension, assumed, instrument, enter }) => [
                what,
                dimension,
                assumed,
                instrument,
                enter,
                "",
              ]),
            ),
          ]),
    ].join("\n"),
  );
};

const measuringList = (panel: PanelForPack): readonly MeasuringLine[] => [
  ...panel.layout.components.flatMap(componentLines).filter(isFirstOfItsKind()),
  ...recordLines(panel.layout.mount),
  ...panel.layout.layers.flatMap(layerLines),
  ...panel.sheetParts.flatMap(kerfLines),
  ...photoPlaces(panel.layout.design).map(photoLine),
];

/** A place that was read from a photograph: what was read stands in the text, and how far off it may be. */
const photoLine = ({ id, under, residual }: PhotoPlace): MeasuringLine => ({
  what: id,
  dimension: "its place on the old panel, across and up",
  assumed: `as written, ± ${decimal(residual, 2)} mm`,
  instrument: "caliper or steel rule, from the panel's edges",
  enter: `${under}, ${id}: the numbers measured, and no residual`,
});

/** Ten toggles of one kind are measured once. */
const isFirstOfItsKind = (): ((line: MeasuringLine) => boolean) => {
  const seen = new Set<string>();
  return ({ what, dimension }) => {
    const key = `${what} ${dimension}`;
    const isFirst = !seen.has(key);
    seen.add(key);
    return isFirst;
  };
};

const componentLines = (component: PlacedComponent): readonly MeasuringLine[] => [
  ...partLines(component),
  ...component.fitted.flatMap(recordLines),
];

/** What is fitted to a part, and the mount, have no place of their own in a panel: a record of one's own takes the reading. */
const recordLines = (record: Hardware | Mount): readonly MeasuringLine[] =>
  record.figures.measureFirst.filter(isUncertain(record.figures)).map((field) => ({
    what: record.id,
    dimension: field,
    assumed: figureOf(record, field),
    instrument: instrumentFor(field),
    enter: `a record of your own for ${record.id}, named under catalogue`,
  }));

const partLines = ({ part, common, entry }: PlacedComponent): readonly MeasuringLine[] =>
  part.figures.measureFirst
    .filter(isUncertain(part.figures))
    .filter((field) => common.measured?.values[field] === undefined)
    .map((field) => ({
      what: part.id,
      dimension: field,
      assumed: figureOf(part, field),
      instrument: instrumentFor(field),
      enter: `components, ${entry}: measured: { ${field}: ... mm, dated: ... }`,
    }));

/** Figures of a standard or of a maker stand as they are. */
const isUncertain =
  (figures: Figures) =>
  (field: string): boolean => {
    const kind = figures.exceptions[field]?.kind ?? figures.kind;
    return kind === "memory" || kind === "practice";
  };

/** The number that a path such as `hold.length` leads to; empty where it leads to a shape. */
const figureOf = (record: object, field: string): string => {
  const value = fieldAt(record, field);
  return typeof value === "number" ? `${decimal(value, 3)} mm` : "";
};

/** Lengths along the axis want a depth rod, threads and openings the jaws of a caliper. */
const instrumentFor = (field: string): string =>
  /length|depth|height|proud|standOff|from|to$/.test(field)
    ? "caliper, depth rod"
    : "caliper, jaws";

const layerLines = (layer: LayerLayout): readonly MeasuringLine[] => {
  if (layer.kind !== "sheet" || layer.stock === null) return [];
  const { stock, finish, thickness, paint } = layer;
  const sheet: MeasuringLine = {
    what: stock.id,
    dimension: "thickness, at four places",
    assumed: rangeText(thickness),
    instrument: "caliper or micrometer",
    enter: `workshop, stock, ${stock.id}: measured: ... mm, dated: ...`,
  };
  return [
    ...(thickness.known ? [] : [sheet]),
    ...(finish === null || paint.known
      ? []
      : [
          {
            what: finish.id,
            dimension: "paint, one side: a painted and a bare offcut",
            assumed: rangeText(paint),
            instrument: "micrometer",
            enter: `workshop, finishes, ${finish.id}: thickness: ... mm, dated: ...`,
          },
        ]),
  ];
};

const rangeText = ({ low, high }: Range): string =>
  low === high ? `${decimal(low, 3)} mm` : `${decimal(low, 3)} to ${decimal(high, 3)} mm`;

const kerfLines = (part: SheetPart): readonly MeasuringLine[] =>
  part.setUps.filter(cuts).flatMap(({ machine, kerf }) =>
    kerf.kind === "left-to-cutter" || kerf.measured
      ? []
      : [
          {
            what: `${machine.id} in ${part.stock.id}`,
            dimension: "kerf, across x and across y",
            assumed: `${decimal(kerf.kerf, 3)} mm`,
            instrument: "test piece and caliper",
            enter: `workshop, machines, ${machine.id}, measured: - { stock: ${part.stock.id}, kerf: [..., ...], dated: ... }`,
          },
        ],
  );

const cuts = ({ operations }: SetUp): boolean => operations.some(({ kind }) => kind === "cut");
