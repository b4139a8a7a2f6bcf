// Runs a document: its commands in order, in one folder, as a reader would; gives what each shown text was shown for.

import { execFileSync } from "node:child_process";
import { readFileSync, writeFileSync } from "node:fs";
import { dirname, join } from "node:path";
import { realDisk } from "../../src/cli/disk.ts";
import { run } from "../../src/cli/run.ts";
import { openKernel } from "../support/kernel.ts";
import { testLibrary } from "../support/test-library.ts";
import { blocksOf, type MarkdownBlock } from "./markdown-blocks.ts";

export interface Shown {
  readonly shown: string;
  readonly said: string;
}

interface Reader {
  readonly folder: string;
  /** The panel that the document's own lines belong to, from the folder. */
  readonly panel: string;
  /** What the last command said. */
  said: string;
  readonly texts: Shown[];
}

export const runDocument = async (
  markdown: string,
  place: { readonly folder: string; readonly panel: string },
): Promise<readonly Shown[]> => {
  const reader: Reader = { ...place, said: "", texts: [] };
  for (const block of blocksOf(markdown)) await follow(block, reader);
  return reader.texts;
};

const follow = async (block: MarkdownBlock, reader: Reader): Promise<void> => {
  const { folder, texts } = reader;
  if (block.file !== null) writeFileSync(join(folder, block.file), `${block.text}\n`);
  if (block.after !== null) putBelow(block.after, block.text, join(folder, reader.panel));
  switch (block.language) {
    case "sh":
      reader.said = (await runLines(block.text, folder)) ?? reader.said;
      break;
    case "js":
      reader.said = runScript(block, folder);
      break;
    case "text":
      texts.push({ shown: block.text, said: reader.said });
      break;
    case "yaml":
      if (block.file === null && block.after === null)
        texts.push({ shown: block.text, said: readFileSync(join(folder, reader.panel), "utf8") });
      break;
    default:
  }
};

const putBelow = (line: string, text: string, path: string): void => {
  const before = readFileSync(path, "utf8");
  const after = before.replace(`${line}\n`, `${line}\n${text}\n`);
  if (after === before) throw new Error(`${path} has no line ${line}`);
  writeFileSync(path, after);
};

const runScript = ({ file }: MarkdownBlock, folder: string): string => {
  if (file === null) throw new Error("a program in a document names its file");
  return execFileSync(process.execPath, [file], { cwd: folder, encoding: "utf8" });
};

/** Not run here: the test itself, and what comes before it. */
const EXCEPTED = ["npm ci", "npm test"];
const PROGRAM = "npx consolewright ";

/** null where every command is excepted by name. */
const runLines = async (text: string, folder: string): Promise<string | null> => {
  const lines = text
    .split("\n")
    .flatMap((line) => line.replace(/\s+# .*$/, "").split(" && "))
    .filter((line) => line.trim() !== "" && !EXCEPTED.includes(line));
  const said: string[] = [];
  for (const line of lines) said.push(await runProgram(wordsAfter(line), folder));
  return lines.length === 0 ? null : said.join("");
};

const wordsAfter = (line: string): string => {
  if (line === "npm run demo") return demoWords();
  if (line.startsWith(PROGRAM)) return line.slice(PROGRAM.length);
  throw new Error(`a document asks for ${line}, which no test runs`);
};

const ROOT = dirname(dirname(import.meta.dirname));

/** The demo is the build, which the tests have behind them, and one command of the program. */
const demoWords = (): string => {
  const { scripts } = JSON.parse(readFileSync(join(ROOT, "package.json"), "utf8"));
  const words = /^npm run --silent build && node dist\/cli\/main\.js ([^&]+)$/.exec(scripts.demo);
  if (words?.[1] === undefined)
    throw new Error(`the demo is no longer one command: ${scripts.demo}`);
  return words[1];
};

/** Everything that the program says, in the order in which it says it. */
const runProgram = async (line: string, folder: string): Promise<string> => {
  let text = "";
  const say = (more: string): void => {
    text += more;
  };
  const words = [...line.matchAll(/"([^"]*)"|(\S+)/g)].map(
    ([, quoted, plain]) => quoted ?? plain ?? "",
  );
  await run(words, {
    cwd: folder,
    disk: realDisk,
    colour: false,
    stdout: say,
    stderr: say,
    library: () => Promise.resolve(testLibrary()),
    kernel: openKernel,
    version: () => "0.0.0-test",
    pageFolder: "dist/viewer",
    untilStopped: () => Promise.resolve(),
  });
  return text;
};
