// A panel of a bay with all that stands after it, by name or by the order of the text: they move as one. Takes the panel and the
// console; gives those that move, and the first place at which none of them meets another panel or leaves the bay.

import { arithmeticNoise } from "../../geometry/tolerance.ts";
import type {
  BayLayout,
  ConsoleLayout,
  PanelPlace,
  PlacedPanel,
} from "../../layout/console/console-layout.ts";

export type InBay = PlacedPanel & { readonly place: PanelPlace & { readonly kind: "bay" } };

/** In the order of the text. */
export const panelsOfBay = (bay: BayLayout, { panels }: ConsoleLayout): readonly InBay[] =>
  panels
    .filter((panel): panel is InBay => panel.place.kind === "bay" && panel.place.bay === bay.id)
    .toSorted((a, b) => a.use.written.span.start - b.use.written.span.start);

/** The panel itself first. */
export const trainOf = (panel: InBay, all: readonly InBay[]): readonly InBay[] => {
  const train = [panel];
  for (const one of train)
    train.push(...all.filter((other) => !train.includes(other) && follows(other, one, all)));
  return train;
};

const follows = ({ use }: InBay, before: InBay, all: readonly InBay[]): boolean => {
  if (use.module !== null) return false;
  if (use.after !== null) return use.after === before.name;
  return all.findLast((each) => each.use.written.span.start < use.written.span.start) === before;
};

/** In the bay's own count, from its beginning: where the first of the train could begin; null where it could nowhere. */
export const freeModuleOfTrain = (
  train: readonly [InBay, ...InBay[]],
  all: readonly InBay[],
  bay: BayLayout,
): number | null => {
  const others = all.filter((panel) => !train.includes(panel));
  const { less } = bay.mount.height;
  const ends = others.map(({ place }) => (place.to + less / 2) / bay.pitch);
  const starts = [0, ...ends].toSorted((a, b) => a - b);
  const isFree = (start: number): boolean => {
    const shift = (start - train[0].place.module) * bay.pitch;
    return train.every(({ place }) => {
      const [from, to] = [place.from + shift, place.to + shift];
      return (
        from > -arithmeticNoise &&
        to < bay.length + arithmeticNoise &&
        others.every(
          (other) =>
            other.place.to < from + arithmeticNoise || other.place.from > to - arithmeticNoise,
        )
      );
    });
  };
  return starts.find(isFree) ?? null;
};
