// `testpiece printer`: a piece that measures a printer with one stock; with --read, what was read becomes its profile.

import { resolve } from "node:path";
import type { PrinterDesign, StockDesign, WorkshopDesign } from "../design/workshop-design.ts";
import { packOfPrinterTestPiece } from "../pack/printer-test-piece-pack.ts";
import { isPrinted } from "../parts/printed/printed-context.ts";
import { printerTestPiece } from "../parts/printed/printer-test-piece.ts";
import { readPrinter } from "../parts/printed/printer-test-piece-readings.ts";
import { isWrongUse, type WrongUse, wrongUse } from "./command.ts";
import { enterPrinterReadings } from "./enter-printer-readings.ts";
import type { Arguments } from "./read-arguments.ts";
import { readingsArgument } from "./readings-argument.ts";
import { replaceTexts } from "./replace-texts.ts";
import { EXIT, type ExitCode, type Shell } from "./shell.ts";
import { writeTestPiece } from "./write-test-piece.ts";

export interface PrinterBench {
  /** null without a workshop file. */
  readonly file: string | null;
  readonly text: string;
  readonly workshop: WorkshopDesign | null;
}

export const printerTestpiece = async (
  bench: PrinterBench,
  asked: { readonly values: Arguments["values"]; readonly json: boolean },
  shell: Shell,
): Promise<ExitCode | WrongUse> => {
  const { values } = asked;
  const found = await printerAndStock(bench, values, shell);
  if (isWrongUse(found)) return found;
  const written = values.get("read");
  if (written !== undefined && bench.file !== null)
    return enter({ ...bench, ...found, file: bench.file }, written, shell);
  const { lettering } = await shell.library();
  const parts = printerTestPiece(found.printer, found.stock, lettering);
  const pack = packOfPrinterTestPiece(parts, await shell.kernel());
  const id = `test-piece-${found.printer.id}-${found.stock.id}`;
  return writeTestPiece(pack, { id, out: values.get("out") ?? null, json: asked.json }, shell);
};

interface Found {
  readonly printer: PrinterDesign;
  readonly stock: StockDesign;
}

const printerAndStock = async (
  { workshop }: PrinterBench,
  values: Arguments["values"],
  shell: Shell,
): Promise<Found | WrongUse> => {
  const { catalogue } = await shell.library();
  const wanted = values.get("stock") ?? "";
  const stock = workshop?.stock[wanted] ?? catalogue.stock.get(wanted);
  if (stock === undefined)
    return wrongUse(`There is no stock "${wanted}": consolewright list stock shows what there is.`);
  if (!isPrinted(stock)) return wrongUse(`${wanted} is a sheet; a printer takes a filament.`);
  const machines =
    workshop === null ? [...catalogue.machines.values()] : Object.values(workshop.machines);
  const printers = machines.filter((machine) => machine.kind === "printer");
  const names = printers.map(({ id }) => id).join(", ");
  const name = values.get("machine");
  const [only] = printers;
  if (name === undefined && only !== undefined && printers.length === 1)
    return { printer: only, stock };
  const printer = printers.find(({ id }) => id === name);
  return printer === undefined
    ? wrongUse(`Which printer? --machine, one of: ${names || "none"}.`)
    : { printer, stock };
};

const EXAMPLE = "hole-3=2.68,peg-5=5.08,press=0.05";

const enter = (
  bench: PrinterBench & Found & { readonly file: string },
  written: string,
  shell: Shell,
): ExitCode | WrongUse => {
  const { file, text, printer, stock, workshop } = bench;
  const argument = readingsArgument(written, EXAMPLE);
  if (isWrongUse(argument)) return argument;
  const read = readPrinter(argument.measured);
  if (read.kind === "refused") return wrongUse(read.why.join("\n"));
  const own = workshop !== null && Object.hasOwn(workshop.stock, stock.id) ? stock.id : null;
  const made = enterPrinterReadings(file, text, { printer, stock: own, readings: read.readings });
  if (made.kind === "refused") return wrongUse(`${file}: ${made.why}.`);
  const change = { place: resolve(shell.cwd, file), before: text, after: made.text };
  const trouble = replaceTexts([change], shell.disk);
  if (trouble !== null) {
    shell.stderr(`${file} was not written: ${trouble}.\n`);
    return EXIT.faults;
  }
  const { holes, pegs, clearances } = read.readings;
  const fits = clearances === null ? "" : ", clearances by class of fit";
  shell.stdout(
    `${file}: ${printer.id} has ${holes.length} rows for holes and ${pegs.length} for pegs${fits}\n`,
  );
  if (read.readings.opaqueLines !== null && own === null)
    shell.stderr(
      `${stock.id} is none of the workshop's own stock, so that its opaque wall was not entered; add it to stock first.\n`,
    );
  return EXIT.fine;
};
