// What holds the panel to its mount: screws as long as what they clamp asks for, with washers and nuts behind a wooden rail,
// studs by their grip, and nothing guessed where the catalogue does not know.

import type { Screw, Stud } from "../catalogue/hardware.ts";
import { decimal } from "../geometry/number.ts";
import { mountGrip, mountScrewNeed } from "../parts/screw-need.ts";
import type { PanelForPack } from "./panel-pack.ts";
import { type ScrewWords, screwWords } from "./screw-words.ts";

export interface MountRow extends ScrewWords {
  readonly count: number;
  readonly use: string;
}

export const mountFasteners = (panel: PanelForPack): readonly MountRow[] => {
  const { layout } = panel;
  const count = layout.mountHoles.length;
  if (count === 0) return [];
  const { title, fastener } = layout.mount;
  const found = panel.catalogue.hardware.get(fastener);
  if (found?.kind === "screw") return screwRows(found, panel).map((row) => ({ count, ...row }));
  const what = found?.kind === "stud" ? studWords(found, panel) : (found?.title ?? fastener);
  return [{ count, part: fastener, title: what, use: title }];
};

const screwRows = (screw: Screw, panel: PanelForPack): readonly Omit<MountRow, "count">[] => {
  const { layout, catalogue } = panel;
  const need = mountScrewNeed(panel, screw, catalogue);
  const words = screwWords(need, catalogue, ({ screw: { id } }) => id === screw.id);
  const { title } = layout.mount;
  if (need.ends !== "rail") return [{ ...words, use: title }];
  const behind = [need.washer, need.nut].filter((each) => each !== null);
  return [
    { ...words, use: `${title}; through the rail of ${decimal(panel.rail ?? 0, 2)} mm` },
    ...behind.map((each) => ({ part: each.id, title: each.title, use: "behind the rail" })),
  ];
};

/** A wooden rail is gripped with the panel; paint is counted in the panel, and a rail is laid bare. */
const studWords = ({ title, grips }: Stud, { layout, rail }: PanelForPack): string => {
  const panel = mountGrip(layout);
  const [low, high] = [panel.low + (rail ?? 0), panel.high + (rail ?? 0)];
  const through = rail === null ? "" : `, through the rail of ${decimal(rail, 2)} mm`;
  const fits = grips.find(({ least, most }) => least <= low && high <= most);
  if (grips.length === 0) return title;
  return fits === undefined
    ? `${title}, for a grip of ${[...new Set([decimal(low, 2), decimal(high, 2)])].join(" to ")} mm${through}: none in the catalogue`
    : `${title}, grip ${decimal(fits.least, 2)} to ${decimal(fits.most, 2)} mm${through}`;
};
