// The worker that reads a PDF back: a console's drawings and mock-up take ten seconds, and the page stays at hand meanwhile. Each page
// is sent as it is read, so that the first is seen at once.

import { pdfPages } from "./pdf-pages.ts";
import type { PaintedPage } from "./pdf-paint.ts";

export type PdfReply =
  | { readonly kind: "page"; readonly page: PaintedPage; readonly of: number }
  | { readonly kind: "done"; readonly isRead: boolean };

self.addEventListener("message", ({ data }: MessageEvent<Uint8Array>) => {
  const pages = pdfPages(data, (page, of) => tell({ kind: "page", page, of }));
  tell({ kind: "done", isRead: pages !== null });
});

const tell = (reply: PdfReply): void => self.postMessage(reply);
