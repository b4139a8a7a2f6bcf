// A PDF page by page, drawn from the file as it was read back, and printed from here in true size.

import type { JSX } from "preact";
import { useMemo, useState } from "preact/hooks";
import type { PackFile } from "../../src/pack/pack-file.ts";
import { NearView } from "./near-view.tsx";
import { PaintedPaper } from "./painted-page.tsx";
import { pdfPages } from "./pdf-pages.ts";
import { printPages } from "./print-pages.tsx";

export function PdfPreview({ file }: { readonly file: PackFile }): JSX.Element {
  const pages = useMemo(() => pdfPages(file.bytes), [file]);
  const [at, setAt] = useState(0);
  if (pages === null)
    return <p>This PDF could not be read back here. Save it and open it in a viewer.</p>;
  const index = Math.min(at, pages.length - 1);
  const page = pages[index];
  return (
    <div class="pdf-preview">
      <p class="preview-bar">
        <button type="button" class="act" onClick={() => printPages(pages, file.path)}>
          Print in true size
        </button>
        {pages.length > 1 && (
          <>
            <button
              type="button"
              class="act"
              aria-disabled={index === 0}
              onClick={() => setAt(Math.max(0, index - 1))}
            >
              Page before
            </button>
            <span role="status">
              Page {index + 1} of {pages.length}
            </span>
            <button
              type="button"
              class="act"
              aria-disabled={index === pages.length - 1}
              onClick={() => setAt(Math.min(pages.length - 1, index + 1))}
            >
              Page after
            </button>
          </>
        )}
      </p>
      <p class="quiet">
        Print at 100 %, with no fitting to the page. Then lay a ruler on both bars of every page:
        they must be 100 mm long, or nothing may be drilled by it.
      </p>
      {page !== undefined && (
        <NearView name={`${file.path}, page ${index + 1}`} key={index}>
          <PaintedPaper page={page} name={`${file.path}, page ${index + 1}`} isTrueSize={false} />
        </NearView>
      )}
    </div>
  );
}
