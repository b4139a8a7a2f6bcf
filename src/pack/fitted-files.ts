// Files of what lies in printed parts: cut files of filters and diffusers, each measured by itself since no layer lies on
// it, and label films to print at full size.

import { svgLabelFilm } from "../export/svg-label-film.ts";
import { cutFilesOf } from "./cut-files.ts";
import { safeName } from "./file-name.ts";
import type { PackFile } from "./pack-file.ts";
import type { PanelForPack, PanelPack } from "./panel-pack.ts";
import { utf8Bytes } from "./utf8.ts";

export const fittedFiles = (panel: PanelForPack): PanelPack => {
  const { colours, design, fitted } = panel;
  const cut = fitted.sheets.map((part) =>
    cutFilesOf(part, { folder: "cut", colours, title: part.title, span: design.written.span }),
  );
  return {
    files: [...cut.flatMap(({ files }) => files), ...filmFiles(panel)],
    inspection: cut.flatMap(({ inspection }) => inspection),
    findings: cut.flatMap(({ findings }) => findings),
  };
};

const filmFiles = ({ fitted }: PanelForPack): readonly PackFile[] =>
  fitted.films.map((film) => ({
    path: `film/${safeName(film.id)}.svg`,
    kind: "label-film",
    part: film.id,
    bytes: utf8Bytes(svgLabelFilm(film)),
  }));
