// The worker's answers to the panel view: from the library, and from what was last read of the design.

import { arrangeList } from "../../src/arrange/arrange-list.ts";
import { readComponentList } from "../../src/design/component-list.ts";
import { lineAndColumn } from "../../src/diagnostics/position.ts";
import { sectionDrawing } from "../../src/drawings/section-drawing.ts";
import { mm } from "../../src/geometry/quantity.ts";
import type { Library, Project } from "../../src/project.ts";
import type { MountChoice, PanelAnswer, PanelQuestion, ShownDrawing } from "./panel-messages.ts";
import { shapesOf } from "./panel-picture.ts";
import { partCard } from "./part-card.ts";
import type { ShapeData } from "./shape-data.ts";

export interface AnswerScene {
  readonly library: Library;
  readonly projects: readonly Project[];
  readonly data: ShapeData;
}

export function panelAnswer(question: PanelQuestion, scene: AnswerScene): PanelAnswer {
  const { number } = question;
  switch (question.kind) {
    case "parts":
      return { kind: "parts", number, parts: [...partsOf(scene)].map(partCard) };
    case "mounts":
      return { kind: "mounts", number, mounts: mountsOf(scene) };
    case "section":
      return { kind: "section", number, drawing: sectionOf(question.panel, scene) };
    case "arrange":
      return arranged(question, scene.library);
  }
}

/** The design's own parts go with the library's. */
const partsOf = ({ library, projects }: AnswerScene) =>
  (projects[0]?.catalogue ?? library.catalogue).parts.values();

const mountsOf = ({ library }: AnswerScene): readonly MountChoice[] =>
  [...library.catalogue.mounts.values()].map(({ id, title, width }) => ({
    id,
    title,
    leavesWidth: width === null,
  }));

function sectionOf(name: string, { projects, data }: AnswerScene): ShownDrawing | null {
  for (const project of projects) {
    const panel = project.panels.find((one) => one.name === name);
    if (panel === undefined || panel.layout === null) continue;
    const { layout, printedParts, findings } = panel;
    const drawing = sectionDrawing({ layout, printedParts, findings }, project.lettering);
    return {
      title: drawing.title,
      box: drawing.box,
      shapes: drawing.items.flatMap((item) => shapesOf(item, data)),
    };
  }
  return null;
}

const LIST = "list.csv";

function arranged(
  { number, list, name, mount, width, isLit }: PanelQuestion & { readonly kind: "arrange" },
  { catalogue, lettering }: Library,
): PanelAnswer {
  const { text, findings } = arrangeList(
    readComponentList(LIST, list, [...catalogue.parts.keys()]),
    {
      name,
      title: name,
      mount,
      width: width === null ? null : mm(width),
      stack: isLit ? "lit" : "plain",
      workshopPath: null,
      workshop: null,
      cataloguePath: null,
      catalogue,
      lettering,
    },
  );
  const files = new Map([
    [LIST, list],
    ["panel.yaml", text ?? ""],
  ]);
  // What is found in the panel's own text stands beside it, with its lines.
  const ofList = text === null ? findings : findings.filter(({ span }) => span.file === LIST);
  const placed = ofList.map((finding) => ({
    finding,
    ...lineAndColumn(files.get(finding.span.file) ?? "", finding.span.start),
  }));
  return { kind: "arranged", number, text, findings: placed };
}
