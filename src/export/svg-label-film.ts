// A label film as an SVG to be printed at full size on clear film: black with the words left open, each word in the colour
// of its alert, the line that it is cut along. Words are outlines and strokes, never text; only the title is words, escaped.

import type { LegendDesign } from "../design/panel-design.ts";
import type { Contour, Region } from "../geometry/contour.ts";
import { extentHeight, extentWidth, grownExtent } from "../geometry/extent.ts";
import { contourExtent } from "../geometry/measure.ts";
import type { FilmLabel, LabelFilm } from "../parts/printed/lamp-box-film.ts";
import { contourPathData, openPathData, type SvgFrame, svgNumber } from "./svg-path.ts";
import { xmlText } from "./xml-text.ts";

type Alert = LegendDesign["alert"];

/** Warning red, caution yellow, advisory a third colour, green preferred: MIL-STD-411F. The tones are our own. */
const FILM_COLOURS: Readonly<Record<Alert, string>> = {
  warning: "#d40000",
  caution: "#ffc400",
  advisory: "#00963f",
  none: "#ffffff",
};

const ALERTS: readonly Alert[] = ["warning", "caution", "advisory", "none"];

const GROUND = "#000000";
/** Paper round the film, so that the line to cut along is printed whole. */
const MARGIN = 5;
const CUT_LINE = 0.1;

export const svgLabelFilm = (film: LabelFilm): string => {
  const box = grownExtent(contourExtent(film.outline), MARGIN);
  const width = svgNumber(extentWidth(box));
  const height = svgNumber(extentHeight(box));
  const frame: SvgFrame = { left: box.minX, top: box.maxY };
  const title = xmlText(
    `${film.title}, revision ${film.revision}: print at 100 %, seen from the front`,
  );
  const outline = contourPathData(film.outline, frame);
  return [
    `<?xml version="1.0" encoding="UTF-8"?>\n`,
    `<svg xmlns="http://www.w3.org/2000/svg" version="1.1" width="${width}mm" height="${height}mm" viewBox="0 0 ${width} ${height}">\n`,
    `<title>${title}</title>\n`,
    `<path id="ground" fill="${GROUND}" fill-rule="evenodd" stroke="none" d="${outline}${lettersData(film, frame)}"/>\n`,
    ...ALERTS.flatMap((alert) => alertGroup(film, alert, frame)),
    `<path id="cut" fill="none" stroke="${GROUND}" stroke-width="${CUT_LINE}" d="${outline}"/>\n`,
    "</svg>\n",
  ].join("");
};

const alertGroup = (film: LabelFilm, alert: Alert, frame: SvgFrame): readonly string[] => {
  const labels = film.labels.filter((label) => label.alert === alert);
  if (labels.length === 0) return [];
  return [
    `<g id="${alert}">\n`,
    ...labels.flatMap((label) => labelElements(label, FILM_COLOURS[alert], frame)),
    "</g>\n",
  ];
};

const labelElements = (label: FilmLabel, colour: string, frame: SvgFrame): readonly string[] => [
  ...(label.fills.length === 0
    ? []
    : [
        `<path fill="${colour}" fill-rule="evenodd" stroke="none" d="${regionsData(label.fills, frame)}"/>\n`,
      ]),
  ...label.strokes.map(
    ({ path, width }) =>
      `<path fill="none" stroke="${colour}" stroke-width="${svgNumber(width)}" stroke-linecap="round" stroke-linejoin="round" d="${openPathData(path, frame)}"/>\n`,
  ),
];

const lettersData = (film: LabelFilm, frame: SvgFrame): string =>
  film.labels.map(({ fills }) => regionsData(fills, frame)).join("");

const regionsData = (regions: readonly Region[], frame: SvgFrame): string =>
  regions
    .flatMap(({ outline, holes }): readonly Contour[] => [outline, ...holes])
    .map((contour) => contourPathData(contour, frame))
    .join("");
