// A design whose lengths are written in inches gives the cut files that its millimetres give, byte for byte.
// 1 in = 25.4 mm exactly (international yard and pound agreement of 1959), so that a length in mm is a fraction of an inch.

import { expect, test } from "vitest";
import { compileExample } from "../../scripts/example-pictures.ts";
import { dxfCutFile } from "../../src/export/dxf-cut-file.ts";
import { dxfR12CutFile } from "../../src/export/dxf-r12-cut-file.ts";
import { processColours } from "../../src/export/process-colours.ts";
import { svgCutFile } from "../../src/export/svg-cut-file.ts";
import type { Project } from "../../src/project.ts";
import { testLibrary } from "../support/test-library.ts";
import { EXAMPLE_NAMES, exampleTexts } from "./example-projects.ts";

const MILLIMETRES = /(?<![\w.])(-?)(\d+)(?:\.(\d+))? mm\b/g;

/** `12.5 mm` as `1250/2540 in`: digits over 25.4, both times ten to the number of decimals. */
const inInches = (text: string): string =>
  text.replace(MILLIMETRES, (_, sign: string, whole: string, decimals = "") => {
    const top = BigInt(`${whole}${decimals}`) * 10n;
    const bottom = 254n * 10n ** BigInt(decimals.length);
    return `${sign}${top}/${bottom} in`;
  });

test("the rewriting is right", () => {
  expect(inInches("{ left: 12.5 mm, x: -3 mm }")).toBe("{ left: 1250/2540 in, x: -30/254 in }");
});

/** As packs hold them; that they measure what they must is shown elsewhere, so that nothing is read back here. */
const cutFilesOf = ({ panels }: Project): readonly (readonly [name: string, text: string])[] =>
  panels.flatMap(({ name, sheetParts }) =>
    sheetParts.flatMap((part) =>
      part.setUps.flatMap((setUp): readonly (readonly [string, string])[] => {
        const [stem, title] = [`${name}/${part.id}-${setUp.id}`, part.title];
        return [
          [`${stem}.svg`, svgCutFile(part, setUp, { colours, title })],
          [`${stem}.dxf`, dxfCutFile(part, setUp, { colours, title })],
          [`${stem}.r12.dxf`, dxfR12CutFile(part, setUp, { title })],
        ];
      }),
    ),
  );

const { colours } = processColours({});

test.each(EXAMPLE_NAMES)("%s in inches is cut alike", (name) => {
  const texts = exampleTexts(name);
  const inches = Object.fromEntries(
    Object.entries(texts).map(([path, text]) => [path, inInches(text)]),
  );
  expect(
    Object.values(inches)
      .join("\n")
      .match(/\d mm\b/g),
  ).toBeNull();
  expect(Object.values(inches).join("\n").match(/\/254/g)?.length).toBeGreaterThan(10);
  const [metric, imperial] = [texts, inches].map((each) =>
    cutFilesOf(compileExample(each, testLibrary())),
  );
  expect(metric?.length).toBeGreaterThan(2);
  expect(imperial?.map(([path]) => path)).toEqual(metric?.map(([path]) => path));
  const differing = metric?.filter(([, text], index) => text !== imperial?.[index]?.[1]);
  expect(differing?.map(([path]) => path)).toEqual([]);
});
