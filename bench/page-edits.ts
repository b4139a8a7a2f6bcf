// An edit in the built page: from the words that are written to new findings and the new picture on the screen. Beside it,
// in turns, the least that any page with a worker does: a text sent there and back, and one shape of a drawing moved.

import type { Page } from "playwright-core";
import { openPage, type PageStand } from "../tests/support/open-page.ts";
import { type ProcessorTime, processesOf, processorTime } from "./processor-time.ts";
import { panelDesign } from "./seeded-panel.ts";

export interface EditTimes {
  readonly page: readonly EditTime[];
  /** Milliseconds. */
  readonly bare: readonly number[];
}

export interface EditTime {
  /** By the clock. */
  readonly ms: number;
  /** Milliseconds of processor that its worker and its page had, and that the browser's threads waited for one; null: not counted. */
  readonly processor: {
    readonly worker: number;
    readonly page: number;
    readonly waited: number;
  } | null;
}

/** Whether the edited line, which stands before all other things of the panel, moves them along the text. */
export type EditedLine = "as long as before" | "longer and shorter in turn";

/** A panel of 60 components and 120 markings; each edit moves one of them, near enough to its neighbour to be told of. */
export async function editTimes(
  stand: PageStand,
  edits: number,
  line: EditedLine,
): Promise<EditTimes> {
  const panel = await openedPanel(stand);
  const bare = await barePage(stand);
  const processes = await processesOf(stand.browser);
  const times: { page: EditTime[]; bare: number[] } = { page: [], bare: [] };
  for (let round = 0; round < WARM_UP + edits; round += 1) {
    await panel.bringToFront();
    await panel.waitForTimeout(60);
    const before = processorTime(processes);
    const ms = await editTime(panel, placeOf(round, line));
    const own = { ms, processor: between(before, processorTime(processes)) };
    const least = await bareTime(bare, round);
    // A page that has just been opened is still being made quick by the browser.
    if (round < WARM_UP) continue;
    times.page.push(own);
    times.bare.push(least);
  }
  await panel.close();
  await bare.close();
  return times;
}

const WARM_UP = 20;

function between(before: ProcessorTime | null, after: ProcessorTime | null): EditTime["processor"] {
  if (before === null || after === null) return null;
  const of = (thread: string): number =>
    (after.worked.get(thread) ?? 0) - (before.worked.get(thread) ?? 0);
  return {
    worker: of("DedicatedWorker"),
    page: of("chromium"),
    waited: after.waited - before.waited,
  };
}

async function openedPanel(stand: PageStand): Promise<Page> {
  const { page } = await openPage(stand);
  const files = [...panelDesign(0, "b612").files].map(([name, text]) => ({
    name,
    mimeType: "text/yaml",
    buffer: Buffer.from(text),
  }));
  await page.getByLabel("Open files").setInputFiles(files);
  await page.locator('[data-component="c1"]').waitFor({ state: "attached" });
  return page;
}

/**
 * As typed into the text, and the field left at once: a pause between the two would leave it to the page's own clocks (a hand that
 * rests, the recovery copy) to make the edit before it is timed, and then the wait is for whatever changes next.
 */
const editTime = (page: Page, place: string): Promise<number> =>
  page.evaluate(async (x) => {
    const field = document.querySelector<HTMLTextAreaElement>(".text-pane textarea")!;
    const [component, list] = [
      () => document.querySelector('[data-component="c1"]')?.outerHTML,
      () => document.querySelector(".findings")?.textContent,
    ];
    const write = Object.getOwnPropertyDescriptor(HTMLTextAreaElement.prototype, "value")!.set!;
    const before = { component: component(), list: list() };
    const shown = new Promise<void>((done) => {
      const watch = new MutationObserver(() => {
        if (component() === before.component || list() === before.list) return;
        watch.disconnect();
        requestAnimationFrame(() => setTimeout(done));
      });
      const whole = { subtree: true, childList: true, attributes: true, characterData: true };
      watch.observe(document.body, whole);
    });
    const words = field.value.replace(/( c1: .*? x: )[\d.]+/, `$1${x}`);
    const started = performance.now();
    write.call(field, words);
    field.dispatchEvent(new InputEvent("input", { bubbles: true }));
    field.dispatchEvent(new FocusEvent("blur"));
    await shown;
    return performance.now() - started;
  }, place);

/** Toward c2, which stands at 49: nearer than hands want it, by another figure each time. */
const placeOf = (round: number, line: EditedLine): string => {
  const digits = line === "as long as before" || round % 2 === 0 ? 3 : 2;
  return (33 + (round % 40) / 20).toFixed(digits);
};

async function barePage({ browser }: PageStand): Promise<Page> {
  const page = await browser.newPage({ viewport: { width: 1200, height: 900 } });
  await page.setContent(
    '<svg width="400" height="400"><path id="moved" d="M0 0H9V9Z"></path></svg><p id="told"></p>',
  );
  await page.evaluate(() => {
    const code = "self.onmessage = ({ data }) => self.postMessage(data);";
    const worker = new Worker(URL.createObjectURL(new Blob([code])));
    Object.assign(window, { echo: worker });
  });
  return page;
}

const bareTime = async (page: Page, round: number): Promise<number> => {
  await page.bringToFront();
  return page.evaluate(
    async (text) => {
      const { echo } = window;
      await new Promise((done) => setTimeout(done, 60));
      const started = performance.now();
      await new Promise<void>((done) => {
        echo.onmessage = ({ data }) => {
          document
            .querySelector("#moved")!
            .setAttribute("transform", `translate(${data.length} 0)`);
          document.querySelector("#told")!.textContent = data.slice(0, 80);
          requestAnimationFrame(() => setTimeout(done));
        };
        echo.postMessage(text);
      });
      return performance.now() - started;
    },
    `${round} ${panelDesign(round, "b612").files.get("panel.yaml")}`,
  );
};

declare global {
  interface Window {
    readonly echo: Worker;
  }
}
