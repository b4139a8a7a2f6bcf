// The examples as the page gets them: the text of every design file, by example and path.

import { existsSync, readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";

/** By example: its files' texts, by path from the example's folder with forward slashes. */
export type ExampleFiles = Readonly<Record<string, Readonly<Record<string, string>>>>;

/** What the page shows of each before it is opened; loaded where somebody asks for the choice. */
export const EXAMPLE_PICTURES: Readonly<Record<string, string>> = {
  "first-panel": "first-panel.svg",
  "rack-panel": "studio-rack.svg",
  "tug-trainer": "console.svg",
};

export function exampleFiles(root: string): ExampleFiles {
  const folder = join(root, "examples");
  if (!existsSync(folder)) return {};
  const examples = readdirSync(folder, { withFileTypes: true })
    .filter((entry) => entry.isDirectory())
    .map((entry) => entry.name)
    .sort();
  const files = examples.map((name) => [name, designFiles(join(folder, name))] as const);
  return Object.fromEntries(files.filter(([, texts]) => Object.keys(texts).length > 0));
}

/** Without variants: consoles of their own over the same panels, every one of which the page would read. */
export const openedFiles = (examples: ExampleFiles): ExampleFiles =>
  Object.fromEntries(
    Object.entries(examples).map(([name, texts]) => [
      name,
      Object.fromEntries(Object.entries(texts).filter(([path]) => !path.startsWith("variants/"))),
    ]),
  );

function designFiles(folder: string): Readonly<Record<string, string>> {
  const paths = readdirSync(folder, { recursive: true, encoding: "utf8" })
    .map((path) => path.replaceAll("\\", "/"))
    .filter((path) => /\.ya?ml$/.test(path))
    .sort();
  return Object.fromEntries(paths.map((path) => [path, readFileSync(join(folder, path), "utf8")]));
}
