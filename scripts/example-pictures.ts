// The pictures of the examples, made by the program itself: every panel as it will look, the tug trainer's bays with
// their panels in place, and the first panel's drawings and cut file for the README. Run by `npm run pictures`.

import { existsSync, mkdirSync, readdirSync, rmSync, writeFileSync } from "node:fs";
import { dirname, join } from "node:path";
import { fileURLToPath } from "node:url";
import { type Library, openLibrary } from "../src/catalogue/library.ts";
import { projectFiles } from "../src/design/project-files.ts";
import type { Drawing } from "../src/drawings/drawing.ts";
import { frontDrawing } from "../src/drawings/front-drawing.ts";
import { pictureDrawing } from "../src/drawings/picture-drawing.ts";
import { sectionDrawing } from "../src/drawings/section-drawing.ts";
import { svgDrawing } from "../src/export/svg-drawing.ts";
import { compile, type PanelProject, type Project, packOfProject } from "../src/project.ts";
import { bayDrawing } from "./bay-drawing.ts";
import { buildLibrary } from "./build-library.ts";
import { type ExampleFiles, exampleFiles } from "./example-files.ts";
import { screenDrawing } from "./screen-drawing.ts";

/** SVG texts by name; for the whole project by path from its root, with forward slashes. */
export type Pictures = ReadonlyMap<string, string>;

/** Panels whose drawings, and whose cut file, the README shows as well. */
const SHOWN_DRAWN = "winch";
const SHOWN_CUT = "first-panel";

export function examplePictures(root: string, library: Library): Pictures {
  const examples = exampleFiles(root);
  return new Map(
    Object.entries(examples).flatMap(([example, texts]) =>
      [...picturesOf(compileExample(texts, library))].map(
        ([name, svg]) => [`examples/${example}/pictures/${name}.svg`, svg] as const,
      ),
    ),
  );
}

export function compileExample(texts: ExampleFiles[string], library: Library): Project {
  const entry = "console.yaml" in texts ? "console.yaml" : "panel.yaml";
  return compile({ entry, files: new Map(Object.entries(texts)) }, library);
}

function picturesOf(project: Project): Pictures {
  const pictured = project.panels.flatMap(({ name, layout }) =>
    layout === null ? [] : [{ name, layout, picture: pictureDrawing(layout, project.lettering) }],
  );
  const { console: design } = projectFiles("console.yaml", project.files);
  const bays = design === null ? null : bayDrawing(design, pictured);
  return new Map([
    ...pictured.map(({ name, picture }) => [name, screenSvg(picture)] as const),
    ...(bays === null ? [] : [["console", screenSvg(bays)] as const]),
    ...project.panels.flatMap((panel) => [
      ...(panel.name === SHOWN_DRAWN ? drawingsOf(project, panel) : []),
      ...(panel.name === SHOWN_CUT ? cutFileOf(project, panel) : []),
    ]),
  ]);
}

function drawingsOf({ lettering }: Project, panel: PanelProject): Pictures {
  const { name, layout, printedParts, findings } = panel;
  if (layout === null) return new Map();
  return new Map([
    [`${name}-front`, screenSvg(frontDrawing(layout, findings, lettering))],
    [`${name}-section`, screenSvg(sectionDrawing({ layout, printedParts, findings }, lettering))],
  ]);
}

function cutFileOf(project: Project, panel: PanelProject): Pictures {
  const { files } = packOfProject(project, panel, { only: "fascia", card: false });
  const cut = files.find(({ kind }) => kind === "cut-svg");
  return new Map(cut === undefined ? [] : [[`${panel.name}-cut`, seen(cut.bytes)]]);
}

const screenSvg = (drawing: Drawing): string => svgDrawing(screenDrawing(drawing));

/** A cut file's lines are as thin as a machine wants them; a picture of it needs lines that a screen shows. */
function seen(cutFile: Uint8Array): string {
  return new TextDecoder()
    .decode(cutFile)
    .replaceAll(/stroke-width="[0-9.]+"/g, `stroke-width="${SEEN_WIDTH}"`)
    .replace("<title>", `<rect width="100%" height="100%" fill="#ffffff"/>\n<title>`);
}

const SEEN_WIDTH = 0.35;

function writePictures(root: string): void {
  const pictures = examplePictures(root, openLibrary(JSON.parse(JSON.stringify(buildLibrary()))));
  for (const [path, svg] of pictures) {
    mkdirSync(dirname(join(root, path)), { recursive: true });
    writeFileSync(join(root, path), svg);
    console.log(`${path}: ${Math.round(svg.length / 1024)} KiB`);
  }
  for (const path of committedPictures(root))
    if (!pictures.has(path)) {
      rmSync(join(root, path));
      console.log(`${path}: no example gives it any more, removed`);
    }
}

/** Paths of the pictures that lie in the examples' folders, in order. */
export function committedPictures(root: string): readonly string[] {
  return Object.keys(exampleFiles(root)).flatMap((example) => {
    const folder = `examples/${example}/pictures`;
    if (!existsSync(join(root, folder))) return [];
    return readdirSync(join(root, folder))
      .sort()
      .map((name) => `${folder}/${name}`);
  });
}

if (process.argv[1] === fileURLToPath(import.meta.url)) writePictures(dirname(import.meta.dirname));
