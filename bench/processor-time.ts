// What the browser's threads have had of the processors and what they have waited for one, as Linux counts it: on a machine that
// others load too, a clock tells mostly of them.

import { readdirSync, readFileSync } from "node:fs";
import type { Browser } from "playwright-core";

export interface ProcessorTime {
  /** Milliseconds since the browser was started, by the name of the threads of its pages. */
  readonly worked: ReadonlyMap<string, number>;
  /** Milliseconds for which threads stood ready and others had the processors; of all threads together. */
  readonly waited: number;
}

interface BrowserProcess {
  readonly id: number;
  readonly isPage: boolean;
}

/** Those of its pages, and those that draw and serve them. */
export async function processesOf(browser: Browser): Promise<readonly BrowserProcess[]> {
  const session = await browser.newBrowserCDPSession();
  const { processInfo } = await session.send("SystemInfo.getProcessInfo");
  await session.detach();
  return processInfo.map(({ id, type }) => ({ id, isPage: type === "renderer" }));
}

/** null where the system does not count. */
export function processorTime(processes: readonly BrowserProcess[]): ProcessorTime | null {
  const worked = new Map<string, number>();
  let waited = 0;
  for (const { id, isPage } of processes)
    for (const thread of threadsOf(id)) {
      const [name, figures] = [textOf(`${thread}/comm`), textOf(`${thread}/schedstat`)];
      if (name === null || figures === null) continue;
      const [ran, stood] = figures.split(" ").map((nanoseconds) => Number(nanoseconds) / 1e6);
      if (isPage) worked.set(name, (worked.get(name) ?? 0) + (ran ?? 0));
      waited += stood ?? 0;
    }
  return worked.size === 0 ? null : { worked, waited };
}

function threadsOf(process: number): readonly string[] {
  const folder = `/proc/${process}/task`;
  try {
    return readdirSync(folder).map((thread) => `${folder}/${thread}`);
  } catch {
    return [];
  }
}

/** null: the thread has ended, or there is no such file here. */
function textOf(path: string): string | null {
  try {
    return readFileSync(path, "utf8").trim();
  } catch {
    return null;
  }
}
