// What holds the panel to its mount: screws as long as what they clamp asks for, studs by their grip, and nothing guessed
// where the catalogue does not know.

import type { Stud } from "../catalogue/hardware.ts";
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
  return count === 0 ? [] : [{ count, ...fastenerWords(panel), use: layout.mount.title }];
};

const fastenerWords = (panel: PanelForPack): ScrewWords => {
  const { layout, catalogue } = panel;
  const { fastener } = layout.mount;
  const found = catalogue.hardware.get(fastener);
  if (found?.kind === "screw")
    return screwWords(
      mountScrewNeed(panel, found, catalogue),
      catalogue,
      ({ screw }) => screw.id === fastener,
    );
  if (found?.kind === "stud") return { part: fastener, title: studWords(found, panel) };
  return { part: fastener, title: found?.title ?? fastener };
};

const studWords = ({ title, grips }: Stud, { layout }: PanelForPack): string => {
  const { low, high } = mountGrip(layout);
  const fits = grips.find(({ least, most }) => least <= low && high <= most);
  if (grips.length === 0) return title;
  return fits === undefined
    ? `${title}, for a grip of ${decimal(low, 2)} to ${decimal(high, 2)} mm: none in the catalogue`
    : `${title}, grip ${decimal(fits.least, 2)} to ${decimal(fits.most, 2)} mm`;
};
