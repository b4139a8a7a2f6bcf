// A PDF page by page, drawn from the file as it was read back by a worker that can be given up, and printed from here in true size
// once all of it is read.

import type { JSX } from "preact";
import { useEffect, useMemo, useState } from "preact/hooks";
import type { PackFile } from "../../src/pack/pack-file.ts";
import { NearView } from "./near-view.tsx";
import { PaintedPaper } from "./painted-page.tsx";
import type { PdfReply } from "./pdf.worker.ts";
import type { PaintedPage } from "./pdf-paint.ts";
import { printPages } from "./print-pages.tsx";

export function PdfPreview({ file }: { readonly file: PackFile }): JSX.Element {
  const { now, giveUp, begin } = useReading(file);
  const [at, setAt] = useState(0);
  const { pages, of, standing } = now;
  const index = Math.max(0, Math.min(at, pages.length - 1));
  const page = pages[index];
  const paper = useMemo(() => {
    if (page === undefined) return null;
    const name = `${file.path}, page ${index + 1}`;
    return (
      <NearView name={name} key={index}>
        <PaintedPaper page={page} name={name} isTrueSize={false} />
      </NearView>
    );
  }, [page, index, file.path]);
  if (standing === "unreadable")
    return <p>This PDF could not be read back here. Save it and open it in a viewer.</p>;
  if (standing === "given-up")
    return (
      <p>
        {file.path} was not read.{" "}
        <button type="button" class="act" onClick={begin}>
          Read it
        </button>
      </p>
    );
  return (
    <div class="pdf-preview">
      {standing === "reading" && (
        <p class="making">
          {of === 0 ? (
            <progress aria-label="Reading the file" />
          ) : (
            <progress aria-label="Reading the file" value={pages.length} max={of} />
          )}
          <span role="status">
            {of === 0 ? `Reading ${file.path} …` : `Reading page ${pages.length + 1} of ${of} …`}
          </span>
          <button type="button" class="act" onClick={giveUp}>
            Give it up
          </button>
        </p>
      )}
      <p class="preview-bar">
        {standing === "read" && (
          <button type="button" class="act" onClick={() => printPages(pages, file.path)}>
            Print in true size
          </button>
        )}
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
              Page {index + 1} of {of}
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
      {paper}
    </div>
  );
}

interface Reading {
  /** As they come; `of` is 0 until they are counted. */
  readonly pages: readonly PaintedPage[];
  readonly of: number;
  readonly standing: "reading" | "read" | "unreadable" | "given-up";
}

const BEGUN: Reading = { pages: [], of: 0, standing: "reading" };

/** Ended when it is given up or another file is looked at. */
function useReading(file: PackFile): {
  readonly now: Reading;
  readonly giveUp: () => void;
  readonly begin: () => void;
} {
  const [now, setNow] = useState<Reading>(BEGUN);
  const [isWanted, setWanted] = useState(true);
  useEffect(() => {
    if (!isWanted) {
      setNow({ ...BEGUN, standing: "given-up" });
      return;
    }
    setNow(BEGUN);
    const worker = new Worker(new URL("./pdf.worker.ts", import.meta.url), { type: "module" });
    const end = (standing: Reading["standing"]): void => {
      setNow((before) => ({ ...before, standing }));
      worker.terminate();
    };
    worker.onmessage = ({ data }: MessageEvent<PdfReply>) => {
      if (data.kind === "done") end(data.isRead ? "read" : "unreadable");
      else {
        const { page, of } = data;
        setNow(({ pages, standing }) => ({ pages: [...pages, page], of, standing }));
      }
    };
    worker.onerror = () => end("unreadable");
    worker.postMessage(file.bytes);
    return () => worker.terminate();
  }, [file, isWanted]);
  return { now, giveUp: () => setWanted(false), begin: () => setWanted(true) };
}
