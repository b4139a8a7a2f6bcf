// `testpiece laser` and `testpiece printer`: a piece that measures a machine on one stock; with --read, what was measured
// goes into the workshop.

import { resolve } from "node:path";
import type { LaserDesign, StockDesign, WorkshopDesign } from "../../design/workshop-design.ts";
import { processColours } from "../../export/process-colours.ts";
import { packOfTestPiece } from "../../pack/test-piece-pack.ts";
import { readLaser } from "../../parts/laser-readings.ts";
import { laserTestPiece } from "../../parts/laser-test-piece.ts";
import { type Command, isWrongUse, type WrongUse, wrongUse } from "../command.ts";
import { enterReadings } from "../enter-readings.ts";
import { type PrinterBench, printerTestpiece } from "../printer-testpiece.ts";
import { readArgumentFile } from "../read-argument-file.ts";
import type { Arguments } from "../read-arguments.ts";
import { readingsArgument } from "../readings-argument.ts";
import { replaceTexts } from "../replace-texts.ts";
import { EXIT, type ExitCode, type Shell } from "../shell.ts";
import { writeTestPiece } from "../write-test-piece.ts";

export const testpiece: Command = {
  usage: "testpiece laser|printer --stock STOCK [--workshop FILE] [--machine NAME] [--out DIR]",
  details: [
    "laser: a piece to cut, with squares, slots and circles along both axes for the kerf, a row of holes",
    "from 6.4 to 7.0, lettering at three heights, a patch for opacity, and a page of how to measure.",
    "printer: a piece to print, with ladders of holes, pegs and clearances, walls of one to six lines,",
    "bosses for inserts, and the page. With --read the readings go into the workshop file: the kerf of",
    "that stock, per axis, or the printer's own figures for holes, pegs and fits.",
  ].join("\n"),
  options: [
    { name: "stock", value: "STOCK", help: "what is cut or printed (`consolewright list stock`)" },
    { name: "workshop", value: "FILE", help: "the workshop with the machine and the stock" },
    { name: "machine", value: "NAME", help: "the laser or printer, where there are several" },
    { name: "out", value: "DIR", help: "where to write (out/test-piece-STOCK unless told)" },
    {
      name: "read",
      value: "NAME=MM,...",
      help: "what was measured: square-x=19.79,slot-x=3.21,...",
    },
    { name: "pin", value: "SIZE", help: "the smallest hole of the row that a 6.35 mm bush enters" },
    { name: "dated", value: "DATE", help: "the day of the readings, year-month-day" },
  ],
  words: { least: 1, most: 1 },
  run: async ({ words: [kind], values, switches }, shell) => {
    const json = switches.has("json");
    if (kind === "printer") {
      const read = await workshopFrom(values, shell);
      return isWrongUse(read) ? read : printerTestpiece(read, { values, json }, shell);
    }
    if (kind !== "laser")
      return wrongUse(`There are test pieces for a laser and for a printer, not for "${kind}".`);
    const bench = await benchFrom(values, shell);
    if (isWrongUse(bench)) return bench;
    const { file } = bench;
    return values.has("read") && file !== null
      ? enter({ ...bench, file }, values, shell)
      : writePiece(bench, { values, json }, shell);
  },
};

interface Bench extends PrinterBench {
  readonly machine: LaserDesign;
  readonly stock: StockDesign;
}

/** The stock must be named, and readings need a file to go into. */
const workshopFrom = async (
  values: Arguments["values"],
  shell: Shell,
): Promise<PrinterBench | WrongUse> => {
  if (!values.has("stock")) return wrongUse("Which stock? --stock opal-acrylic-3");
  const file = values.get("workshop") ?? null;
  if (file === null && values.has("read"))
    return wrongUse("Readings need --workshop FILE to go into.");
  const read = file === null ? { text: "" } : readArgumentFile(file, shell);
  if (isWrongUse(read)) return read;
  const workshop = file === null ? null : await workshopOf(file, read.text);
  return file !== null && workshop === null
    ? wrongUse(`${file} is not a workshop file that can be read: consolewright check tells why.`)
    : { file, text: read.text, workshop };
};

