// The page as it is, built once more with one thing beside it: `window.desk`, by which a test edits the texts as a view
// does. Served by the real server of `view` from a temporary design.

import { mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { dirname, join, resolve } from "node:path";
import type { Page } from "playwright-core";
import { build, type Plugin } from "vite";
import { type Disk, realDisk } from "../../src/cli/disk.ts";
import { type DesignServer, startServer } from "../../src/cli/view/design-server.ts";
import { pageFiles } from "../../src/cli/view/page-files.ts";
import type { DesignInput } from "./pack-hashes.ts";

const root = resolve(import.meta.dirname, "../..");

const withDesk: Plugin = {
  name: "desk-for-tests",
  transform: (code, id) =>
    id.endsWith("viewer/main.tsx")
      ? `${code}
import * as desk from "./desk.ts";
import { store } from "./files/stored-state.ts";
import { textHash } from "../src/diagnostics/text-edit.ts";
window.desk = {
  text: (file) => desk.texts.value.get(file),
  bytes: (file) => desk.binaries.value.get(file)?.join(" "),
  add: (file, bytes) => desk.addBinary(file, new Uint8Array(bytes)),
  keepPicture: (file, bytes) => store.value.keepPicture(file, new Uint8Array(bytes)),
  begin: desk.begin,
  commit: desk.commit,
  replace: (file, from, to) => {
    const text = desk.texts.value.get(file);
    const start = text.indexOf(from);
    if (start < 0) throw new Error(from + " is not in " + file);
    const edit = { file, baseHash: textHash(text), start, end: start + from.length, text: to };
    return desk.edit([edit], "write " + to);
  },
};`
      : null,
};

/** The folder that the page was built into. */
export async function buildDeskPage(): Promise<string> {
  const outDir = mkdtempSync(join(tmpdir(), "consolewright-page-"));
  await build({
    logLevel: "warn",
    configFile: join(root, "vite.config.ts"),
    root: join(root, "viewer"),
    plugins: [withDesk],
    build: { outDir, minify: false },
  });
  return outDir;
}

export interface ServeSettings {
  /** Any that is free where it is absent. */
  readonly port?: number;
  readonly disk?: Disk;
}

export interface DeskDesign {
  readonly folder: string;
  readonly read: (path: string) => string;
  readonly write: (path: string, change: (before: string) => string) => void;
  readonly serve: (page: string, settings?: ServeSettings) => Promise<DesignServer>;
  readonly remove: () => void;
}

export function layDesign({ entry, files }: DesignInput): DeskDesign {
  const folder = mkdtempSync(join(tmpdir(), "consolewright-design-"));
  for (const [path, text] of Object.entries(files)) {
    mkdirSync(dirname(join(folder, path)), { recursive: true });
    writeFileSync(join(folder, path), text);
  }
  const read = (path: string): string => readFileSync(join(folder, path), "utf8");
  return {
    folder,
    read,
    write: (path, change) => writeFileSync(join(folder, path), change(read(path))),
    serve: async (page, { port = 0, disk = realDisk } = {}) => {
      const source = { place: { root: folder, entry }, isReadOnly: false, disk };
      const built = pageFiles(page);
      const started = built === null ? null : await startServer({ source, page: built, port });
      if (started?.kind !== "started") throw new Error(`not started: ${started?.kind}`);
      return started.server;
    },
    remove: () => rmSync(folder, { recursive: true, force: true }),
  };
}

interface DeskWindow {
  readonly text: (file: string) => string | undefined;
  /** Of a shape or a picture, in decimals; undefined where it is not there. */
  readonly bytes: (file: string) => string | undefined;
  /** As the photograph's drawer does when a picture was chosen; a number: so many bytes of nothing. */
  readonly add: (file: string, bytes: readonly number[] | number) => void;
  readonly keepPicture: (
    file: string,
    bytes: readonly number[],
  ) => Promise<{ readonly kind: string; readonly why?: string }>;
  readonly begin: (what: string) => void;
  readonly commit: () => void;
  readonly replace: (
    file: string,
    from: string,
    to: string,
  ) => { readonly kind: string; readonly why?: string };
}

declare global {
  interface Window {
    readonly desk: DeskWindow;
  }
}

export interface Replacement {
  readonly file: string;
  readonly from: string;
  readonly to: string;
}

/** One edit, as a view makes it; gives what the desk answers. */
export const replaceIn = (
  page: Page,
  change: Replacement,
): Promise<{ kind: string; why?: string }> =>
  page.evaluate(({ file, from, to }) => window.desk.replace(file, from, to), change);

export const textIn = (page: Page, file: string): Promise<string | undefined> =>
  page.evaluate((path) => window.desk.text(path), file);
