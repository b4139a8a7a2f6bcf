// The pictures of the examples, made by the program itself: every panel as it will look, the tug trainer's bays with
// their panels in place, a console's plan and a step of its frame, drawings and a cut file for the README, and printed parts. Run by `npm run pictures`.

import { existsSync, mkdirSync, readdirSync, rmSync, writeFileSync } from "node:fs";
import { dirname, join } from "node:path";
import { fileURLToPath } from "node:url";
import { type Library, openLibrary } from "../src/catalogue/library.ts";
import { openKernel } from "../src/cli/solid-kernel.ts";
import { projectFiles } from "../src/design/project-files.ts";
import { consoleSheets } from "../src/drawings/console-drawing.ts";
import type { Drawing } from "../src/drawings/drawing.ts";
import { frameSteps } from "../src/drawings/frame-steps.ts";
import { frontDrawing } from "../src/drawings/front-drawing.ts";
import { pictureDrawing } from "../src/drawings/picture-drawing.ts";
import { sectionDrawing } from "../src/drawings/section-drawing.ts";
import { PAPERS } from "../src/export/paper.ts";
import { svgDrawing } from "../src/export/svg-drawing.ts";
import { consoleBodies } from "../src/fit/bodies/console-bodies.ts";
import type { Kernel } from "../src/geometry/solid/kernel.ts";
import { partPicture } from "../src/pack/part-picture.ts";
import { utf8Bytes, utf8Text } from "../src/pack/utf8.ts";
import { compile, type PanelProject, type Project, packOfProject } from "../src/project.ts";
import { bayDrawing } from "./bay-drawing.ts";
import { buildLibrary } from "./build-library.ts";
import { type ExampleFiles, exampleFiles } from "./example-files.ts";
import { screenDrawing } from "./screen-drawing.ts";

/** SVG or PNG by name and suffix; for the whole project by path from its root, with forward slashes. */
export type Pictures = ReadonlyMap<string, Uint8Array>;

interface PictureTools {
  readonly library: Library;
  readonly kernel: Kernel;
}

/** Panels whose drawings, and whose cut file, the README shows as well. */
const SHOWN_DRAWN = "winch";
const SHOWN_CUT = "first-panel";
/** Of a frame's assembly: both cheeks and the ribs stand, two rails go on. */
const SHOWN_STEP = 4;
/** Printed parts that a README shows: into a lit spacer, a trim, a lamp box, a box on a slope. */
const SHOWN_PRINTED = [
  "rudder-trim-spacer",
  "radio-channel-trim",
  "alarms-window-lamp-box",
  "tow-release-box",
];
const PRINTED_SIZE = { width: 560, height: 400 };

export function examplePictures(root: string, tools: PictureTools): Pictures {
  const examples = exampleFiles(root);
  return new Map(
    Object.entries(examples).flatMap(([example, texts]) =>
      [...picturesOf(compileExample(texts, tools.library), tools.kernel)].map(
        ([name, bytes]) => [`examples/${example}/pictures/${name}`, bytes] as const,
      ),
    ),
  );
}

export function compileExample(texts: ExampleFiles[string], library: Library): Project {
  const entry = "console.yaml" in texts ? "console.yaml" : "panel.yaml";
  return compile({ entry, files: new Map(Object.entries(texts)) }, library);
}

function picturesOf(project: Project, kernel: Kernel): Pictures {
  const pictured = project.panels.flatMap(({ name, layout }) =>
    layout === null ? [] : [{ name, layout, picture: pictureDrawing(layout, project.lettering) }],
  );
  const { console: design } = projectFiles("console.yaml", project.files);
  const bays = design === null ? null : bayDrawing(design, pictured);
  return new Map([
    ...pictured.map(({ name, picture }) => [`${name}.svg`, screenSvg(picture)] as const),
    ...(bays === null ? [] : [["console.svg", screenSvg(bays)] as const]),
    ...consoleDrawingsOf(project),
    ...project.panels.flatMap((panel) => [
      ...(panel.name === SHOWN_DRAWN ? drawingsOf(project, panel) : []),
      ...(panel.name === SHOWN_CUT ? cutFileOf(project, panel) : []),
      ...printsOf(panel, kernel),
    ]),
  ]);
}

/** Its plan, and a step of its frame's assembly. */
function consoleDrawingsOf({ console, panels, lettering, findings }: Project): Pictures {
  if (console === null) return new Map();
  const { layout, frame } = console;
  const printedParts = new Map(panels.map((panel) => [panel.name, panel.printedParts]));
  const bodies = consoleBodies({ layout, printedParts, frame });
  const sheets = consoleSheets({ layout, bodies, frame }, { findings, lettering, room: PAPERS.A4 });
  const plan = sheets.find(({ id }) => id === "plan");
  const steps = frame === null ? [] : frameSteps(frame, { title: layout.design.title, lettering });
  const step = steps[SHOWN_STEP - 1];
  return new Map([
    ...(plan === undefined ? [] : [["console-plan.svg", screenSvg(plan.drawing)] as const]),
    ...(step === undefined ? [] : [["frame-step.svg", screenSvg(step)] as const]),
  ]);
}

function drawingsOf({ lettering }: Project, panel: PanelProject): Pictures {
  const { name, layout, printedParts, findings } = panel;
  if (layout === null) return new Map();
  return new Map([
    [`${name}-front.svg`, screenSvg(frontDrawing(layout, findings, lettering))],
    [
      `${name}-section.svg`,
      screenSvg(sectionDrawing({ layout, printedParts, findings }, lettering)),
    ],
  ]);
}

function cutFileOf(project: Project, panel: PanelProject): Pictures {
  const { files } = packOfProject(project, panel, { only: "fascia", card: false });
  const cut = files.find(({ kind }) => kind === "cut-svg");
  return new Map(cut === undefined ? [] : [[`${panel.name}-cut.svg`, seen(cut.bytes)]]);
}

const printsOf = ({ printedParts }: PanelProject, kernel: Kernel): Pictures =>
  new Map(
    printedParts
      .filter(({ id }) => SHOWN_PRINTED.includes(id))
      .map((part) => [`${part.id}.png`, partPicture(part, kernel, PRINTED_SIZE)]),
  );

const screenSvg = (drawing: Drawing): Uint8Array => utf8Bytes(svgDrawing(screenDrawing(drawing)));

/** A cut file's lines are as thin as a machine wants them; a picture of it needs lines that a screen shows. */
function seen(cutFile: Uint8Array): Uint8Array {
  return utf8Bytes(
    utf8Text(cutFile)
      .replaceAll(/stroke-width="[0-9.]+"/g, `stroke-width="${SEEN_WIDTH}"`)
      .replace("<title>", `<rect width="100%" height="100%" fill="#ffffff"/>\n<title>`),
  );
}

const SEEN_WIDTH = 0.35;

async function writePictures(root: string): Promise<void> {
  const library = openLibrary(JSON.parse(JSON.stringify(buildLibrary())));
  const kernel = await openKernel(fileURLToPath(import.meta.resolve("manifold-3d/manifold.wasm")));
  const pictures = examplePictures(root, { library, kernel });
  for (const [path, bytes] of pictures) {
    mkdirSync(dirname(join(root, path)), { recursive: true });
    writeFileSync(join(root, path), bytes);
    console.log(`${path}: ${Math.round(bytes.length / 1024)} KiB`);
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

if (process.argv[1] === fileURLToPath(import.meta.url))
  await writePictures(dirname(import.meta.dirname));
