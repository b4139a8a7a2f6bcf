// The file that is looked at, each kind in its own way.

import type { JSX } from "preact";
import type { PackFile } from "../../src/pack/pack-file.ts";
import { CutPreview } from "./cut-preview.tsx";
import { NearView } from "./near-view.tsx";
import type { MadePack } from "./pack-messages.ts";
import { PaperPreview } from "./paper-preview.tsx";
import { PdfPreview } from "./pdf-preview.tsx";
import { PicturePreview } from "./picture-preview.tsx";
import { ReportPreview } from "./report-preview.tsx";
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
      return <SolidPreview file={file} kind={file.kind} key={file.path} />;
    case "template-pdf":
    case "drawing-pdf":
    case "mock-up":
      return <PdfPreview file={file} key={file.path} />;
    case "drawing-svg":
    case "label-film":
    case "picture-png":
      return <Drawing file={file} key={file.path} />;
    case "key":
    case "inspection":
    case "measuring-list":
    case "parts-list":
    case "hand-operations":
    case "assembly":
    case "fit-report":
    case "readme":
    case "findings":
    case "manifest":
      return byEnding(file, made);
  }
}

/** In a paper a picture stands as it is; by itself it may be seen nearer. */
function Drawing({ file }: { readonly file: PackFile }): JSX.Element {
  return (
    <NearView name={file.path}>
      <PicturePreview file={file} />
    </NearView>
  );
}

/** Papers whose files are of several kinds: frame papers have pictures beside their text, a report has its data. */
const byEnding = (file: PackFile, made: MadePack): JSX.Element => {
  if (file.path.endsWith(".svg")) return <Drawing file={file} key={file.path} />;
  if (file.path.endsWith(".pdf"))
    return <PdfPreview file={file} key={`${file.path} ${made.files.length}`} />;
  if (file.path.endsWith(".md"))
    return <PaperPreview file={file} files={made.files} key={file.path} />;
  if (file.path.endsWith(".html")) return <ReportPreview file={file} key={file.path} />;
  return <TextPreview file={file} />;
};
