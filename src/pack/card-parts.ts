// The sheets of a panel as they are cut from cardboard for a first fitting: no paint, the card's own kerf, cuts only.
// The holes are the finished sizes, so that real parts drop in as they will into the painted sheet.

import type { StockDesign } from "../design/workshop-design.ts";
import { type Mm, mm } from "../geometry/quantity.ts";
import type { LayerLayout, Range } from "../layout/panel-layout.ts";
import type { SheetPart } from "../parts/sheet-part.ts";
import { sheetPartsOf } from "../parts/sheet-parts.ts";
import type { PanelForPack } from "./panel-pack.ts";

export const cardParts = ({ layout, lettering, catalogue }: PanelForPack): readonly SheetPart[] => {
  const card = [...catalogue.stock.values()].find(({ material }) => material === "card");
  const layers = layout.layers.map((layer) =>
    layer.stock === null ? layer : inCard(layer, card ?? PLAIN_CARD),
  );
  return sheetPartsOf({ ...layout, layers, markings: [] }, lettering).parts;
};

/** The usual thickness of grey board for models (common practice); no fit depends on it. */
const CARD_THICKNESS = mm(2);

/** Where the catalogue holds none. */
const PLAIN_CARD: StockDesign = {
  id: "card",
  material: "card",
  colour: "grey",
  light: "opaque",
  nominal: CARD_THICKNESS,
  measured: null,
  dated: null,
  cap: null,
  opaqueFrom: null,
  written: { span: { file: "", start: 0, end: 0 }, keys: {} },
};

const inCard = (layer: LayerLayout, card: StockDesign): LayerLayout => ({
  ...layer,
  stock: card,
  material: "card",
  finish: null,
  thickness: exactly(card.nominal),
  paint: exactly(mm(0)),
  holePaint: exactly(mm(0)),
});

const exactly = (value: Mm): Range => ({ low: value, nominal: value, high: value, known: true });
