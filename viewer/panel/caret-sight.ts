// The caret's line stays in sight when the text's pane becomes lower: what is found in what was just typed takes room from it.

import { useEffect } from "preact/hooks";

interface CaretPane {
  readonly field: { readonly current: HTMLTextAreaElement | null };
  readonly scroller: { readonly current: HTMLDivElement | null };
  /** The height of a line, pixels. */
  readonly line: number;
  /** What stands in the pane: another one is watched anew. */
  readonly file: string | null;
}

export function useCaretInSight({ field, scroller, line, file }: CaretPane): void {
  useEffect(() => {
    const view = scroller.current;
    if (view === null) return;
    let before = view.clientHeight;
    const watch = new ResizeObserver(() => {
      const now = view.clientHeight;
      const area = field.current;
      const was = before;
      before = now;
      if (area === null || document.activeElement !== area || now >= was) return;
      const bottom = caretLine(area) * line;
      const wasSeen = bottom > view.scrollTop && bottom - line < view.scrollTop + was;
      // Who has scrolled away from it reads something else.
      if (wasSeen && bottom > view.scrollTop + now) view.scrollTop = bottom - now;
    });
    watch.observe(view);
    return () => watch.disconnect();
  }, [file]);
}

/** From 1. */
const caretLine = ({ value, selectionEnd }: HTMLTextAreaElement): number =>
  value.slice(0, selectionEnd).split("\n").length;
