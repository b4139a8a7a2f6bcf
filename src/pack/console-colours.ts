// What a body of the console looks like in its model: a sheet by its stock and what light does in it, everything else by kind.

import type { GlbColour } from "../export/glb.ts";
import type { ConsoleBody } from "../fit/console-body.ts";
import type { ConsoleLayout } from "../layout/console/console-layout.ts";
import type { LayerLayout } from "../layout/panel-layout.ts";

export const bodyColour = (body: ConsoleBody, { panels }: ConsoleLayout): GlbColour => {
  switch (body.role) {
    case "layer":
      return sheetColour(
        panels
          .find(({ name }) => name === body.panel)
          ?.layout.layers.find(({ id }) => id === body.thing) ?? null,
      );
    case "print":
      return opaque("#585c64");
    case "front":
      return opaque("#8a8f96");
    case "rear":
    case "tails":
      return opaque("#55595f");
    case "plug":
      return opaque("#3b6ea5");
    case "sweep":
      return { colour: "#d9a441", alpha: 0.25 };
    case "cable":
    case "latch":
      return { colour: "#3b6ea5", alpha: 0.25 };
    case "rail":
      return opaque("#b9bec4");
    case "frame":
      return opaque("#c8a873");
    case "rib":
      return opaque("#b4935c");
    case "wall":
      return { colour: "#9aa0a6", alpha: 0.3 };
    case "obstacle":
      return opaque("#9aa0a6");
  }
};

const opaque = (colour: string): GlbColour => ({ colour, alpha: 1 });

/** Through a translucent sheet a hand is a shadow, through a clear one it is seen. */
const ALPHA = { opaque: 1, translucent: 0.85, clear: 0.35 } as const;

const sheetColour = (layer: LayerLayout | null): GlbColour => {
  const stock = layer?.stock ?? null;
  if (layer === null || stock === null) return opaque("#c6cace");
  // A painted sheet shows its last coat, and no light goes through it but where it is engraved.
  const coat = layer.finish?.coats.at(-1);
  if (coat !== undefined) return opaque(colourOf(coat));
  return { colour: colourOf(stock.colour), alpha: ALPHA[stock.light] };
};

/** Words of colour as stock is sold by them; what is not known by name is grey. */
const COLOURS: readonly (readonly [string, string])[] = [
  ["black", "#2a2d31"],
  ["white", "#efede6"],
  ["grey", "#8d939a"],
  ["aluminium", "#c6cace"],
  ["opal", "#f3efe4"],
  ["clear", "#dceaf0"],
  ["red", "#b3261e"],
  ["amber", "#d98c1f"],
  ["yellow", "#e0c53a"],
  ["green", "#2f6b45"],
  ["blue", "#2f4a63"],
  ["birch", "#d8bf8f"],
  ["wood", "#c8a873"],
];

const colourOf = (word: string): string => {
  const plain = word.toLowerCase();
  return COLOURS.find(([name]) => plain.includes(name))?.[1] ?? "#8d939a";
};
