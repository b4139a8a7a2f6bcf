// A layer in one line: its name, what it is made of, how thick it is and may be, and what is on it.

import { decimal } from "../geometry/number.ts";
import type { LayerLayout, Range } from "../layout/panel-layout.ts";
import { PLACES } from "./measure-line.ts";

export const layerWords = (layer: LayerLayout): string => {
  const made = layer.stock === null ? layer.kind : layer.stock.id;
  return [`${layer.id}: ${made}`, thicknessWords(layer), ...finishWords(layer)].join(", ");
};

/** "3 (2.6 to 3.4)", or "2.86 measured". */
export const rangeWords = (range: Range): string => {
  const nominal = decimal(range.nominal, PLACES);
  if (range.low === range.high) return nominal;
  return `${nominal} (${decimal(range.low, PLACES)} to ${decimal(range.high, PLACES)})`;
};

const thicknessWords = ({ thickness, stock }: LayerLayout): string => {
  const measured = stock?.measured === null || stock === null ? "" : measuredWords(stock.dated);
  return `${rangeWords(thickness)} mm${measured}`;
};

const measuredWords = (dated: string | null): string =>
  dated === null ? " measured" : ` measured ${dated}`;

const finishWords = ({ finish, paint }: LayerLayout): readonly string[] =>
  finish === null
    ? []
    : [`${finish.id} (${finish.coats.join(", ")}), ${rangeWords(paint)} mm a side`];
