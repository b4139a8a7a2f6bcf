// Which figures of a part decide its fit and have been measured by nobody; the measuring list asks for the same ones.

import { figureSource } from "../../catalogue/figure-source.ts";
import type { PlacedComponent } from "../../layout/panel-layout.ts";

/** Paths of the part's fit-deciding figures that are neither measured by the design nor given by maker or standard. */
export const unmeasuredFigures = (component: PlacedComponent): readonly string[] => {
  const { figures } = component.part;
  const measured = component.common.measured?.values ?? {};
  return figures.measureFirst.filter((path) => {
    const { kind } = figureSource(figures, path);
    return measured[path] === undefined && (kind === "memory" || kind === "practice");
  });
};
