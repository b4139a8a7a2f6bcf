// A console of two panels that is made in a blink, laid into a folder of the test's; and what lies in a folder.

import { mkdirSync, readdirSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { temporaryFolder } from "./temporary-folder.ts";

export const WORKSHOP = `consolewright: 1
kind: workshop
name: shed
stock:
  black-acrylic-3: { material: acrylic-cast, colour: black, nominal: 3 mm, measured: 2.9 mm, dated: 2026-01-31 }
machines:
  laser: { type: co2-laser, bed: [600, 400], spot: 0.15 mm, kerf: in-file, measured: [{ stock: black-acrylic-3, kerf: 0.2, dated: 2026-01-31 }] }
use: { face: laser }
`;

export const panelText = (name: string, part = "toggle-6"): string => `consolewright: 1
kind: panel
name: ${name}
title: ${name} panel
workshop: ../workshop.yaml
mount: box-lid
width: 80 mm
height: 60 mm
stack:
  - { layer: face, sheet: black-acrylic-3 }
components:
  power: { part: ${part}, at: { x: centre, y: centre }, legend: POWER }
`;

/** A console of two panels, "good" and "other". */
export const layConsole = (other: string): string => {
  const folder = temporaryFolder();
  mkdirSync(join(folder, "panels"));
  writeFileSync(join(folder, "workshop.yaml"), WORKSHOP);
  writeFileSync(join(folder, "panels", "good.yaml"), panelText("good"));
  writeFileSync(join(folder, "panels", "other.yaml"), other);
  writeFileSync(
    join(folder, "console.yaml"),
    `consolewright: 1
kind: console
name: desk
workshop: workshop.yaml
panels:
  - { file: panels/good.yaml, as: good }
  - { file: panels/other.yaml, as: other }
`,
  );
  return folder;
};

/** By path from the folder, in base 64. */
export const everyFile = (folder: string): Readonly<Record<string, string>> =>
  Object.fromEntries(
    readdirSync(folder, { recursive: true, withFileTypes: true })
      .filter((entry) => entry.isFile())
      .map((entry) => {
        const place = join(entry.parentPath, entry.name);
        return [place.slice(folder.length + 1), readFileSync(place, "base64")];
      }),
  );
