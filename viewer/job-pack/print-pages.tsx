// Pages handed to the browser's print in true size: each as its own sheet of paper, without the browser's margins, everything
// else of the page left out. What is printed is measured by its bars of 100 mm: no browser says how a printer scaled it.

import { render } from "preact";
import { PaintedPaper } from "./painted-page.tsx";
import type { PaintedPage } from "./pdf-paint.ts";
import "./true-size.css";

export const printPages = (pages: readonly PaintedPage[], name: string): void => {
  document.querySelector(".true-size-print")?.remove();
  const sheets = document.createElement("div");
  sheets.className = "true-size-print";
  document.body.append(sheets);
  render(
    pages.map((page, index) => (
      <div key={index} class={`sheet-of-paper ${paperOf(page)}`}>
        <PaintedPaper page={page} name={`${name}, page ${index + 1}`} isTrueSize={true} />
      </div>
    )),
    sheets,
  );
  const clear = (): void => {
    render(null, sheets);
    sheets.remove();
  };
  window.addEventListener("afterprint", clear, { once: true });
  window.print();
};

/** The name of the paper in the stylesheet: ISO 216 A4 is 210 mm by 297 mm, Letter (ASME Y14.1, A) 8.5 in by 11 in. */
const paperOf = ({ width, height }: PaintedPage): string => {
  const short = Math.min(width, height);
  const name = Math.abs(short - 210) < 1 ? "a4" : "letter";
  return width > height ? `${name}-across` : name;
};
