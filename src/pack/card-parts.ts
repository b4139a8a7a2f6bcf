// The sheets of a panel as they are cut from cardboard for a first fitting: no paint, the card's own kerf, cuts only.
// The holes are the finished sizes, so that real parts drop in as they will into the painted sheet.

import { type Mm, mm } from "../geometry/quantity.ts";
import type { LayerLayout, Range } from "../layout/panel-layout.ts";
import type { SheetPart } from "../parts/sheet-part.ts";
import { sheetPartsOf } from "../parts/sheet-parts.ts";
import type { PanelForPack } from "./panel-pack.ts";

/** The usual thickness of grey board for models (common practice); no fit depends on it. */
const CARD_THICKNESS = mm(2);

export const cardParts = ({ layout, lettering }: PanelForPack): readonly SheetPart[] =>
  sheetPartsOf({ ...layout, layers: layout.layers.map(inCard), markings: [] }, lettering).parts;

const inCard = (layer: LayerLayout): LayerLayout =>
  layer.stock === null
    ? layer
    : {
        ...layer,
        stock: {
          ...layer.stock,
          id: "card",
          material: "card",
          colour: "grey",
          light: "opaque",
          nominal: CARD_THICKNESS,
          measured: null,
          dated: null,
          cap: null,
        },
        material: "card",
        finish: null,
        thickness: exactly(CARD_THICKNESS),
        paint: exactly(mm(0)),
        holePaint: exactly(mm(0)),
      };

const exactly = (value: Mm): Range => ({ low: value, nominal: value, high: value, known: true });