const benchFrom = async (values: Arguments["values"], shell: Shell): Promise<Bench | WrongUse> => {
  const read = await workshopFrom(values, shell);
  if (isWrongUse(read)) return read;
  const { workshop } = read;
  const wanted = values.get("stock") ?? "";
  const { catalogue } = await shell.library();
  const stock = workshop?.stock[wanted] ?? catalogue.stock.get(wanted);
  if (stock === undefined)
    return wrongUse(`There is no stock "${wanted}": consolewright list stock shows what there is.`);
  const machines =
    workshop === null ? [...catalogue.machines.values()] : Object.values(workshop.machines);
  const machine = laserOf(machines.filter(isLaser), values.get("machine"));
  return isWrongUse(machine) ? machine : { ...read, machine, stock };
};

const workshopOf = async (file: string, text: string): Promise<WorkshopDesign | null> => {
  const { readDesign } = await import("../../design/read-design.ts");
  const { design } = readDesign(file, text);
  return design?.kind === "workshop" ? design : null;
};

const isLaser = (machine: { readonly kind: string }): machine is LaserDesign =>
  machine.kind === "co2-laser" || machine.kind === "diode-laser";

const laserOf = (
  lasers: readonly LaserDesign[],
  wanted: string | undefined,
): LaserDesign | WrongUse => {
  const names = lasers.map(({ id }) => id).join(", ");
  const [only] = lasers;
  if (wanted === undefined && only !== undefined && lasers.length === 1) return only;
  if (wanted === undefined) return wrongUse(`Which laser? --machine, one of: ${names || "none"}.`);
  const found = lasers.find(({ id }) => id === wanted);
  return found ?? wrongUse(`There is no laser "${wanted}"; there is: ${names || "none"}.`);
};

const writePiece = async (
  bench: Bench,
  asked: { readonly values: Arguments["values"]; readonly json: boolean },
  shell: Shell,
): Promise<ExitCode | WrongUse> => {
  const { lettering } = await shell.library();
  const part = laserTestPiece(bench.machine, bench.stock, lettering);
  const pack = packOfTestPiece(part, processColours(bench.workshop?.processColours ?? {}).colours);
  const out = asked.values.get("out") ?? null;
  return writeTestPiece(pack, { id: part.id, out, json: asked.json }, shell);
};

const enter = (
  bench: Bench & { readonly file: string },
  values: Arguments["values"],
  shell: Shell,
): ExitCode | WrongUse => {
  const dated = values.get("dated");
  if (dated === undefined || !/^\d{4}-\d{2}-\d{2}$/.test(dated))
    return wrongUse("Readings need their day: --dated 2026-01-31");
  const written = readingsArgument(values.get("read") ?? "", "square-x=19.79,slot-x=3.21");
  if (isWrongUse(written)) return written;
  const pin = values.get("pin");
  const read = readLaser(written.measured, pin === undefined ? null : Number(pin));
  if (read.kind === "refused") return wrongUse(read.why.join("\n"));
  const { machine, stock, file, text } = bench;
  const entered = { machine: machine.id, stock: stock.id, readings: read.readings, dated };
  const made = enterReadings(file, text, entered);
  if (made.kind === "refused") return wrongUse(`${file}: ${made.why}.`);
  const change = { place: resolve(shell.cwd, file), before: text, after: made.text };
  const trouble = replaceTexts([change], shell.disk);
  if (trouble !== null) {
    shell.stderr(`${file} was not written: ${trouble}.\n`);
    return EXIT.faults;
  }
  const [x, y] = read.readings.kerf;
  shell.stdout(
    `${file}: kerf of ${stock.id} is ${x} mm across x, ${y} mm across y, hole allowance ${read.readings.holeAllowance} mm\n`,
  );
  if (machine.kerf === "left-to-cutter")
    shell.stderr(
      `${machine.id} leaves the kerf to the cutter; write kerf: in-file to have it in your files.\n`,
    );
  return EXIT.fine;
};
