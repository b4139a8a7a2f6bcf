// The file that is looked at, each kind in its own way.

import type { JSX } from "preact";
import type { PackFile } from "../../src/pack/pack-file.ts";
import { CutPreview } from "./cut-preview.tsx";
import type { MadePack } from "./pack-messages.ts";
import { PdfPreview } from "./pdf-preview.tsx";
import { PicturePreview } from "./picture-preview.tsx";
import { SolidPreview } from "./solid-preview.tsx";
import { TextPreview } from "./text-preview.tsx";

export function FilePreview(props: {
  readonly file: PackFile;
  readonly made: MadePack;
}): JSX.Element {
  const { file, made } = props;
  switch (file.kind) {
    case "cut-svg":
    case "cut-dxf":
    case "cut-dxf-r12":
      return <CutPreview file={file} sizes={made.cuts.get(file.path) ?? null} />;
    case "print-3mf":
    case "print-stl":
    case "print-step":
    case "console-model":
      return <SolidPreview file={file} kind={file.kind} files={made.files} />;
    case "template-pdf":
    case "drawing-pdf":
    case "mock-up":
      return <PdfPreview file={file} key={file.path} />;
    case "drawing-svg":
    case "label-film":
    case "picture-png":
      return <PicturePreview file={file} />;
    case "key":
    case "inspection":
    case "measuring-list":
    case "parts-list":
    case "hand-operations":
    case "assembly":
      return byEnding(file, made);
    case "fit-report":
      return <ReportPreview file={file} files={made.files} />;
    case "readme":
    case "findings":
    case "manifest":
      return <TextPreview file={file} />;
  }
}

/** The report in HTML is read from the Markdown beside it: no markup of a file becomes the page's. */
function ReportPreview(props: {
  readonly file: PackFile;
  readonly files: readonly PackFile[];
}): JSX.Element {
  const { file, files } = props;
  const path = file.path.replace(/\.html$/, ".md");
  const plain = files.find((each) => each.path === path);
  if (path === file.path || plain === undefined) return <TextPreview file={file} />;
  return (
    <>
      <p class="quiet">
        Shown from {path}, the same report in plain text; with its picture it is seen when{" "}
        {file.path} is saved and opened.
      </p>
      <TextPreview file={plain} />
    </>
  );
}

/** Papers whose files are of several kinds: frame papers have pictures beside their text. */
const byEnding = (file: PackFile, made: MadePack): JSX.Element => {
  if (file.path.endsWith(".svg")) return <PicturePreview file={file} />;
  if (file.path.endsWith(".pdf"))
    return <PdfPreview file={file} key={`${file.path} ${made.files.length}`} />;
  return <TextPreview file={file} />;
};
