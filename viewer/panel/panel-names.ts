// Names on the open panel: those in use, new ones, and the few that are said of many.

import { namer } from "../../src/arrange/unit-names.ts";
import type { PanelReading } from "../core-messages.ts";
import { pickByLastStep } from "./picked-again.ts";

export const freshNames = (reading: PanelReading): ReturnType<typeof namer> =>
  namer(namesOn(reading));

export const namesOn = ({ layout, design }: PanelReading): readonly string[] => [
  ...design.components.map(({ id }) => id),
  ...(layout?.lost ?? []),
  ...design.markings.map(({ id }) => id),
];

export const named = (names: readonly string[]): string =>
  names.length <= 3 ? names.join(", ") : `${names.length} things`;

/** After the edit that made them, so that undo finds back. The new reading knows the entries; until then their ids are those of single components. */
export function selectEntries(entries: readonly string[]): void {
  pickByLastStep(entries.flatMap((entry) => [entry, `${entry}.1`]));
}
