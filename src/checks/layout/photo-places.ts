// Places that were read from a photograph and that nobody has measured on the thing itself.

import { spanOf } from "../../design/written.ts";
import { type CodeEntry, finding } from "../../diagnostics/finding.ts";
import { photoPlaces } from "../../layout/photo-places.ts";
import type { Rule } from "../rule.ts";
import { millimetres } from "../words.ts";

const entry: CodeEntry = {
  code: "checks/photo-places",
  severity: "query",
  title: "places that are from a photograph",
  why: "A place that was read from a photograph is as good as its marks: `residual` says how far off it may be. Measure it on the old panel, write the number, and strike out residual; where it is good enough as it is, strike it out too.",
  example:
    "components:\n  a: { part: led-5, at: { left: 40 mm, bottom: 30 mm, residual: 0.4 mm } }",
};

/** One finding a panel: they are measured in one go. */
export const photoPlacesUnmeasured: Rule = {
  entry,
  move: null,
  judge: ({ layout }) => {
    const places = photoPlaces(layout.design);
    const [first] = places;
    if (first === undefined) return [];
    const names = places.map(({ id, residual }) => `${id} ± ${millimetres(residual)}`);
    const shown = names.length > MOST ? [...names.slice(0, MOST), "..."] : names;
    const count = places.length === 1 ? "1 place is" : `${places.length} places are`;
    return [
      finding(entry, {
        message: `${count} from a photograph: ${shown.join(", ")}. Measure them on the panel, write the numbers, and strike out residual.`,
        span: spanOf(first.place.written, "residual"),
        subjects: places.map(({ id }) => id),
        related: places
          .slice(1)
          .map(({ id, place }) => ({ what: id, span: spanOf(place.written, "residual") })),
      }),
    ];
  },
};

/** A longer row of names is not read; the measuring list has them all. */
const MOST = 8;
