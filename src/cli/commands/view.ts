// `view DESIGN`: the page on this machine, with the design in it, until it is told to stop.

import { type Command, isWrongUse, type WrongUse, wrongUse } from "../command.ts";
import { designPlace } from "../design-argument.ts";
import { ROOT_OPTION } from "../open-project.ts";
import { EXIT, type Shell } from "../shell.ts";
import { designPort, readPort } from "../view/design-port.ts";
import {
  type DesignServer,
  type ServerSettings,
  type Started,
  startServer,
} from "../view/design-server.ts";
import { pageFiles } from "../view/page-files.ts";
import { type DesignSource, servedDesign } from "../view/served-design.ts";
import type { DesignMessage } from "../view/view-messages.ts";

export const view: Command = {
  usage: "view DESIGN [--port N] [--read-only] [--root DIR]",
  details: [
    "Serves the page with the design in it on this machine's own address (127.0.0.1) and prints the address. Open it in a",
    "browser; what you save there is written into the design's files, and what changes in them is shown there. The address",
    "holds a key of this run: whoever has it may read and write the design. Ctrl-C ends it.",
    "A design keeps its port, because the browser keeps recovery copies by address.",
  ].join("\n"),
  options: [
    {
      name: "port",
      value: "N",
      help: "the port to listen on (the design's own otherwise; 0: any)",
    },
    { name: "read-only", value: null, help: "show the design and write nothing" },
    ROOT_OPTION,
  ],
  words: { least: 1, most: 1 },
  run: async ({ words: [design = ""], switches, values }, shell) => {
    const place = designPlace(design, { cwd: shell.cwd, root: values.get("root") }, shell.disk);
    if (isWrongUse(place)) return place;
    const source = { place, isReadOnly: switches.has("read-only"), disk: shell.disk };
    const server = await started(source, values.get("port"), shell);
    if (isWrongUse(server)) return server;
    announce(server, { source, asJson: switches.has("json") }, shell);
    await shell.untilStopped();
    await server.close();
    return EXIT.fine;
  },
};

const started = async (
  source: DesignSource,
  written: string | undefined,
  shell: Shell,
): Promise<DesignServer | WrongUse> => {
  const page = pageFiles(shell.pageFolder);
  if (page === null)
    return wrongUse(`The page was not built: there is none in ${shell.pageFolder}.`);
  const asked = written === undefined ? undefined : readPort(written);
  if (asked === null) return wrongUse(`--port takes a number from 0 to 65535, not "${written}".`);
  const port = asked ?? designPort(servedDesign(source).message.id);
  const first = await startServer({ source, page, port });
  if (first.kind === "port-taken" && asked === undefined)
    return serverOf(await onAnotherPort({ source, page, port }, shell), port);
  return serverOf(first, port);
};

const onAnotherPort = (settings: ServerSettings, shell: Shell): Promise<Started> => {
  shell.stderr(
    `Port ${settings.port}, this design's own, is taken, perhaps by another \`view\` of it. Another is used: the browser\n` +
      "will not find recovery copies there that it kept at the design's own.\n",
  );
  return startServer({ ...settings, port: 0 });
};

const serverOf = (outcome: Started, port: number): DesignServer | WrongUse => {
  switch (outcome.kind) {
    case "started":
      return outcome.server;
    case "port-taken":
      return wrongUse(
        `Port ${port} can't be used: another program has it, or the system keeps it for itself. Try --port 0.`,
      );
    case "no-address":
      return wrongUse(`This machine gives no address of its own to listen on: ${outcome.why}.`);
  }
};

const announce = (
  { address }: DesignServer,
  { source, asJson }: { readonly source: DesignSource; readonly asJson: boolean },
  shell: Shell,
): void => {
  const { message } = servedDesign(source);
  for (const trouble of message.troubles) shell.stderr(`${trouble}\n`);
  if (asJson) shell.stdout(`${JSON.stringify({ address, name: message.name })}\n`);
  else shell.stdout(`${message.name}: ${address}\n${writingWords(message)}Ctrl-C ends it.\n`);
};

const writingWords = ({ isReadOnly, files }: DesignMessage): string => {
  if (isReadOnly) return "Read-only: nothing is written.\n";
  const locked = files.filter(({ isWritable }) => !isWritable).map(({ path }) => path);
  return locked.length === 0 ? "" : `Read-only on the disk, can't be saved: ${locked.join(", ")}\n`;
};
