// The texts of a new design: a panel with two components and a workshop, as a builder would begin, with a word on each line
// that is not plain. Neither has a fault.

export interface Starter {
  readonly name: string;
  readonly title: string;
  readonly mount: string;
}

/** How each mount counts its size; the first size is large enough for the two components. */
const SIZES: Readonly<Record<string, readonly string[]>> = {
  "console-rail": ["height: 6 modules             # of 9.525 mm; the width is the rail's"],
  "rack-19": ["height: 2 U"],
  "subrack-3u": ["width: 20 HP", "height: 3 U"],
  "corner-screws": ["width: 120 mm", "height: 80 mm"],
  "box-lid": ["width: 120 mm", "height: 80 mm"],
};

export const STARTER_MOUNTS: readonly string[] = Object.keys(SIZES);

export const starterFiles = (starter: Starter): Readonly<Record<string, string>> => ({
  "panel.yaml": panelText(starter),
  "workshop.yaml": workshopText(starter),
});

const panelText = ({ name, title, mount }: Starter): string =>
  [
    "consolewright: 1",
    "kind: panel",
    `name: ${name}`,
    `title: ${JSON.stringify(title)}`,
    "revision: A",
    "workshop: workshop.yaml",
    `mount: ${mount}`,
    ...(SIZES[mount] ?? []),
    "viewing-distance: 650 mm",
    "",
    "stack:                        # front to back",
    "  - { layer: face, sheet: opal-acrylic-3, finish: paint-then-cut }",
    "",
    "components:",
    "  power:",
    "    part: toggle-6              # `consolewright list toggle` shows the others",
    "    at: { x: centre, y: centre }",
    "    legend: POWER",
    "  ready:",
    "    part: led-5-bezel",
    "    at: { right-of: power, centres: 25 mm }",
    "    legend: READY",
    "",
  ].join("\n");

const workshopText = ({ name }: Starter): string =>
  [
    "consolewright: 1",
    "kind: workshop",
    `name: ${name}-workshop`,
    "",
    "# What lies on the shelf. Measure it and say so: measured: 2.86 mm, dated: 2026-01-31",
    "stock:",
    "  opal-acrylic-3: { material: acrylic-cast, colour: opal, light: translucent, nominal: 3 mm }",
    "",
    "# What cuts it. `left-to-cutter` writes nominal files for a cutter who compensates;",
    "# `in-file` puts the kerf into the files, once it is measured.",
    "machines:",
    "  laser: { type: co2-laser, bed: [600, 400], spot: 0.15 mm, kerf: left-to-cutter }",
    "",
    "use: { face: laser }",
    "",
  ].join("\n");
