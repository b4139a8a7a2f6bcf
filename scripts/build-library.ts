// Builds the library: every catalogue record and default of the workshop, read from YAML, and the fonts with their
// licences, as one JSON text. The same sources give the same bytes. A record that can't be read or that the linter
// refuses stops the build. Run by `npm run build`; `npx tsx scripts/build-library.ts` writes it alone.

import { createHash } from "node:crypto";
import { mkdirSync, readdirSync, readFileSync, writeFileSync } from "node:fs";
import { dirname, join, sep } from "node:path";
import { fileURLToPath } from "node:url";
import { LIBRARY_FORMAT, type LibraryData } from "../src/catalogue/library.ts";
import { readRecords } from "../src/catalogue/read-records.ts";
import type { CatalogueRecord } from "../src/catalogue/record.ts";
import { readDesign } from "../src/design/read-design.ts";
import type { WorkshopDesign } from "../src/design/workshop-design.ts";
import type { Finding } from "../src/diagnostics/finding.ts";
import { lineAndColumn } from "../src/diagnostics/position.ts";
import { fontRecords } from "./font-records.ts";

const ROOT = dirname(import.meta.dirname);
const RECORDS = join(ROOT, "src/catalogue/records");
const WORKSHOP = "workshop.yaml";

/** The library as data; written to `out` where a path is given. */
export function buildLibrary(out: string | null = null): LibraryData {
  const workshop = defaultWorkshop();
  const content = {
    records: builtInRecords(),
    stock: byId(Object.values(workshop.stock)),
    finishes: byId(Object.values(workshop.finishes)),
    machines: byId(Object.values(workshop.machines)),
    fonts: byId(fontRecords()),
  };
  const hash = createHash("sha256").update(JSON.stringify(content)).digest("hex");
  const library: LibraryData = {
    format: LIBRARY_FORMAT,
    version: hash.slice(0, HASH_DIGITS),
    ...content,
  };
  if (out !== null) {
    mkdirSync(dirname(out), { recursive: true });
    writeFileSync(out, `${JSON.stringify(library)}\n`);
  }
  return library;
}

/** Enough to tell two libraries apart at a glance. */
const HASH_DIGITS = 12;

/** The paths of the built-in record files, from the folder of records, with forward slashes, in order. */
export const recordFiles = (): readonly string[] =>
  readdirSync(RECORDS, { recursive: true, encoding: "utf8" })
    .filter((file) => file.endsWith(".yaml") && file !== WORKSHOP)
    .map((file) => file.replaceAll(sep, "/"))
    .toSorted();

export const recordText = (file: string): string => readFileSync(join(RECORDS, file), "utf8");

function builtInRecords(): readonly CatalogueRecord[] {
  const records = recordFiles().flatMap((file) => {
    const text = recordText(file);
    const { records: read, findings } = readRecords(file, text);
    refuse(findings, text);
    return read.map(({ record }) => record);
  });
  const sorted = byId(records);
  const twice = sorted.find((record, index) => record.id === sorted[index + 1]?.id);
  if (twice !== undefined) throw new Error(`two records are called ${twice.id}`);
  return sorted;
}

function defaultWorkshop(): WorkshopDesign {
  const text = recordText(WORKSHOP);
  const { design, findings } = readDesign(WORKSHOP, text);
  refuse(findings, text);
  if (design?.kind !== "workshop") throw new Error(`${WORKSHOP} is not a workshop`);
  return design;
}

/** Nothing that is shipped may have even a note against it. */
function refuse(findings: readonly Finding[], text: string): void {
  if (findings.length === 0) return;
  const lines = findings.map(({ span, code, message }) => {
    const { line, column } = lineAndColumn(text, span.start);
    return `${span.file}:${line}:${column}: ${message} (${code})`;
  });
  throw new Error(lines.join("\n"));
}

const byId = <Item extends { readonly id: string }>(items: readonly Item[]): readonly Item[] =>
  items.toSorted((a, b) => (a.id < b.id ? -1 : a.id > b.id ? 1 : 0));

if (process.argv[1] === fileURLToPath(import.meta.url)) {
  buildLibrary(join(ROOT, "dist/library.json"));
}
