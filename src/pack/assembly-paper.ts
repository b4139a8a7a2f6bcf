// How a panel goes together, step by step, in the order in which every tool reaches what it turns. Cautions stand before the
// first step that they are about; a step that its tool does not come to says so.

import { markdownText } from "../export/markdown-table.ts";
import { serviceOrder } from "../service/service-order.ts";
import { benchWork } from "./assembly-bench.ts";
import { type AssemblyGroup, assemblyGroups } from "./assembly-groups.ts";
import { assemblyWords } from "./assembly-words.ts";
import { type CautionPlace, cautionsAt } from "./cautions.ts";
import { listWords } from "./list-words.ts";
import type { PackFile } from "./pack-file.ts";
import type { PanelForPack } from "./panel-pack.ts";
import { paperFile } from "./paper-file.ts";

/** null for a bare sheet: there is nothing to put together. */
export const assemblyPaper = (panel: PanelForPack): PackFile | null => {
  const order = serviceOrder(panel);
  const groups = assemblyGroups(order, panel);
  if (order.steps.length < 2) return null;
  const unreached = new Map(order.outOfReach.map(({ number, by }) => [number, by]));
  const bench = benchWork(panel);
  const steps = stepLines(groups, panel, unreached);
  return paperFile(
    "assembly",
    "assembly.md",
    [
      `# ${markdownText(panel.design.title)}: putting it together`,
      "",
      "FRONT is the operator's side. Numbers are those that findings name; each tool reaches its place in this order. Tick each step.",
      "",
      ...(bench.length === 0
        ? []
        : ["## At the bench first", "", ...bench.map((words) => tick(words)), ""]),
      "## Steps",
      "",
      ...steps,
      "",
      "## Into its place",
      "",
      ...PLACES_IN_ORDER.flatMap((place) => cautionLines(place, panel)).filter(
        (line) => !steps.includes(line),
      ),
      ...placeLines(panel),
      "",
    ].join("\n"),
  );
};

const tick = (words: string, number = ""): string =>
  `- [ ] ${number === "" ? "" : `**${number}.** `}${markdownText(words)}`;

const stepLines = (
  groups: readonly AssemblyGroup[],
  panel: PanelForPack,
  unreached: ReadonlyMap<number, readonly string[]>,
): readonly string[] => {
  const said = new Set<string>();
  return groups.flatMap((group) => [
    ...cautionsBefore(group, panel).filter((line) => !said.has(line) && said.add(line)),
    tick(assemblyWords(group, panel), numberWords(group)),
    ...[...unreached]
      .filter(([number]) => number >= group.first && number <= group.last)
      .map(
        ([number, by]) =>
          `  - **HOLD ${number}**: ${markdownText(`the tool does not come to it past ${listWords(by)}.`)}`,
      ),
  ]);
};

const numberWords = ({ first, last }: AssemblyGroup): string =>
  first === last ? String(first) : `${first} to ${last}`;

const cautionsBefore = (group: AssemblyGroup, panel: PanelForPack): readonly string[] => {
  const place = PLACES[group.kind];
  const own = group.components.flatMap(({ part }) => part.caution ?? []);
  return [...(place === null ? [] : cautionLines(place, panel)), ...own.map(cautionLine)];
};

const PLACES: Readonly<Record<AssemblyGroup["kind"], CautionPlace | null>> = {
  layer: null,
  nut: "fastening",
  screw: "fastening",
  "stack-screw": "fastening",
  strip: "lighting",
  plug: "plugging",
  knob: null,
};

/** What no step has said is said before the panel goes into its place. */
const PLACES_IN_ORDER: readonly CautionPlace[] = ["fastening", "lighting", "plugging", "using"];

const cautionLine = (text: string): string => `- **Caution.** ${text}`;

const cautionLines = (place: CautionPlace, panel: PanelForPack): readonly string[] =>
  cautionsAt(place, panel).map(cautionLine);

const placeLines = ({ layout, catalogue }: PanelForPack): readonly string[] => {
  const { fastener, title } = layout.mount;
  const count = layout.mountHoles.length;
  const screws = catalogue.hardware.get(fastener)?.title ?? fastener;
  return [
    tick(
      "Move every lever, knob and key through its whole way; nothing rubs, nothing turns with it.",
    ),
    tick(
      count === 0
        ? `Put the panel in its place (${title}).`
        : `Put the panel in its place (${title}): ${count} x ${screws}.`,
    ),
  ];
};
