// Writes the tests' cut files by the plainest means: takes lines as numbers, in panel coordinates, and gives SVG, DXF and R12
// text. Shares nothing with the program. The sheet is that of hand-plate.ts, 120 x 80 with its corner at (-10, -10).

/** x, y, bulge of the edge that follows. */
export type Run = readonly (readonly [number, number, number])[];

export interface HandShape {
  readonly process: string;
  readonly id: string;
  readonly circle?: readonly [number, number, number];
  readonly runs: readonly Run[];
  readonly holes?: readonly Run[];
  readonly closed: boolean;
  readonly filled?: boolean;
}

export interface HandSheet {
  readonly part: string;
  readonly revision: string;
  readonly faceUp: "front" | "rear";
  /** Mirrors the lines about x = 50, the sheet's middle. */
  readonly mirrored: boolean;
  readonly kerf: string;
}

export const FRONT_SHEET: HandSheet = {
  part: "plate-face",
  revision: "B",
  faceUp: "front",
  mirrored: false,
  kerf: "in-file 0.2000 mm",
};

export const REAR_SHEET: HandSheet = {
  ...FRONT_SHEET,
  part: "plate-backing",
  faceUp: "rear",
  mirrored: true,
};

const words = (sheet: HandSheet): readonly string[] => [
  `part: ${sheet.part}`,
  `revision: ${sheet.revision}`,
  `face up: ${sheet.faceUp}`,
  `kerf: ${sheet.kerf}`,
];

const number = (value: number): string => String(Number(value.toFixed(6)));

export const handSvg = (shapes: readonly HandShape[], sheet: HandSheet = FRONT_SHEET): string => {
  const groups = Array.from(new Set(shapes.map(({ process }) => process)));
  const body = groups.map((group) => {
    const own = shapes.filter(({ process }) => process === group);
    return `<g id="${group}">\n${own.map((shape) => svgPath(shape, sheet)).join("\n")}\n</g>`;
  });
  return `<?xml version="1.0" encoding="UTF-8"?>
<!-- a plate -->
<svg xmlns="http://www.w3.org/2000/svg" width="120mm" height="80mm" viewBox="0 0 120 80">
<title>Plate</title>
<desc>${words(sheet).join("\n")}</desc>
${body.join("\n")}
</svg>
`;
};

const svgPath = (shape: HandShape, sheet: HandSheet): string => {
  const look = shape.filled ? `fill="#000" stroke="none"` : `fill="none" stroke="#00f"`;
  const data = sheetRuns(shape, sheet).map((run) => svgRun(run, shape.closed));
  return `<path id="${shape.id}" ${look} d="${data.join("")}"/>`;
};

const svgRun = (run: Run, closed: boolean): string => {
  const place = ([x, y]: readonly [number, number, number]): string =>
    `${number(x)} ${number(80 - y)}`;
  const first = run[0]!;
  let data = `M${place(first)}`;
  for (const [index, from] of run.entries()) {
    const to = run[index + 1] ?? (closed ? first : undefined);
    if (to === undefined) break;
    const [, , bulge] = from;
    const chord = Math.hypot(to[0] - from[0], to[1] - from[1]);
    const radius = number((chord * (1 + bulge * bulge)) / (4 * Math.abs(bulge)));
    const flags = `${Math.abs(bulge) > 1 ? 1 : 0} ${bulge > 0 ? 0 : 1}`;
    data += bulge === 0 ? `L${place(to)}` : `A${radius} ${radius} 0 ${flags} ${place(to)}`;
  }
  return closed ? `${data}Z` : data;
};

/** Runs from the sheet's lower left corner, y up; a circle as two half turns. */
const sheetRuns = (shape: HandShape, sheet: HandSheet): readonly Run[] => {
  const [x, y, radius] = shape.circle ?? [0, 0, 0];
  const round: Run = [
    [x - radius, y, 1],
    [x + radius, y, 1],
  ];
  const runs = shape.circle === undefined ? shape.runs : [round];
  return [...runs, ...(shape.holes ?? [])].map((run) =>
    run.map(([px, py, bulge]) => [
      (sheet.mirrored ? 100 - px : px) + 10,
      py + 10,
      sheet.mirrored ? -bulge : bulge,
    ]),
  );
};

const tags = (pairs: readonly (readonly [number, string | number])[]): string =>
  pairs.map(([code, value]) => `${code}\n${value}\n`).join("");

const dxfHead = (sheet: HandSheet, version: string): string =>
  tags([
    ...words(sheet).map((line) => [999, line] as const),
    [0, "SECTION"],
    [2, "HEADER"],
    [9, "$ACADVER"],
    [1, version],
    [9, "$INSUNITS"],
    [70, 4],
    [9, "$EXTMAX"],
    [10, 120],
    [20, 80],
    [30, 0],
    [0, "ENDSEC"],
    [0, "SECTION"],
    [2, "ENTITIES"],
  ]);

const DXF_TAIL = tags([
  [0, "ENDSEC"],
  [0, "EOF"],
]);

export const handDxf = (shapes: readonly HandShape[], sheet: HandSheet = FRONT_SHEET): string =>
  dxfHead(sheet, "AC1021") +
  shapes
    .flatMap((shape) =>
      shape.circle === undefined
        ? sheetRuns(shape, sheet).map((run) => lightPolyline(run, shape))
        : [dxfCircle(shape, sheet)],
    )
    .join("") +
  DXF_TAIL;

export const handR12 = (shapes: readonly HandShape[], sheet: HandSheet = FRONT_SHEET): string =>
  dxfHead(sheet, "AC1009") +
  shapes
    .flatMap((shape) =>
      shape.circle === undefined
        ? sheetRuns(shape, sheet).map((run) => heavyPolyline(run, shape))
        : [dxfCircle(shape, sheet)],
    )
    .join("") +
  DXF_TAIL;

const dxfCircle = (shape: HandShape, sheet: HandSheet): string => {
  const [x, y, radius] = shape.circle ?? [0, 0, 0];
  return tags([
    [0, "CIRCLE"],
    [8, shape.process],
    [10, number((sheet.mirrored ? 100 - x : x) + 10)],
    [20, number(y + 10)],
    [30, 0],
    [40, number(radius)],
  ]);
};

const lightPolyline = (run: Run, shape: HandShape): string =>
  tags([
    [0, "LWPOLYLINE"],
    [100, "AcDbPolyline"],
    [8, shape.process],
    [90, run.length],
    [70, shape.closed ? 1 : 0],
    ...run.flatMap(
      ([x, y, bulge]) =>
        [
          [10, number(x)],
          [20, number(y)],
          [42, bulge.toFixed(12)],
        ] as const,
    ),
  ]);

const heavyPolyline = (run: Run, shape: HandShape): string =>
  tags([
    [0, "POLYLINE"],
    [8, shape.process],
    [66, 1],
    [70, shape.closed ? 1 : 0],
    ...run.flatMap(
      ([x, y, bulge]) =>
        [
          [0, "VERTEX"],
          [8, shape.process],
          [10, number(x)],
          [20, number(y)],
          [42, bulge.toFixed(12)],
        ] as const,
    ),
    [0, "SEQEND"],
  ]);
