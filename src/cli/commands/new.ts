// `new NAME`: a folder with a small panel and a workshop to begin from. Nothing that exists is touched.

import { join, resolve } from "node:path";
import { readDesign } from "../../design/read-design.ts";
import { safeName } from "../../pack/file-name.ts";
import { utf8Bytes } from "../../pack/utf8.ts";
import { type Command, wrongUse } from "../command.ts";
import { attempt } from "../disk-trouble.ts";
import { EXIT } from "../shell.ts";
import { STARTER_MOUNTS, starterFiles } from "../starter-design.ts";

export const newDesign: Command = {
  usage: "new NAME [--mount MOUNT] [--title TITLE]",
  details: [
    "Makes a folder NAME with a panel of two components and a workshop, both with a word of explanation.",
    `Mounts: ${STARTER_MOUNTS.join(", ")}.`,
  ].join("\n"),
  options: [
    { name: "mount", value: "MOUNT", help: "how the panel is held (console-rail unless told)" },
    { name: "title", value: "TITLE", help: "what the panel is called on paper (NAME unless told)" },
  ],
  words: { least: 1, most: 1 },
  run: async ({ words: [wanted = ""], values, switches }, { cwd, disk, stdout, stderr }) => {
    const mount = values.get("mount") ?? "console-rail";
    if (!STARTER_MOUNTS.includes(mount))
      return wrongUse(`There is no mount "${mount}" to begin with: ${STARTER_MOUNTS.join(", ")}.`);
    const name = safeName(wanted);
    const folder = resolve(cwd, name);
    if (disk.look(folder) !== "nothing") return wrongUse(`${name} exists; choose another name.`);
    const files = Object.entries(
      starterFiles({ name, title: values.get("title") ?? wanted, mount }),
    );
    const refused = files.flatMap(([path, text]) => readDesign(path, text).findings)[0];
    if (refused !== undefined) return wrongUse(`${refused.message}; say another --title.`);
    const written = attempt(() => {
      disk.makeFolder(folder);
      for (const [path, text] of files) disk.write(join(folder, path), utf8Bytes(text));
    });
    if (written.kind === "trouble") {
      stderr(`${name} could not be written: ${written.why}.\n`);
      return EXIT.faults;
    }
    const paths = files.map(([path]) => `${name}/${path}`);
    stdout(
      switches.has("json")
        ? `${JSON.stringify({ folder: name, files: paths })}\n`
        : `${paths.join("\n")}\nNext: consolewright check ${name}\n`,
    );
    return EXIT.fine;
  },
};
