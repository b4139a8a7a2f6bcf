// The browser of the tests: Chromium from the npm package, unpacked once into .cache/, with the few libraries and
// the font that a bare machine lacks, so that `npm ci` is all the setting up there is.

import { execFileSync } from "node:child_process";
import {
  existsSync,
  mkdirSync,
  mkdtempSync,
  readFileSync,
  renameSync,
  writeFileSync,
} from "node:fs";
import { dirname, join } from "node:path";
import { fileURLToPath } from "node:url";
import { brotliDecompressSync } from "node:zlib";
import { type Browser, chromium } from "playwright-core";

const packed = join(
  dirname(fileURLToPath(import.meta.resolve("@sparticuz/chromium"))),
  "../../bin",
);
const cache = join(import.meta.dirname, "../../.cache");

/**
 * No sandbox (containers have none to give), and the drawing of a machine without a graphics card: WebGL is worked out by the
 * processor, and the window is put together from its pieces without it. Put together by WebGL as well, a page of two dimensions
 * takes three times the processor. The rest is left as a user's browser has it.
 */
const SWITCHES = [
  "--no-sandbox",
  "--use-angle=swiftshader",
  "--enable-unsafe-swiftshader",
  "--disable-gpu-compositing",
];

export async function launchBrowser(): Promise<Browser> {
  return chromium.launch(browserCommand());
}

export interface BrowserCommand {
  readonly executablePath: string;
  readonly args: string[];
  readonly env: Record<string, string | undefined>;
}

/** How the browser is started, for a test that must be able to kill it. */
export function browserCommand(): BrowserCommand {
  const folder = unpackedBrowser();
  return {
    executablePath: join(folder, "chromium"),
    args: [...SWITCHES],
    env: {
      ...process.env,
      LD_LIBRARY_PATH: join(folder, "lib"),
      FONTCONFIG_FILE: join(folder, "fonts.conf"),
    },
  };
}

/** Renamed into place whole, so that two test processes can't see one that is half unpacked. */
function unpackedBrowser(): string {
  const version = JSON.parse(readFileSync(join(packed, "../package.json"), "utf8")).version;
  const folder = join(cache, `chromium-${version}`);
  if (existsSync(folder)) return folder;
  mkdirSync(cache, { recursive: true });
  const fresh = mkdtempSync(join(cache, "chromium-"));
  writeFileSync(join(fresh, "chromium"), unpacked("chromium.br"), { mode: 0o755 });
  for (const archive of ["al2023.tar.br", "swiftshader.tar.br", "fonts.tar.br"])
    execFileSync("tar", ["-x", "-C", fresh], { input: unpacked(archive) });
  writeFileSync(join(fresh, "fonts.conf"), fontSettings(folder));
  try {
    renameSync(fresh, folder);
  } catch (reason) {
    // Another process was first: its copy is as good.
    if (!existsSync(folder)) throw reason;
  }
  return folder;
}

const unpacked = (name: string): Buffer => brotliDecompressSync(readFileSync(join(packed, name)));

const fontSettings = (folder: string): string =>
  `<?xml version="1.0"?><!DOCTYPE fontconfig SYSTEM "fonts.dtd"><fontconfig>` +
  `<dir>${folder}/fonts</dir><cachedir>${folder}/font-cache</cachedir></fontconfig>\n`;
