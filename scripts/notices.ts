// The licences of what is bundled: one text with every package that the built program carries, and the fonts' own.
// Read from the packages as installed; a package without a licence text stops the build.

import { existsSync, readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { fontRecords } from "./font-records.ts";

export const noticesText = (root: string): string => {
  const { dependencies } = packageFile(join(root, "package.json"));
  const names = bundledPackages(root, [...Object.keys(dependencies), ...PAGE_PACKAGES]);
  const packages = names.map((name) => packageNotice(root, name));
  const fonts = fontRecords().map(({ title, licence }) => section(`Font: ${title}`, licence));
  return [HEAD, ...packages, ...fonts].join("\n\n");
};

const HEAD =
  "Consolewright carries the following packages and fonts. Each stands under its own licence, printed below it.";

/** Bundled into the page; everything else that the page runs is a dependency of the program too. */
const PAGE_PACKAGES: readonly string[] = ["preact", "@preact/signals", "node-diff3", "three"];

interface PackageFile {
  readonly version: string;
  readonly license: string;
  readonly dependencies: Readonly<Record<string, string>>;
}

const packageFile = (path: string): PackageFile => {
  const read: Partial<PackageFile> = JSON.parse(readFileSync(path, "utf8"));
  return { version: "", license: "", dependencies: {}, ...read };
};

/** The named packages and whatever they depend on, each once, by name. */
const bundledPackages = (root: string, first: readonly string[]): readonly string[] => {
  const found = new Set(first);
  for (const name of found)
    for (const next of Object.keys(packageFile(packagePath(root, name)).dependencies))
      if (existsSync(packagePath(root, next))) found.add(next);
  return [...found].toSorted();
};

const packagePath = (root: string, name: string): string =>
  join(root, "node_modules", name, "package.json");

const packageNotice = (root: string, name: string): string => {
  const folder = join(root, "node_modules", name);
  const { version, license } = packageFile(join(folder, "package.json"));
  const file = readdirSync(folder).find((each) => /^(licen[cs]e|copying)/i.test(each));
  const text =
    file === undefined ? `Licence: ${license}` : readFileSync(join(folder, file), "utf8");
  if (file === undefined && license === "") throw new Error(`${name} states no licence`);
  return section(`${name} ${version}`, text);
};

const section = (title: string, text: string): string =>
  `${"=".repeat(72)}\n${title}\n${"=".repeat(72)}\n\n${text.trim()}\n`;
