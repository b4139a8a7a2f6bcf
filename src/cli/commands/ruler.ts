// `ruler EXPECTED MEASURED`: names what went wrong when a printed or cut thing has the wrong size.
// With a second pair, across the first, it tells a stretched page from a wrong unit.

import { decimal } from "../../geometry/number.ts";
import { causesOfScale, type ScaleCause } from "../../standards/scale-errors.ts";
import { type Command, wrongUse } from "../command.ts";
import { lengthArgument, noLength } from "../length-argument.ts";
import { EXIT } from "../shell.ts";

export const ruler: Command = {
  usage: "ruler EXPECTED MEASURED [EXPECTED MEASURED]",
  details: [
    "Give the length that a thing should have and the length that a ruler shows, in mm or",
    'with a unit ("4 in"). A second pair, measured square to the first, tells whether x and y agree.',
    "The longer the length, the surer the answer: the 100 mm bars of a paper template are made for it.",
  ].join("\n"),
  options: [
    { name: "reading", value: "MM", help: "how closely the ruler was read (0.5 mm unless told)" },
  ],
  words: { least: 2, most: 4 },
  run: async ({ words, values, switches }, shell) => {
    if (words.length === 3) return wrongUse("The second pair lacks its measured length.");
    const written = [values.get("reading") ?? USUAL_READING, ...words];
    const read = written.map(lengthArgument);
    const wrong = written[read.indexOf(null)];
    if (wrong !== undefined) return wrongUse(noLength(wrong));
    const [reading = 0, ...lengths] = read.map((length) => length ?? 0);
    const axes = [lengths.slice(0, 2), lengths.slice(2)].flatMap(([expected, measured]) =>
      expected === undefined || measured === undefined ? [] : [axisOf(expected, measured, reading)],
    );
    shell.stdout(switches.has("json") ? `${JSON.stringify(answer(axes))}\n` : inWords(axes));
    return EXIT.fine;
  },
};

/** A steel rule read by eye: half a millimetre (common practice). */
const USUAL_READING = "0.5";

interface Axis {
  readonly ratio: number;
  /** How far the ratio may be off for the reading. */
  readonly within: number;
  readonly causes: readonly ScaleCause[];
  readonly right: boolean;
}

const axisOf = (expected: number, measured: number, reading: number): Axis => {
  const ratio = measured / expected;
  const within = reading / expected;
  const right = Math.abs(ratio - 1) <= within;
  return { ratio, within, right, causes: right ? [] : causesOfScale(ratio, within) };
};

const differ = (axes: readonly Axis[]): boolean => {
  const [first, second] = axes;
  return (
    first !== undefined &&
    second !== undefined &&
    Math.abs(first.ratio - second.ratio) > first.within + second.within
  );
};

const STRETCHED = "x and y differ: the page was made to fit, or the printer's feed is off";

const answer = (axes: readonly Axis[]): unknown => ({
  axes: axes.map(({ ratio, right, causes }) => ({ ratio, right, causes })),
  differ: differ(axes),
});

const inWords = (axes: readonly Axis[]): string => {
  const lines = axes.flatMap((axis, index) =>
    axisLines(axis, axes.length === 1 ? "" : `${index === 0 ? "first" : "second"} length: `),
  );
  if (differ(axes)) lines.push(STRETCHED, "  print at actual size (100 %), scaling switched off");
  return `${lines.join("\n")}\n`;
};

const axisLines = (axis: Axis, name: string): readonly string[] => {
  const size = `${name}${decimal(axis.ratio, 4)} of the size it should have`;
  if (axis.right) return [`${size}: right, as far as the ruler shows`];
  if (axis.causes.length === 0)
    return [
      `${size}: no mistake of units or printing leaves this ratio`,
      "  look for a wrong number in the design, or measure a longer length",
    ];
  const causes = axis.causes.flatMap(({ ratio, why, cure }, index) => [
    `  ${index === 0 ? "most likely" : "or"}: ${why} (${decimal(ratio, 4)})`,
    `    ${cure}`,
  ]);
  return [size, ...causes];
};
