// The server of `view` as a process of its own, for a test that kills it: folder, first file, page's folder and port in,
// the address on stdout.

import { realDisk } from "../../src/cli/disk.ts";
import { startServer } from "../../src/cli/view/design-server.ts";
import { pageFiles } from "../../src/cli/view/page-files.ts";

const [folder = "", entry = "", built = "", port = "0"] = process.argv.slice(2);
const page = pageFiles(built);
if (page === null) throw new Error(`there is no page in ${built}`);
const started = await startServer({
  source: { place: { root: folder, entry }, isReadOnly: false, disk: realDisk },
  page,
  port: Number(port),
});
if (started.kind !== "started") throw new Error(started.kind);
console.log(started.server.address);
