// Two panels on a bay, and a shelf in which the case of the first one stands: a console that is read and fitted in a second.

const panel = (name: string): string => `consolewright: 1
kind: panel
name: ${name}
workshop: shed.yaml
mount: console-rail
height: 10 modules
stack: [{ layer: face, sheet: plate }]
components:
  start: { part: push-button-16, at: centre }
`;

/** By name, as loose files. */
export const SMALL_CONSOLE: Readonly<Record<string, string>> = {
  "console.yaml": `consolewright: 1
kind: console
name: bench
workshop: shed.yaml
bays:
  aft: { mount: console-rail, at: [0, 0, 700], along: [1, 0, 0], length: 30 modules, depth: 150 mm }
panels:
  - { file: one.yaml, as: one, bay: aft, module: 0 }
  - { file: two.yaml, as: two, bay: aft, module: 12 }
obstacles:
  - { name: shelf, box: [60, 100, 30], at: [48, 0, 665] }
`,
  "shed.yaml": `consolewright: 1
kind: workshop
name: shed
stock:
  plate: { material: aluminium, nominal: 2 mm, measured: 2 mm, dated: 2026-01-31 }
`,
  "one.yaml": panel("one"),
  "two.yaml": panel("two"),
};
