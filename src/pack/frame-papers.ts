// Papers of a console's frame: its boards with sizes, as a page and as a table, what they are held with, and the steps in which
// they go together.

import { type CsvCell, csvText } from "../export/csv.ts";
import { markdownTable, markdownText } from "../export/markdown-table.ts";
import { extentHeight, extentWidth } from "../geometry/extent.ts";
import { contourExtent } from "../geometry/measure.ts";
import { decimal } from "../geometry/number.ts";
import type {
  AssemblyStep,
  ConsoleFrame,
  FrameJoint,
  FramePart,
} from "../parts/frame/frame-part.ts";
import { frameHardware } from "./frame-hardware.ts";
import type { PackFile } from "./pack-file.ts";
import { paperFile } from "./paper-file.ts";

/** `pictures`: of steps, by path in the pack. */
export const framePapers = (
  frame: ConsoleFrame,
  pictures: ReadonlyMap<AssemblyStep, string>,
): readonly PackFile[] => [
  paperFile("parts-list", "frame-parts.md", partsPage(frame)),
  paperFile("parts-list", "frame-parts.csv", partsTable(frame)),
  paperFile("assembly", "frame-assembly.md", assemblyPage(frame, pictures)),
];

const PLACES = 2;

/** In the table as on the page. */
const rounded = (size: number): number => Number(decimal(size, PLACES));

const sizeOf = ({ region }: FramePart): readonly [number, number] => {
  const box = contourExtent(region.outline);
  return [extentWidth(box), extentHeight(box)];
};

const GRAIN: Readonly<Record<"x" | "y" | "none", string>> = {
  x: "along the width",
  y: "along the height",
  none: "any",
};

const partsPage = (frame: ConsoleFrame): string => {
  const { parts, joints, units } = frame;
  return [
    "# Frame: boards",
    "",
    "The number is written on each board's drawing and in the steps of frame-assembly.md. Sizes are of the finished board; the cut files are in cut/.",
    "",
    ...unitLines(units),
    markdownTable(
      [
        { title: "No.", align: "right" },
        { title: "board", align: "left" },
        { title: "section", align: "right" },
        { title: "sheet", align: "left" },
        { title: "thickness, mm", align: "right" },
        { title: "width, mm", align: "right" },
        { title: "height, mm", align: "right" },
        { title: "grain", align: "left" },
      ],
      parts.map((part) => [
        String(part.number),
        part.title,
        String(part.section),
        part.stock.id,
        decimal(part.thickness, PLACES),
        ...sizeOf(part).map((size) => decimal(size, PLACES)),
        GRAIN[part.grain ?? "none"],
      ]),
    ),
    "## Joints",
    "",
    "Clearance is slot less tab, in all. Try one joint in waste of the same sheet first.",
    "",
    joints.length === 0
      ? "No joints."
      : markdownTable(
          [
            { title: "joint", align: "left" },
            { title: "from", align: "left" },
            { title: "into", align: "left" },
            { title: "clearance, mm", align: "right" },
          ],
          joints.map((joint) => [
            jointWords(joint),
            joint.from,
            joint.into,
            decimal(joint.clearance, PLACES),
          ]),
        ),
    "",
    ...hardwareLines(frame),
  ].join("\n");
};

const hardwareLines = (frame: ConsoleFrame): readonly string[] => {
  const rows = frameHardware(frame);
  return [
    "## Hardware",
    "",
    ...(rows.length === 0
      ? []
      : [
          markdownTable(
            [
              { title: "pieces", align: "right" },
              { title: "what it is", align: "left" },
              { title: "for", align: "left" },
            ],
            rows.map(({ count, what, use }) => [
              count === null ? "as needed" : String(count),
              what,
              use,
            ]),
          ),
        ]),
    "Screws, washers and nuts of the panels on these rails are in each panel's own parts list.",
    "",
  ];
};

/** Nothing of one alone. */
const unitLines = (units: ConsoleFrame["units"]): readonly string[] =>
  units.length < 2
    ? []
    : [
        "The frame stands in units, each with its own cheeks; `-u2` in a board's id says of which it is.",
        "",
        ...units.map(({ number, bays }) => `- unit ${number}: ${markdownText(bays.join(", "))}`),
        "",
      ];

const jointWords = ({ kind, feature }: FrameJoint): string =>
  `${kind.replaceAll("-", " ")}, ${feature}`;

const partsTable = ({ parts }: ConsoleFrame): string =>
  csvText(
    ["number", "id", "title", "role", "section", "sheet", "thickness", "width", "height", "grain"],
    parts.map((part): readonly CsvCell[] => [
      part.number,
      part.id,
      part.title,
      part.role,
      part.section,
      part.stock.id,
      rounded(part.thickness),
      ...sizeOf(part).map(rounded),
      GRAIN[part.grain ?? "none"],
    ]),
  );

const assemblyPage = (
  { parts, assembly }: ConsoleFrame,
  pictures: ReadonlyMap<AssemblyStep, string>,
): string => {
  const named = (id: string): string => {
    const part = parts.find((each) => each.id === id);
    return part === undefined ? id : `${part.number} ${part.title}`;
  };
  return [
    "# Frame: order of assembly",
    "",
    "Dry first, without glue. Square each step before the next; clamps and a second pair of hands where a board is longer than your arm.",
    "",
    ...assembly.flatMap((step, index) => [
      `${index + 1}. ${markdownText(step.words)}`,
      ...(step.adds.length === 0 ? [] : [`   - ${markdownText(step.adds.map(named).join("; "))}`]),
      ...pictureOf(pictures.get(step), index + 1),
    ]),
    "",
  ].join("\n");
};

const pictureOf = (path: string | undefined, number: number): readonly string[] =>
  path === undefined ? [] : ["", `   ![Step ${number}](${path})`, ""];
