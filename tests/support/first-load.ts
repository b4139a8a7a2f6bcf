// What a browser that has nothing yet fetches of the built page before it shows its first panel, as a host sends it: packed.

import { readFileSync } from "node:fs";
import { resolve } from "node:path";
import { gzipSync } from "node:zlib";
import type { PageStand } from "./open-page.ts";

export interface FetchedFile {
  readonly path: string;
  /** By gzip at its usual level, as most hosts send texts. */
  readonly packedBytes: number;
}

export interface FirstLoad {
  readonly milliseconds: number;
  /** Program, style, examples, and of `library.json` all but the fonts. */
  readonly code: readonly FetchedFile[];
  /** Fonts (`library.json` as it is fetched), and kernels if there are any. */
  readonly data: readonly FetchedFile[];
}

/** Of a stand whose server nobody has asked for anything yet. */
export async function firstLoad(
  { browser, server }: PageStand,
  folder: string,
): Promise<FirstLoad> {
  const context = await browser.newContext({ viewport: { width: 1280, height: 720 } });
  const page = await context.newPage();
  await page.addInitScript(() => {
    const watch = new MutationObserver(() => {
      if (document.querySelector(".board [data-component]") === null) return;
      watch.disconnect();
      Object.assign(window, { firstPanelAt: Date.now() });
    });
    watch.observe(document, { childList: true, subtree: true });
  });
  const before = server.served.length;
  const started = performance.now();
  await page.goto(server.address);
  await page.locator(".board [data-component]").first().waitFor({ state: "attached" });
  const milliseconds = performance.now() - started;
  // What is fetched soon after does not count, however late a busy machine tells of the panel.
  const shownAt = await page.evaluate(() => window.firstPanelAt);
  const asked = server.served.slice(before).filter((file) => file.asked <= shownAt);
  const fetched = [...new Set(asked.map(({ path }) => path))].map((path) => ({
    path,
    packedBytes: gzipSync(readFileSync(resolve(folder, `.${path}`))).length,
  }));
  await context.close();
  const isData = ({ path }: FetchedFile): boolean =>
    path === "/library.json" || path.endsWith(".wasm");
  return {
    milliseconds,
    code: [...fetched.filter((file) => !isData(file)), catalogue(folder)],
    data: fetched.filter(isData),
  };
}

/** What the library would weigh without its fonts: both come in one file. */
function catalogue(folder: string): FetchedFile {
  const library: Readonly<Record<string, unknown>> = JSON.parse(
    readFileSync(resolve(folder, "library.json"), "utf8"),
  );
  const { fonts: _, ...rest } = library;
  const packedBytes = gzipSync(JSON.stringify(rest)).length;
  return { path: "/library.json without its fonts", packedBytes };
}

export const packedKilobytes = (files: readonly FetchedFile[]): number =>
  files.reduce((sum, { packedBytes }) => sum + packedBytes, 0) / 1000;

declare global {
  interface Window {
    readonly firstPanelAt: number;
  }
}
