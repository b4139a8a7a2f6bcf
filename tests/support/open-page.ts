// Opens the built page in the tests' browser and keeps a list of everything that it complained about.

import { resolve } from "node:path";
import type { Browser, Page } from "playwright-core";
import { launchBrowser } from "./browser.ts";
import { complaintsOf } from "./complaints.ts";
import { type StaticServer, serveFolder } from "./static-server.ts";

export interface PageStand {
  readonly browser: Browser;
  readonly server: StaticServer;
  readonly close: () => Promise<void>;
}

export interface OpenPage {
  readonly page: Page;
  /** Console errors and warnings, failed requests, exceptions, breaches of the content policy. */
  readonly complaints: readonly string[];
}

export async function standOf(folder: string): Promise<PageStand> {
  const server = await serveFolder(resolve(import.meta.dirname, "../..", folder));
  const browser = await launchBrowser();
  const close = async (): Promise<void> => {
    await browser.close();
    await server.close();
  };
  return { browser, server, close };
}

export async function openPage({ browser, server }: PageStand): Promise<OpenPage> {
  const page = await browser.newPage({ viewport: { width: 1200, height: 900 } });
  const complaints = complaintsOf(page);
  page.on("requestfailed", (request) => {
    // What the page itself has given up: the reading of a design in whose place another was opened.
    if (request.failure()?.errorText !== "net::ERR_ABORTED")
      complaints.push(`failed: ${request.url()}`);
  });
  await page.goto(server.address);
  return { page, complaints };
}
